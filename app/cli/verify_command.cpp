// SPDX-License-Identifier: MIT
#include <memory>
#include <ostream>

#include "app/cli/commands.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

ExitCode runVerify(const std::string& path, Console& console) {
  const YardFile file = YardFile::open(path, YardFile::Access::ReadOnly);
  const auto problems = file.verify();
  for (const std::string& problem : problems) console.err << problem << '\n';
  if (!problems.empty()) return ExitCode::File;
  console.out << "The file is sound: " << counted(file.yard().beds.size(), "bed") << ", "
              << counted(file.yard().drifts.size(), "drift") << ", "
              << counted(file.history().size(), "edit") << ".\n";
  return ExitCode::Done;
}

}  // namespace

void addVerify(CLI::App& app, Action& chosen) {
  auto* command =
      app.add_subcommand("verify", "Test that the file is whole and its history replays");
  auto path = std::make_shared<std::string>();
  command->add_option("FILE", *path, "Yard file")->required();
  command->callback(
      [path, &chosen] { chosen = [path](Console& console) { return runVerify(*path, console); }; });
}

}  // namespace tussock
