// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <memory>
#include <optional>
#include <ostream>

#include <fmt/format.h>

#include "app/cli/commands.h"
#include "app/document/civil_day.h"
#include "app/print/sun_picture.h"
#include "core/exchange/sun_csv.h"
#include "core/store/yard_file.h"
#include "core/sun/month_map.h"
#include "core/sun/position.h"
#include "core/sun/shade_problems.h"
#include "core/sun/tree_growth.h"

namespace tussock {

namespace {

struct SunOptions {
  std::string file, date, out;
  bool season = false, bedsOnly = false, worstMonth = false;
  unsigned month = 0;                // 1 to 12; 0: none was asked for
  std::optional<double> cellMetres;  // by itself kUsualCell, or what fits
  int stepMinutes = 5;
  double years = 0.0;
};

constexpr double kUsualCell = 0.1, kLeastCell = 0.01;  // metres

SunMapRequest groundFor(const SunOptions& options, const Yard& yard) {
  SunMapRequest request;
  request.area = siteBox(yard);
  if (options.bedsOnly) request = onlyBeds(yard, request);
  if (request.area.empty())
    throw UsageError(options.bedsOnly
                         ? "There are no beds in this yard. Leave out --beds to map the lot."
                         : "Nothing is drawn in this yard yet, so there is no ground to map.");
  request.cell = Length::metres(options.cellMetres.value_or(kUsualCell));
  const double least = std::min(request.area.width(), request.area.height());
  if (least < kLeastCell)
    throw UsageError(fmt::format(
        "The ground is {:.1f} m by {:.1f} m: a line, with nothing on it to map. Draw the lot or a "
        "bed as an outline that encloses ground.",
        request.area.width(), request.area.height()));
  if (options.cellMetres && *options.cellMetres > least)
    throw UsageError(fmt::format(
        "--cell is {:g} m, and the ground is {:.1f} m by {:.1f} m. Give {:.2f} m or less.",
        *options.cellMetres, request.area.width(), request.area.height(),
        std::floor(least * 100.0) / 100.0));
  return request;
}

SunMapRequest requestFrom(const SunOptions& options, const Yard& yard) {
  if ((options.date.empty() ? 0 : 1) + (options.month > 0 ? 1 : 0) + (options.worstMonth ? 1 : 0) >
      1)
    throw UsageError("Give one of --date, --month and --worst-month.");
  SunMapRequest request = groundFor(options, yard);
  request.stepMinutes = options.stepMinutes;
  if (options.month > 0 || options.worstMonth) request.detail = SunDetail::Months;
  if (options.date.empty()) return request;
  request.day = parseDate(options.date);
  if (!request.day)
    throw UsageError("--date is '" + options.date +
                     "', which is no date. Give it as year-month-day, such as " +
                     formatDate(CivilDay::today(yard.settings)) + ".");
  if (!isInExactYears(*request.day))
    throw UsageError(fmt::format(
        "--date is '{}'. Where the sun stands is known well from {} to {}; give a day of those.",
        options.date, int(kFirstExactYear), int(kLastExactYear)));
  return request;
}

SunMean meanFrom(const SunOptions& options) {
  SunMean mean;
  mean.years = options.years;
  if (options.worstMonth) mean.span = SunSpan::WorstMonth;
  if (options.month == 0) return mean;
  mean.span = SunSpan::Month;
  mean.month = std::chrono::month(options.month);
  return mean;
}

std::vector<std::string> bedsWithoutHours(const SunMap& map, const Yard& yard) {
  std::vector<std::string> sentences;
  for (const auto& [bed, outside] : unmappedBeds(yard, map))
    sentences.push_back(
        outside ? fmt::format("{} lies outside the lot and is not mapped. Give --beds to map it.",
                              bed->name)
                : fmt::format("{} is too small or narrow for cells of {:g} m: none has its centre "
                              "in it, and it has no hours here. Give a smaller --cell.",
                              bed->name, map.cell().metres()));
  return sentences;
}

void writeMap(const SunMap& map, const SunMapRequest& request, const SunOptions& options,
              const Yard& yard, const std::vector<std::string>& doubts) {
  const SunMean mean = meanFrom(options);
  std::vector<SunNote> notes = sunNotes(yard, request, mean);
  for (const std::string& sentence : doubts) notes.push_back({"Doubt", sentence});
  if (lowerExtension(options.out) == ".csv") {
    const std::filesystem::path out(options.out);
    writeWhole(out, sunMapToCsv(map));
    writeWhole(options.out + kCsvMetadataSuffix, sunCsvMetadata(out.filename().string(), notes));
    return;
  }
  ensurePainting();
  const SunPictureText text{yard.settings.name, sunHeading(yard, request, mean), notes,
                            sunProfile(yard.settings.sunProfile), options.bedsOnly};
  writeSunPicture(map, yard, text, QString::fromStdString(options.out));
}

// Without a cell asked for, a large site gets the smallest that fits.
void fitCell(const Yard& yard, SunMapRequest& request, Console& console) {
  const Length cell = finestCell(yard, request);
  if (cell <= request.cell) return;
  request.cell = cell;
  console.err << fmt::format(
      "The ground is {:.0f} m by {:.0f} m: mapped in cells of {:g} m, the smallest that fit.\n",
      request.area.width(), request.area.height(), cell.metres());
}

SunMap meanOf(const SunMap& map, const SunMean& mean, const Yard& yard) {
  if (mean.span == SunSpan::Season) return map;
  if (mean.span == SunSpan::WorstMonth) return worstMonthMapOf(map);
  SunMap month = monthMapOf(map, mean.month);
  if (month.empty()) {
    const GrowingSeason season = growingSeason(yard.settings);
    throw UsageError(fmt::format("{} is outside the growing season, {} to {}. Give a month of it.",
                                 readableMonth(mean.month), readableMonthDay(season.first),
                                 readableMonthDay(season.last)));
  }
  return month;
}

// What the map refuses, it refuses for what was asked.
SunMap mapOf(const Yard& yard, SunMapRequest& request, const SunOptions& options,
             Console& console) {
  try {
    if (!options.cellMetres) fitCell(yard, request, console);
    return meanOf(computeSunMap(yard, request).value(), meanFrom(options), yard);
  } catch (const std::invalid_argument& error) {
    throw UsageError(error.what());
  }
}

ExitCode runSun(const SunOptions& options, Console& console) {
  const std::string extension = lowerExtension(options.out);
  if (extension != ".csv" && extension != ".png")
    throw UsageError("--out is '" + options.out + "'. Name a .csv or .png file.");
  refuseOutput(options.out);
  if (extension == ".csv") refuseOutput(options.out + kCsvMetadataSuffix);
  const YardFile file = YardFile::open(options.file, YardFile::Access::ReadOnly);
  const Yard yard = grownBy(file.yard(), options.years);
  SunMapRequest request = requestFrom(options, yard);
  for (const std::string& sentence : sentencesOf(solidProblems(yard), yard.settings.units))
    console.err << sentence << '\n';
  const SunMap map = mapOf(yard, request, options, console);
  const std::vector<std::string> doubts = bedsWithoutHours(map, yard);
  writeMap(map, request, options, yard, doubts);
  for (const std::string& sentence : doubts) console.err << sentence << '\n';
  console.err << "Wrote " << options.out;
  if (extension == ".csv") console.err << " and " << options.out << kCsvMetadataSuffix;
  console.err << '\n';
  return ExitCode::Done;
}

}  // namespace

void addSun(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand("sun", "Map the mean hours of direct sun a day");
  auto options = std::make_shared<SunOptions>();
  command->add_option("FILE", options->file, "Yard file")->required();
  auto* date = command->add_option("--date", options->date, "One day, YYYY-MM-DD");
  command->add_flag("--season", options->season, "The growing season (as without --date)")
      ->excludes(date);
  command->add_option("--month", options->month, "One month of the season, 1 to 12")
      ->check(between(1, 12));
  command->add_flag("--worst-month", options->worstMonth,
                    "At each place the month of the season with the least sun");
  command->add_flag("--beds", options->bedsOnly, "Only the ground of the beds");
  command
      ->add_option("--cell", options->cellMetres,
                   "Side of a cell in metres (0.1, or the smallest that fits)")
      ->check(between(kLeastCell, 100.0));
  command->add_option("--step", options->stepMinutes, "Minutes between sun positions")
      ->check(between(1, 60));
  command->add_option("--grow", options->years, "Grow the trees by so many years first")
      ->check(between(0.0, 200.0));
  command->add_option("--out", options->out, "File to write: .csv or .png")->required();
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runSun(*options, console); };
  });
}

}  // namespace tussock
