// SPDX-License-Identifier: MIT
// The planting plan through Qt's printing, onto a printer that writes PDF, read back by other
// means.
#include <QFile>
#include <QProcess>

#include <gtest/gtest.h>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class PrintingTest : public test::WindowTest {
 protected:
  void startPlanted() {
    start(test::YardBuilder()
              .bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))")
              .drift("Echinacea purpurea", test::row(7, 0.5, {1, 1}))
              .build());
    prompts->printed = path(QStringLiteral("printed.pdf"));
  }
  [[nodiscard]] QString ask(const char* tool, const QStringList& after = {}) const {
    QProcess reader;
    reader.start(QString::fromLatin1(tool), QStringList{prompts->printed} + after);
    EXPECT_TRUE(reader.waitForFinished());
    return QString::fromUtf8(reader.readAllStandardOutput());
  }
};

TEST_F(PrintingTest, TheWholePlanComesOutOnThePrintersPaper) {
  startPlanted();
  for (const auto& [paper, name] :
       {std::pair{QPageSize::Letter, "letter"}, std::pair{QPageSize::A4, "A4"}}) {
    prompts->paper = paper;
    trigger("actionPrint");
    ASSERT_TRUE(QFile::exists(prompts->printed));
    EXPECT_EQ(
        QProcess::execute(QStringLiteral("qpdf"), {QStringLiteral("--check"), prompts->printed}),
        0);
    EXPECT_TRUE(ask("pdfinfo").contains(QString::fromLatin1(name))) << name;
    const QString text = ask("pdftotext", {QStringLiteral("-")});
    EXPECT_TRUE(text.contains(QStringLiteral("7 × ECHPUR"))) << text.toStdString();
    const qsizetype pages = text.count(QLatin1Char('\f'));  // pdftotext ends each page with one
    EXPECT_GE(pages, 2) << "an overview and a bed";
    EXPECT_TRUE(text.contains(QStringLiteral("Sheet %1 of %1").arg(pages))) << text.toStdString();
    QFile::remove(prompts->printed);
  }
  EXPECT_FALSE(window->messages().isVisible());
}

TEST_F(PrintingTest, AnotherPaperIsToldAndNothingPrinted) {
  startPlanted();
  prompts->paper = QPageSize::A5;
  trigger("actionPrint");
  EXPECT_FALSE(QFile::exists(prompts->printed));
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("A5")));
}

TEST_F(PrintingTest, ThinkingBetterOfItPrintsNothing) {
  startPlanted();
  const QString file = std::exchange(prompts->printed, QString());
  trigger("actionPrint");
  EXPECT_FALSE(QFile::exists(file));
  EXPECT_FALSE(window->messages().isVisible());
}

}  // namespace
}  // namespace tussock
