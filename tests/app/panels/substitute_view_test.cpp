// SPDX-License-Identifier: MIT
#include "app/panels/substitute_view.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "app/panels/margin_panel.h"
#include "core/catalog/plan_codes.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

constexpr auto kConeflower = "Echinacea purpurea";
constexpr auto kAster = "Symphyotrichum laeve";

class SubstituteTest : public test::OpenYard {
 protected:
  SubstituteTest() {
    panel.resize(380, 1800);
    panel.show();
    one = plant(kConeflower, 5, {2, 2});
    other = plant(kConeflower, 7, {6, 2});
    document.waitForAnalysis();
    document.select({refTo(one)});
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
  }
  template <class W>
  W* shown(const char* name) const {
    QCoreApplication::processEvents();
    for (W* found : panel.findChildren<W*>(QLatin1String(name)))
      if (found->isVisibleTo(&panel)) return found;
    return nullptr;
  }
  void click(const char* name) const {
    auto* button = shown<QPushButton>(name);
    ASSERT_TRUE(button) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  void look() const {
    click("substitute-ask");
    auto* search = panel.findChild<Substitutes*>();
    ASSERT_TRUE(search);
    search->wait();
  }

  MarginPanel panel{document};
  Id<Drift> one, other;
};

TEST_F(SubstituteTest, OnePressPutsTheOtherSpeciesInAllDriftsInTheFile) {
  look();
  click("substitute-put");  // of four species the aster alone suits this bed beside coneflower
  const Yard kept = onDisk();
  for (const Id<Drift> drift : {one, other}) {
    EXPECT_EQ(kept.drifts.find(drift)->species, kAster);
    EXPECT_EQ(kept.drifts.find(drift)->plants.size() % 2, 1u);
  }
  EXPECT_FALSE(codeOf(kept, kAster).empty());
  EXPECT_EQ(shown<QLabel>("drift-common")->text(), QStringLiteral("smooth aster"));
}

TEST_F(SubstituteTest, OneUndoBringsAllBack) {
  const Yard before = onDisk();
  look();
  click("substitute-put");
  document.undo();
  const Yard after = onDisk();
  EXPECT_EQ(after.drifts, before.drifts);
}

TEST_F(SubstituteTest, TellsCountsAndWhatItWouldCause) {
  look();
  ASSERT_TRUE(shown<QLabel>("substitute-count"));
  EXPECT_TRUE(shown<QLabel>("substitute-count")->text().contains(QStringLiteral("in place of 12")))
      << qPrintable(shown<QLabel>("substitute-count")->text());
  EXPECT_TRUE(shown<QLabel>("substitute-caused"));
}

TEST_F(SubstituteTest, TheFirstIsBroughtIntoView) {
  panel.resize(380, 700);
  look();
  auto* put = shown<QPushButton>("substitute-put");
  ASSERT_TRUE(put);
  QCoreApplication::processEvents();
  EXPECT_TRUE(put->visibleRegion().contains(put->rect().center()));
}

TEST_F(SubstituteTest, AfterASwapTheKeyboardStaysHere) {
  panel.activateWindow();
  look();
  auto* put = shown<QPushButton>("substitute-put");
  ASSERT_TRUE(put);
  put->setFocus();
  QTest::keyClick(put, Qt::Key_Space);
  auto* ask = shown<QPushButton>("substitute-ask");
  ASSERT_TRUE(ask);
  EXPECT_TRUE(ask->hasFocus());
}

TEST_F(SubstituteTest, AnEditMeanwhileMakesTheProposalsVoid) {
  look();
  ASSERT_TRUE(document.commit(renamed("Other name")));
  EXPECT_FALSE(shown<QPushButton>("substitute-put"));
  EXPECT_TRUE(shown<QPushButton>("substitute-ask"));
}

TEST_F(SubstituteTest, ALockedDriftStaysAndIsTold) {
  Drift locked = *document.yard().drifts.find(one);
  locked.locked = true;
  ASSERT_TRUE(document.commit(put(locked, "Lock")));
  look();
  click("substitute-put");
  EXPECT_EQ(onDisk().drifts.find(one)->species, kConeflower);
  EXPECT_EQ(onDisk().drifts.find(other)->species, kAster);
}

}  // namespace
}  // namespace tussock
