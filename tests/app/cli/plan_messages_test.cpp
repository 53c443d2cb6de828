// SPDX-License-Identifier: MIT
// What the program itself says when it prints, run as a job without a login session.
#include <QDir>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace tussock {
namespace {

QString messagesOf(const QStringList& arguments, const QProcessEnvironment& environment) {
  QProcess process;
  process.setProcessEnvironment(environment);
  process.start(QStringLiteral(TUSSOCK_PROGRAM), arguments);
  EXPECT_TRUE(process.waitForFinished(120000));
  EXPECT_EQ(process.exitCode(), 0);
  return QString::fromUtf8(process.readAllStandardError());
}

TEST(PlanMessages, SayWhatWasWrittenAndNothingElse) {
  const QTemporaryDir dir, temporary;
  const QString yard = dir.filePath(QStringLiteral("example.yard"));
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.remove(QStringLiteral("XDG_RUNTIME_DIR"));
  environment.insert(QStringLiteral("TMPDIR"), temporary.path());
  messagesOf({QStringLiteral("example"), yard}, environment);
  const QString pdf = dir.filePath(QStringLiteral("plan.pdf"));
  const QString said =
      messagesOf({QStringLiteral("plan"), yard, QStringLiteral("--out"), pdf}, environment);
  EXPECT_TRUE(said.endsWith(QStringLiteral("plants: %1\n").arg(pdf))) << said.toStdString();
  EXPECT_EQ(said.count(QLatin1Char('\n')), 1) << said.toStdString();
  EXPECT_TRUE(QDir(temporary.path()).isEmpty()) << "the private folder stayed";
}

// A folder that the session names wrongly is the session's fault, and Qt's word on it is passed on.
TEST(PlanMessages, OfQtAreNotHidden) {
  const QTemporaryDir dir;
  const QString yard = dir.filePath(QStringLiteral("example.yard"));
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("XDG_RUNTIME_DIR"), QStringLiteral("/no/such/folder"));
  messagesOf({QStringLiteral("example"), yard}, environment);
  const QString said = messagesOf({QStringLiteral("plan"), yard, QStringLiteral("--out"),
                                   dir.filePath(QStringLiteral("plan.pdf"))},
                                  environment);
  EXPECT_TRUE(said.contains(QStringLiteral("/no/such/folder"))) << said.toStdString();
}

}  // namespace
}  // namespace tussock
