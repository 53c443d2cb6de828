// SPDX-License-Identifier: MIT
#include "core/catalog/missing.h"

#include <algorithm>
#include <bit>

#include <fmt/format.h>

#include "core/catalog/season_weeks.h"
#include "core/catalog/week_range.h"

namespace tussock {

namespace {

struct Season {
  explicit Season(const Settings& settings)
      : growing(growingSeason(settings)), weeks(seasonWeeks(settings)) {}

  [[nodiscard]] std::string days(WeekRange range) const {
    return "from " + daysInWords(range, growing);
  }

  GrowingSeason growing;
  std::vector<int> weeks;
};

void addNectar(std::vector<Missing>& all, const PlantFigures& figures, const Season& season,
               SeasonThird third, Lack lack) {
  if (season.weeks.size() < 3 || (figures.nectarWeeks & weeksOf(third, season.weeks)) != 0) return;
  const WeekRange weeks = rangeOf(third, season.weeks);
  all.push_back({lack, weeks,
                 fmt::format("No {} nectar: nothing that is recorded as visited is in flower {}.",
                             lack == Lack::EarlyNectar ? "early" : "late", season.days(weeks))});
}

bool showsLayer(const PlantFigures& figures, Layer layer) {
  return std::any_of(figures.byLayer.begin(), figures.byLayer.end(),
                     [&](const NamedShare& share) { return share.name == wordOf(layer); });
}

bool isGrass(const Species& species) {
  return species.habit == Habit::Grass || species.habit == Habit::Sedge;
}

// Whether a species fills the lack, and how many of its weeks.
int filledBy(const Species& species, const Missing& missing) {
  const WeekSet weeks = missing.weeks ? weeksOf(*missing.weeks) : 0;
  const WeekSet flowers = showsFlowers(species) ? weeksInFlower(species) : 0;
  switch (missing.lack) {
    case Lack::Flowers:
      return std::popcount(flowers & weeks);
    case Lack::EarlyNectar:
    case Lack::LateNectar:
      return species.nectarNote.empty() ? 0 : std::popcount(flowers & weeks);
    case Lack::GroundLayer:
      return species.usualLayer() == Layer::Ground ? 1 : 0;
    case Lack::Grasses:
      return isGrass(species) ? 1 : 0;
    case Lack::HostPlants:
      return species.hostNote.empty() ? 0 : 1;
  }
  return 0;
}

}  // namespace

std::vector<Missing> missingFrom(const PlantFigures& figures, const Settings& settings) {
  std::vector<Missing> all;
  if (figures.empty()) return all;
  const Season season(settings);
  for (const WeekRange gap : gapsIn(figures.bloomWeeks, season.weeks))
    all.push_back({Lack::Flowers, gap, fmt::format("Nothing is in flower {}.", season.days(gap))});
  addNectar(all, figures, season, SeasonThird::Early, Lack::EarlyNectar);
  addNectar(all, figures, season, SeasonThird::Late, Lack::LateNectar);
  if (!showsLayer(figures, Layer::Ground))
    all.push_back({Lack::GroundLayer, {}, "No ground layer covers the soil between the others."});
  if (figures.grassShare <= 0.0)
    all.push_back({Lack::Grasses, {}, "No grasses or sedges hold the planting together."});
  if (figures.hostPlants.empty())
    all.push_back({Lack::HostPlants, {}, "No plant is recorded as food of caterpillars."});
  return all;
}

std::vector<Ranked> bestToFill(const Missing& missing, const std::vector<Ranked>& ranked,
                               const std::vector<Portion>& planted, std::size_t count) {
  std::vector<std::pair<int, const Ranked*>> found;
  for (const Ranked& one : ranked) {
    const bool there = std::any_of(planted.begin(), planted.end(), [&](const Portion& portion) {
      return portion.species->botanicalName == one.species->botanicalName;
    });
    const int filled = filledBy(*one.species, missing);
    if (one.suits() && !there && filled > 0) found.emplace_back(filled, &one);
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  if (found.size() > count) found.resize(count);
  std::vector<Ranked> result;
  result.reserve(found.size());
  for (const auto& [filled, one] : found) result.push_back(*one);
  return result;
}

}  // namespace tussock
