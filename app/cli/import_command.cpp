// SPDX-License-Identifier: MIT
#include <memory>
#include <ostream>

#include "app/cli/commands.h"
#include "core/catalog/edit_plants.h"
#include "core/catalog/resources.h"
#include "core/exchange/geojson.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

struct ImportOptions {
  std::string file, source;
};

// Codes for the plan are given along the way and are no things that the file held.
std::string added(const ChangeSet& edit) {
  std::size_t things = 0, plants = 0;
  for (const Change& change : edit.changes) {
    if (!change.after || std::holds_alternative<PlanCode>(*change.after)) continue;
    ++things;
    if (const auto* drift = std::get_if<Drift>(&*change.after)) plants += drift->plants.size();
  }
  return counted(things, "thing") + " added" +
         (plants > 0 ? ", with " + counted(plants, "plant") : "");
}

ExitCode runImport(const ImportOptions& options, Console& console) {
  YardFile file = YardFile::open(options.file);
  const PlantFacts plants = plantsFor(file.yard(), console);
  const GeoJsonImport import = importGeoJson(file.yard(), plants.catalogue(),
                                             readFile(options.source), options.source, file.ids());
  for (const std::string& warning : import.warnings) console.err << warning << '\n';
  if (import.edit.empty()) {
    console.err << options.source << " holds nothing to add.\n";
    return ExitCode::File;
  }
  file.commit(carrying(plants.layers(file.yard()), import.edit, file.ids()));
  console.out << import.edit.label << ": " << added(import.edit) << '\n';
  return afterImport(import);
}

}  // namespace

void addImport(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand("import", "Add what a GeoJSON file holds");
  auto options = std::make_shared<ImportOptions>();
  command->add_option("FILE", options->file, "Yard file")->required();
  command->add_option("SOURCE", options->source, "GeoJSON file")->required();
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runImport(*options, console); };
  });
}

}  // namespace tussock
