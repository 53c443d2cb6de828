// SPDX-License-Identifier: MIT
// Plan codes in the window: what a plant that has left was called is not given to another.
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>

#include "app/document/personal_plants.h"
#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "core/catalog/plan_codes.h"
#include "tests/app/window/window_fixture.h"
#include "tests/support/plant_text.h"

namespace tussock {
namespace {

constexpr auto kLeaves = "Monarda fistulosa";
constexpr auto kComes = "Monarda fistularis";  // invented, for the same six letters

class PlanCodeTest : public test::WindowTest {
 protected:
  PlanCodeTest() {
    QDir().mkpath(QFileInfo(personalPlantsPath()).path());
    QFile own(personalPlantsPath());
    EXPECT_TRUE(own.open(QIODevice::WriteOnly));
    own.write(QByteArray::fromStdString(test::plantHeader() +
                                        test::plantRow({{"botanical_name", kComes}})));
    own.close();
    start(test::YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 4, 0 4, 0 0))").build());
    window->loadOwnPlants();
    prompts->printed = path(QStringLiteral("plan.pdf"));
  }
  // Found by its name on the bench and dragged to the place.
  void plant(const char* name, Point at) {
    auto* bench = window->findChild<BenchPanel*>();
    bench->searchField()->clear();
    QTest::keyClicks(bench->searchField(), QString::fromLatin1(name));
    ASSERT_EQ(bench->cards()->species().size(), 1u);
    QWidget* cards = bench->cards()->viewport();
    const QPoint from = bench->cards()->cardRect(0).center();
    const QPoint to = cards->mapFromGlobal(canvas().mapToGlobal(pixels(at)));
    QTest::mousePress(cards, Qt::LeftButton, {}, from);
    QTest::mouseMove(cards, from - QPoint(0, 40));
    QTest::mouseMove(cards, to);
    QTest::mouseRelease(cards, Qt::LeftButton, {}, to);
  }
  [[nodiscard]] QString codeShown() const {
    for (const auto* label : window->findChildren<QLabel*>(QStringLiteral("drift-code")))
      if (label->isVisible()) return label->text();
    return {};
  }
  [[nodiscard]] QString onPaper() {
    trigger("actionPrint");
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {prompts->printed, QStringLiteral("-")});
    EXPECT_TRUE(reader.waitForFinished());
    QFile::remove(prompts->printed);
    return QString::fromUtf8(reader.readAllStandardOutput());
  }
};

TEST_F(PlanCodeTest, ThatOfAPlantThatHasLeftIsNotGivenToAnother) {
  plant(kLeaves, {3.0, 2.0});
  ASSERT_EQ(codeOf(inFile(), kLeaves), "MONFIS");
  document.select({refTo(yard().drifts.begin()->id)});
  key(Qt::Key_Delete);
  ASSERT_EQ(inFile().drifts.size(), 0u);
  plant(kComes, {3.0, 2.0});
  ASSERT_EQ(inFile().drifts.size(), 1u);
  EXPECT_EQ(codeOf(inFile(), kComes), "MONFI2");
  document.select({refTo(yard().drifts.begin()->id)});
  QCoreApplication::processEvents();
  EXPECT_EQ(codeShown(), QStringLiteral("MONFI2"));
  const QString plan = onPaper();
  EXPECT_TRUE(plan.contains(QStringLiteral("× MONFI2"))) << plan.toStdString();
  EXPECT_FALSE(plan.contains(QStringLiteral("MONFIS"))) << plan.toStdString();
}

TEST_F(PlanCodeTest, APlantThatComesBackHasTheCodeItHad) {
  plant(kLeaves, {1.5, 2.0});
  document.select({refTo(yard().drifts.begin()->id)});
  key(Qt::Key_Delete);
  plant(kComes, {1.5, 2.0});
  plant(kLeaves, {4.5, 2.0});
  EXPECT_EQ(codeOf(inFile(), kLeaves), "MONFIS");
  const QString plan = onPaper();
  EXPECT_TRUE(plan.contains(QStringLiteral("× MONFI2"))) << plan.toStdString();
  EXPECT_TRUE(plan.contains(QStringLiteral("× MONFIS"))) << plan.toStdString();
}

}  // namespace
}  // namespace tussock
