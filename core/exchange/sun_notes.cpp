// SPDX-License-Identifier: MIT
#include "core/exchange/sun_notes.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/catalog/fit.h"
#include "core/sun/horizon.h"
#include "core/sun/shade_problems.h"
#include "core/sun/sun_days.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

std::string dated(Date day) {
  return fmt::format("{} {}", readableMonthDay(MonthDay(day.month(), day.day())),
                     static_cast<int>(day.year()));
}

std::string counted(std::size_t count, const char* one, const char* many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string placeText(const Settings& settings) {
  const double latitude = settings.latitude.degrees();
  const double longitude = settings.longitude.degrees();
  return fmt::format("{:.4f}° {}, {:.4f}° {}", std::abs(latitude), latitude < 0.0 ? "S" : "N",
                     std::abs(longitude), longitude < 0.0 ? "W" : "E");
}

// As the map takes it: what is no slope is level.
std::string groundText(const Settings& settings) {
  if (Horizon(settings).rise() == Point()) return "level";
  const double facing = std::fmod(settings.aspect.degrees() + 720.0, 360.0);
  return fmt::format("slope {:.1f}°, facing {:.0f}° (north 0°, east 90°)", settings.slope.degrees(),
                     facing);
}

std::string skylineText(const Settings& settings) {
  if (settings.skyline.empty()) return "open";
  double highest = 0.0;
  for (const SkylinePoint& p : settings.skyline) highest = std::max(highest, p.elevation.degrees());
  return fmt::format("{}, up to {:.1f}°", counted(settings.skyline.size(), "point", "points"),
                     highest);
}

struct Leaves {
  MonthDay on, off;
  std::size_t trees = 0;
};

std::string treesText(const Yard& yard) {
  if (yard.trees.size() == 0) return "none";
  std::size_t evergreen = 0;
  std::vector<Leaves> leaves;
  for (const Tree& tree : yard.trees) {
    if (tree.evergreen) {
      ++evergreen;
      continue;
    }
    const auto at = std::find_if(leaves.begin(), leaves.end(), [&](const Leaves& l) {
      return l.on == tree.leafOn && l.off == tree.leafOff;
    });
    if (at == leaves.end())
      leaves.push_back({tree.leafOn, tree.leafOff, 1});
    else
      ++at->trees;
  }
  std::string text;
  for (const Leaves& l : leaves)
    text += fmt::format("{}{} in leaf from {}, bare from {}", text.empty() ? "" : "; ", l.trees,
                        readableMonthDay(l.on), readableMonthDay(l.off));
  if (evergreen > 0) text += fmt::format("{}{} evergreen", text.empty() ? "" : "; ", evergreen);
  return text;
}

std::string lengthText(double metres, UnitSystem units) {
  return formatLength(Length::metres(metres), units);
}

// Cells are asked for in metres, whatever the yard is measured in.
std::string cellText(Length cell, UnitSystem units) {
  const std::string metres = fmt::format("{:g} m", cell.metres());
  if (units == UnitSystem::Metres) return metres;
  return fmt::format("{} ({:.1f} in)", metres, cell.metres() / kMetresPerFoot * 12.0);
}

std::string classesText(const Settings& settings) {
  const SunProfile& profile = sunProfile(settings.sunProfile);
  return fmt::format("full sun from {:g} h a day, part sun from {:g} h. Source: {}",
                     profile.fullFrom, profile.partFrom, profile.source);
}

// Trees without a rate of growth stay as they are, which is worth knowing.
std::string grownText(const Yard& yard, double years) {
  if (years <= 0.0) return "trees as drawn";
  const auto rated = std::count_if(yard.trees.begin(), yard.trees.end(),
                                   [](const Tree& tree) { return tree.growth > Length(); });
  return fmt::format("trees as they will be in {:g} {}; {} of {} have a rate", years,
                     years == 1.0 ? "year" : "years", rated, yard.trees.size());
}

std::string areaText(const SunMapRequest& request, UnitSystem units) {
  const std::string box = fmt::format("{} by {}", lengthText(request.area.width(), units),
                                      lengthText(request.area.height(), units));
  return request.only.empty() ? box : "the ground of the beds only, which lie within " + box;
}

// The day, or the season's first and last with the year, and whether it is a guess; the month,
// where the mean is of one.
std::string sunSpan(const Yard& yard, const SunMapRequest& request, const SunMean& mean) {
  if (request.day) return dated(*request.day);
  const GrowingSeason season = growingSeason(yard.settings);
  const std::vector<Date> days = daysOf(season, request.year);
  if (days.empty()) return {};
  const std::string all = fmt::format("{} to {}{}", dated(days.front()), dated(days.back()),
                                      season.assumed ? " (frost dates not known)" : "");
  switch (mean.span) {
    case SunSpan::Month:
      return fmt::format("{} within the season {}", readableMonth(mean.month), all);
    case SunSpan::WorstMonth:
      return fmt::format("the month with the least sun at each place, of {}", all);
    case SunSpan::Season:
      break;
  }
  return all;
}

}  // namespace

std::string sunHeading(const Yard& yard, const SunMapRequest& request, const SunMean& mean) {
  const std::string span = sunSpan(yard, request, mean);
  return request.day ? "Hours of direct sun on " + span : "Mean hours of direct sun a day, " + span;
}

std::vector<SunNote> sunNotes(const Yard& yard, const SunMapRequest& request, const SunMean& mean) {
  std::vector<SunNote> notes = {
      {"Yard", yard.settings.name},
      {"Days", sunSpan(yard, request, mean)},
      {"Place", placeText(yard.settings)},
      {"Ground", groundText(yard.settings)},
      {"Skyline", skylineText(yard.settings)},
      {"Area", areaText(request, yard.settings.units)},
      {"Cell", cellText(request.cell, yard.settings.units)},
      {"Step", fmt::format("{} min", request.stepMinutes)},
      {"Solids",
       counted(yard.buildings.size(), "building", "buildings") + ", " +
           counted(yard.barriers.size(), "wall, fence or hedge", "walls, fences and hedges") +
           ", " + counted(yard.trees.size(), "tree", "trees")},
      {"Leaves", treesText(yard)},
      {"Growth", grownText(yard, mean.years)},
      {"Sun", "its centre above 0° true altitude; clear sky"},
      {"Classes", classesText(yard.settings)}};
  for (std::string& sentence : sentencesOf(solidProblems(yard), yard.settings.units))
    notes.push_back({"Doubt", std::move(sentence)});
  return notes;
}

}  // namespace tussock
