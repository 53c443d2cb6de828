// SPDX-License-Identifier: MIT
// A locked drift takes no edit, and says so to whoever tries one.
#include <QLabel>
#include <QPushButton>

#include "app/document/document.h"
#include "app/panels/margin_panel.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class LockedDrift : public WindowTest {
 protected:
  // Two rows of three; the first is locked and selected.
  void startLocked() {
    YardBuilder builder;
    builder.units(UnitSystem::Metres);
    builder.bed("Front", "POLYGON((0 0,8 0,8 5,0 5,0 0))").viewing("S");
    builder.drift("Carex pensylvanica", row(3, 0.4, {2.0, 1.0}));
    locked = builder.lastDrift();
    builder.drift("Echinacea purpurea", row(3, 0.4, {2.0, 3.0}));
    free = builder.lastDrift();
    Yard made = builder.build();
    Drift kept = *made.drifts.find(locked);
    kept.locked = true;
    made.drifts = made.drifts.with(kept);
    start(made);
    lookAt({4, 2.5});
    before = *inFile().drifts.find(locked);
    document.select({refTo(locked)});
  }
  [[nodiscard]] QString said() const { return window->findChild<MessageBar*>()->words(); }
  void expectRefused(const char* what) {
    EXPECT_TRUE(said().contains(QStringLiteral("locked"), Qt::CaseInsensitive))
        << what << ": " << said().toStdString();
    const Yard now = inFile();
    ASSERT_NE(now.drifts.find(locked), nullptr) << what;
    EXPECT_EQ(*now.drifts.find(locked), before) << what;
    window->findChild<MessageBar*>()->dismiss();
  }

  Id<Drift> locked, free;
  Drift before;
};

TEST_F(LockedDrift, IsNotDeletedAndSaysWhy) {
  startLocked();
  key(Qt::Key_Delete);
  expectRefused("Delete");
  EXPECT_EQ(document.selection(), std::vector{refTo(locked)});
  trigger("actionDelete");
  expectRefused("Delete from the menu");
}

TEST_F(LockedDrift, StaysWhereOthersAreDeletedWithIt) {
  startLocked();
  document.select({refTo(locked), refTo(free)});
  key(Qt::Key_Delete);
  EXPECT_EQ(inFile().drifts.find(free), nullptr);
  expectRefused("Delete of two");
}

TEST_F(LockedDrift, GoesWithItsBed) {
  startLocked();
  document.select({refTo(inFile().beds.begin()->id), refTo(locked)});
  key(Qt::Key_Delete);
  EXPECT_TRUE(inFile().drifts.empty());
}

TEST_F(LockedDrift, SaysSoToEveryWayOfChangingIt) {
  startLocked();
  key(Qt::Key_R);
  expectRefused("R");
  key(Qt::Key_Plus);
  expectRefused("+");
  drag({2.0, 1.0}, {2.5, 1.5}, Qt::AltModifier);
  expectRefused("Alt and drag");
  trigger("actionSetOut");
  expectRefused("Set out anew");
}

TEST_F(LockedDrift, SaysSoBesideItsCount) {
  startLocked();
  auto* margin = window->findChild<MarginPanel*>();
  QTest::mouseClick(margin->findChild<QPushButton*>(QStringLiteral("drift-more")), Qt::LeftButton);
  auto* words = margin->findChild<QLabel*>(QStringLiteral("drift-said"));
  ASSERT_NE(words, nullptr);
  EXPECT_TRUE(words->text().contains(QStringLiteral("locked"))) << words->text().toStdString();
  EXPECT_EQ(*inFile().drifts.find(locked), before);
}

}  // namespace
}  // namespace tussock::test
