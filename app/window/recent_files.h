// SPDX-License-Identifier: MIT
// The yards opened last, newest first, kept between sessions.
#pragma once

#include <QSettings>
#include <QStringList>

namespace tussock {

class RecentFiles {
 public:
  static constexpr int kMost = 8;
  explicit RecentFiles(QSettings& settings) : settings_(settings) {}
  void add(const QString& path);
  [[nodiscard]] QStringList paths() const;  // those that are still there

 private:
  QSettings& settings_;
};

}  // namespace tussock
