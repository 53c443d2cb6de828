// SPDX-License-Identifier: MIT
#include <iostream>
#include <string>
#include <vector>

#include "app/cli/command_line.h"

int main(int argc, char** argv) {
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  return static_cast<int>(tussock::runCommandLine(arguments, std::cout, std::cerr));
}
