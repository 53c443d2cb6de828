// SPDX-License-Identifier: MIT
#include <iostream>
#include <string>
#include <vector>

#include "app/cli/command_line.h"
#include "app/window/application.h"
#include "app/window/run_window.h"

int main(int argc, char** argv) {
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  if (!tussock::asksForWindow(arguments))
    return static_cast<int>(tussock::runCommandLine(arguments, std::cout, std::cerr));
  if (!tussock::hasDisplay()) {
    std::cerr << "There is no display to open a window on. These commands work without one: "
                 "tussock --help lists them.\n";
    return static_cast<int>(tussock::ExitCode::Usage);
  }
  tussock::Application application(argc, argv);
  return tussock::runWindow(application, QApplication::arguments().value(1));
}
