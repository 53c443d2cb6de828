// SPDX-License-Identifier: MIT
#include <memory>
#include <ostream>
#include <QImage>

#include "app/cli/commands.h"
#include "app/files/whole_file.h"
#include "app/print/local_date.h"
#include "app/print/plan_output.h"
#include "core/exchange/geojson.h"
#include "core/exchange/lists.h"
#include "core/sheets/plan.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

constexpr double kPictureDpi = 200.0;

struct ExportOptions {
  std::string file, out;
};

Sheet overviewOf(const Yard& yard, const Catalogue& facts) {
  PlanOptions options;
  options.date = localToday();
  const Plan plan = makePlan(yard, facts, options);
  if (plan.sheets.empty())
    throw UsageError("Nothing is drawn in this yard yet, so there is no picture of it.");
  return plan.sheets.front();
}

void writePicture(const Sheet& sheet, const QString& path, const std::string& extension) {
  ensurePainting();
  if (extension == ".svg") {
    writeSheetSvg(sheet, path);
  } else {
    savePng(path, renderSheet(sheet, kPictureDpi));
  }
}

ExitCode runExport(const ExportOptions& options, Console& console) {
  const std::string extension = lowerExtension(options.out);
  refuseOutput(options.out);
  const YardFile file = YardFile::open(options.file, YardFile::Access::ReadOnly);
  const Catalogue facts = factsFor(file.yard(), console);
  if (extension == ".geojson" || extension == ".json") {
    writeWhole(options.out, yardToGeoJson(file.yard()));
  } else if (extension == ".csv") {
    writeWhole(options.out, scheduleCsv(file.yard(), facts));
  } else if (extension == ".svg" || extension == ".png") {
    writePicture(overviewOf(file.yard(), facts), QString::fromStdString(options.out), extension);
  } else {
    throw UsageError("'" + options.out +
                     "' ends in no format that can be written. Name a file in " +
                     ".geojson, .svg, .png or .csv.");
  }
  console.err << "Wrote " << options.out << '\n';
  return ExitCode::Done;
}

}  // namespace

void addExport(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand(
      "export", "Write the yard as GeoJSON, the overview as SVG or PNG, the schedule as CSV");
  auto options = std::make_shared<ExportOptions>();
  command->add_option("FILE", options->file, "Yard file")->required();
  command->add_option("OUT", options->out, "File to write: .geojson, .svg, .png or .csv")
      ->required();
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runExport(*options, console); };
  });
}

}  // namespace tussock
