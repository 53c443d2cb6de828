// SPDX-License-Identifier: MIT
#include <memory>
#include <ostream>

#include "app/cli/commands.h"
#include "core/catalog/resources.h"
#include "core/exchange/geojson.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

struct ImportOptions {
  std::string file, source;
};

ExitCode runImport(const ImportOptions& options, Console& console) {
  YardFile file = YardFile::open(options.file);
  const GeoJsonImport import = importGeoJson(file.yard(), shippedFacts(console),
                                             readFile(options.source), options.source, file.ids());
  for (const std::string& warning : import.warnings) console.err << warning << '\n';
  if (import.edit.empty()) {
    console.err << options.source << " holds nothing to add.\n";
    return ExitCode::File;
  }
  file.commit(import.edit);
  console.out << import.edit.label << ": " << counted(import.edit.changes.size(), "thing")
              << " added\n";
  return ExitCode::Done;
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
