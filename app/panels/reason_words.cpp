// SPDX-License-Identifier: MIT
#include "app/panels/reason_words.h"

#include <QStringList>

namespace tussock {

QString joinedReasons(const std::vector<std::string>& reasons) {
  QStringList list;
  for (const std::string& one : reasons) list << QString::fromStdString(one);
  return list.join(QStringLiteral("; "));
}

QString reasonWords(const std::vector<std::string>& reasons) {
  QString words = joinedReasons(reasons);
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

}  // namespace tussock
