// SPDX-License-Identifier: MIT
#include "app/cli/command_line.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <ostream>

#include "app/cli/commands.h"

namespace tussock {

namespace {

constexpr std::array kAdders{addExample, addNew,  addImport, addExport,     addSun,     addFill,
                             addCheck,   addPlan, addPlants, addSubstitute, addHistory, addVerify};

void describeProgram(CLI::App& app) {
  app.name("tussock");
  app.description(
      "Plan native-plant beds: draw, plant, check and print.\n"
      "  tussock [FILE] opens the window; the commands below work without one.");
  app.footer(
      "Exit codes: 0 done, 1 findings not accepted, 2 wrong usage, 3 the file cannot be used.");
  app.set_version_flag("--version", "tussock 0.1.0");
  app.require_subcommand(1);
}

bool isCommandName(const std::string& word) {
  CLI::App app;
  Action none;
  for (const auto add : kAdders) add(app, none);
  const auto commands = app.get_subcommands([](const CLI::App*) { return true; });
  return std::any_of(commands.begin(), commands.end(),
                     [&](const CLI::App* command) { return command->get_name() == word; });
}

// "help", or "help sun", as most would try it first.
void askForHelp(std::vector<std::string>& words) {
  words.erase(words.begin());
  words.emplace_back("--help");
}

ExitCode reportUsage(CLI::App& app, const CLI::ParseError& error, Console& console) {
  const int code = app.exit(error, console.out, console.err);
  return code == 0 ? ExitCode::Done : ExitCode::Usage;
}

ExitCode runGuarded(const Action& action, Console& console) {
  try {
    return action(console);
  } catch (const UsageError& error) {
    console.err << "tussock: " << error.what() << '\n';
    return ExitCode::Usage;
  } catch (const std::exception& error) {
    console.err << "tussock: " << error.what() << '\n';
    return ExitCode::File;
  }
}

}  // namespace

bool asksForWindow(const std::vector<std::string>& arguments) {
  if (arguments.empty()) return true;
  const std::string& first = arguments.front();
  const bool help = first == "help" && !std::filesystem::exists(first);
  if (arguments.size() > 1 || first.empty() || first.starts_with('-') || help ||
      isCommandName(first))
    return false;
  return lowerExtension(first) == ".yard" || std::filesystem::exists(first);
}

ExitCode runCommandLine(const std::vector<std::string>& arguments, std::ostream& out,
                        std::ostream& err) {
  CLI::App app;
  describeProgram(app);
  Action chosen;
  for (const auto add : kAdders) add(app, chosen);
  Console console{out, err};
  try {
    std::vector<std::string> words = arguments;
    if (!words.empty() && words.front() == "help") askForHelp(words);
    // CLI11 takes the arguments last first.
    app.parse(std::vector<std::string>(words.rbegin(), words.rend()));
  } catch (const CLI::ParseError& error) {
    return reportUsage(app, error, console);
  }
  return runGuarded(chosen, console);
}

}  // namespace tussock
