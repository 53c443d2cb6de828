// SPDX-License-Identifier: MIT
// Runs a tool that reads what was written.
#pragma once

#include <QProcess>
#include <QString>
#include <QStringList>

namespace tussock::test {

struct Answer {
  int exitCode = -1;
  QString output;
};
inline Answer run(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.setProcessChannelMode(QProcess::MergedChannels);
  process.start(program, arguments);
  if (!process.waitForFinished(60000)) return {-1, process.errorString()};
  return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

}  // namespace tussock::test
