// SPDX-License-Identifier: MIT
// The command line as a test calls it, with a folder of its own.
#pragma once

#include <filesystem>
#include <fstream>
#include <QTemporaryDir>
#include <sstream>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "app/cli/command_line.h"

namespace tussock::test {

struct Outcome {
  ExitCode code;
  std::string out, err;
};

[[nodiscard]] inline Outcome run(const std::vector<std::string>& arguments) {
  std::ostringstream out;
  std::ostringstream err;
  const ExitCode code = runCommandLine(arguments, out, err);
  return {code, out.str(), err.str()};
}

class CliTest : public testing::Test {
 protected:
  [[nodiscard]] std::string path(const std::string& name) const {
    return (std::filesystem::path(folder_.path().toStdString()) / name).string();
  }
  void write(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
  }

  // A fresh one, on disk.
  [[nodiscard]] std::string example() const {
    EXPECT_EQ(run({"example", path("example.yard")}).code, ExitCode::Done);
    return path("example.yard");
  }

 private:
  QTemporaryDir folder_;
};

}  // namespace tussock::test
