// SPDX-License-Identifier: MIT
#include <memory>
#include <ostream>

#include "app/cli/commands.h"
#include "core/store/example_file.h"

namespace tussock {

namespace {

ExitCode runExample(const std::string& path, Console& console) {
  writeExample(path, shippedFacts(console));
  console.err << "Wrote " << path << '\n';
  return ExitCode::Done;
}

}  // namespace

void addExample(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand("example", "Write the example yard");
  auto path = std::make_shared<std::string>();
  command->add_option("FILE", *path, "Yard file to make (.yard)")->required();
  command->callback([path, &chosen] {
    chosen = [path](Console& console) { return runExample(*path, console); };
  });
}

}  // namespace tussock
