// SPDX-License-Identifier: MIT
// Paper and scale of the planting plan, chosen in the menus and read back from the file written.
#include <QFile>
#include <QProcess>

#include <gtest/gtest.h>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class PlanChoicesTest : public test::WindowTest {
 protected:
  [[nodiscard]] QString planWith(const char* tool, const QStringList& before,
                                 const QStringList& after = {}) {
    prompts->plan = path(QStringLiteral("plan.pdf"));
    trigger("actionPlan");
    QProcess reader;
    reader.start(QString::fromLatin1(tool), before + QStringList{prompts->plan} + after);
    EXPECT_TRUE(reader.waitForFinished());
    return QString::fromUtf8(reader.readAllStandardOutput());
  }
};

// Sizes in points: letter 8.5 x 11 in (ANSI/ASME Y14.1 size A), A4 210 x 297 mm (ISO 216).
TEST_F(PlanChoicesTest, PaperIsAsChosen) {
  start(test::YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build());
  trigger("actionPaperLetter");
  EXPECT_TRUE(planWith("pdfinfo", {}).contains(QStringLiteral("letter")));
  trigger("actionPaperA4");
  EXPECT_TRUE(planWith("pdfinfo", {}).contains(QStringLiteral("A4")));
}

TEST_F(PlanChoicesTest, ScaleIsAsChosen) {
  start(test::YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build());
  trigger("actionScale96");
  EXPECT_TRUE(planWith("pdftotext", {}, {QStringLiteral("-")}).contains(QStringLiteral("1:96")));
  trigger("actionScale48");
  EXPECT_TRUE(planWith("pdftotext", {}, {QStringLiteral("-")}).contains(QStringLiteral("1:48")));
}

}  // namespace
}  // namespace tussock
