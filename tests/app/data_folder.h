// SPDX-License-Identifier: MIT
// A data folder of the test's own, so that it neither reads nor changes what a person keeps there.
#pragma once

#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace tussock::test {

class DataFolder {
 public:
  DataFolder() {
    QStandardPaths::setTestModeEnabled(false);  // it would look elsewhere than in XDG_DATA_HOME
    qputenv("XDG_DATA_HOME", QFile::encodeName(folder_.path()));
  }
  ~DataFolder() {
    qunsetenv("XDG_DATA_HOME");
    QStandardPaths::setTestModeEnabled(true);
  }
  DataFolder(const DataFolder&) = delete;
  DataFolder& operator=(const DataFolder&) = delete;

  [[nodiscard]] QString filePath(const QString& name) const { return folder_.filePath(name); }

 private:
  QTemporaryDir folder_;
};

}  // namespace tussock::test
