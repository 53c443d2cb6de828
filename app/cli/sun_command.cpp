// SPDX-License-Identifier: MIT
#include <filesystem>
#include <memory>
#include <ostream>

#include <fmt/format.h>

#include "app/cli/commands.h"
#include "app/document/civil_day.h"
#include "app/print/sun_picture.h"
#include "core/exchange/sun_csv.h"
#include "core/store/yard_file.h"
#include "core/sun/position.h"
#include "core/sun/shade_problems.h"
#include "core/sun/tree_growth.h"

namespace tussock {

namespace {

struct SunOptions {
  std::string file, date, out;
  bool season = false;
  double cellMetres = 0.1;
  int stepMinutes = 5;
  double years = 0.0;
};

SunMapRequest requestFrom(const SunOptions& options, const Yard& yard) {
  SunMapRequest request;
  request.area = siteBox(yard);
  if (request.area.empty())
    throw UsageError("Nothing is drawn in this yard yet, so there is no ground to map.");
  request.cell = Length::metres(options.cellMetres);
  request.stepMinutes = options.stepMinutes;
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

void writeMap(const SunMap& map, const SunMapRequest& request, const SunOptions& options,
              const Yard& yard) {
  const std::vector<SunNote> notes = sunNotes(yard, request, options.years);
  if (lowerExtension(options.out) == ".csv") {
    const std::filesystem::path out(options.out);
    writeWhole(out, sunMapToCsv(map));
    writeWhole(options.out + kCsvMetadataSuffix, sunCsvMetadata(out.filename().string(), notes));
    return;
  }
  ensurePainting();
  const SunPictureText text{yard.settings.name, sunSpan(yard, request), notes,
                            sunProfile(yard.settings.sunProfile)};
  writeSunPicture(map, yard, text, QString::fromStdString(options.out));
}

// What the map refuses, it refuses for what was asked.
SunMap mapOf(const Yard& yard, const SunMapRequest& request) {
  try {
    return computeSunMap(yard, request).value();
  } catch (const std::invalid_argument& error) {
    throw UsageError(error.what());
  }
}

ExitCode runSun(const SunOptions& options, Console& console) {
  const std::string extension = lowerExtension(options.out);
  if (extension != ".csv" && extension != ".png")
    throw UsageError("--out is '" + options.out + "'. Name a .csv or .png file.");
  refuseOwnFile(options.out, options.file);
  const YardFile file = YardFile::open(options.file, YardFile::Access::ReadOnly);
  const Yard yard = grownBy(file.yard(), options.years);
  const SunMapRequest request = requestFrom(options, yard);
  for (const ShadeProblem& problem : shadeProblems(yard))
    console.err << sentenceOf(problem, yard.settings.units) << '\n';
  writeMap(mapOf(yard, request), request, options, yard);
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
  command->add_option("--cell", options->cellMetres, "Side of a cell in metres")
      ->check(between(0.01, 100.0));
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
