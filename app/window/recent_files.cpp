// SPDX-License-Identifier: MIT
#include "app/window/recent_files.h"

#include <QFileInfo>

namespace tussock {

namespace {
QString key() {
  return QStringLiteral("recentFiles");
}
}  // namespace

void RecentFiles::add(const QString& path) {
  QStringList paths = settings_.value(key()).toStringList();
  paths.removeAll(path);
  paths.prepend(path);
  settings_.setValue(key(), QStringList(paths.mid(0, kMost)));
}

QStringList RecentFiles::paths() const {
  QStringList there;
  for (const QString& path : settings_.value(key()).toStringList())
    if (QFileInfo::exists(path)) there.append(path);
  return there;
}

}  // namespace tussock
