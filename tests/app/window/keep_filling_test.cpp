// SPDX-License-Identifier: MIT
// A filling that is stopped may keep what the plan shows by then.
#include <QAction>
#include <QLabel>

#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

class KeepFilling : public FillWindow {
 protected:
  // So large that much is still to be tried when the first planting stands.
  void startLarge() {
    startBed(sunnyList(), "POLYGON((0 0, 40 0, 40 20, 0 20, 0 0))");
    document.waitForAnalysis();
    QObject::connect(&filling(), &Filling::bestChanged, window.get(), [this](const ChangeSet& now) {
      if (!now.empty()) shown_ = now;
    });
  }
  void fillUntilItStands() {
    ASSERT_TRUE(filling().running());
    ASSERT_TRUE(QTest::qWaitFor([&] { return filling().canKeep(); }, 60000));
    ASSERT_TRUE(filling().running());
  }
  [[nodiscard]] static std::set<std::string> drifts(const ChangeSet& edit) {
    std::set<std::string> all;
    for (const Change& change : edit.changes)
      if (const auto* drift = change.after ? std::get_if<Drift>(&*change.after) : nullptr)
        all.insert(words(*drift));
    return all;
  }
  [[nodiscard]] static std::string words(const Drift& drift) {
    std::string all = drift.species;
    for (const Plant& plant : drift.plants)
      all += ' ' + std::to_string(plant.at.x) + ' ' + std::to_string(plant.at.y);
    return all;
  }
  [[nodiscard]] std::set<std::string> driftsInFile() const {
    std::set<std::string> all;
    for (const Drift& drift : inFile().drifts) all.insert(words(drift));
    return all;
  }
  // One edit, of what was shown, and told.
  void expectKept() {
    EXPECT_FALSE(filling().running());
    const std::set<std::string> kept = driftsInFile();
    EXPECT_GT(kept.size(), 10u);
    EXPECT_EQ(kept, drifts(shown_));
    EXPECT_EQ(undoLabel(), QStringLiteral("Fill Walk"));
    QTest::qWait(50);  // nothing is handed in afterwards
    EXPECT_EQ(driftsInFile(), kept);
    document.select({refTo(bed)});
    const auto* note = part<QLabel>("fill-notes");
    ASSERT_TRUE(comesIntoSight(note));
    EXPECT_TRUE(note->text().startsWith(QStringLiteral("Stopped early")))
        << note->text().toStdString();
    trigger("actionUndo");
    EXPECT_TRUE(inFile().drifts.empty());
    EXPECT_TRUE(undoLabel().isEmpty());
  }

 private:
  ChangeSet shown_;
};

TEST_F(KeepFilling, ByAClickOnceAPlantingStands) {
  startLarge();
  push("fill-bed");
  auto* keep = part<QPushButton>("fill-stop-keep");
  ASSERT_TRUE(comesIntoSight(keep));
  EXPECT_FALSE(keep->isEnabled()) << "the drifts only grow";
  QTest::mouseClick(keep, Qt::LeftButton);
  fillUntilItStands();
  ASSERT_TRUE(keep->isEnabled());
  QTest::mouseClick(keep, Qt::LeftButton);
  expectKept();
}

TEST_F(KeepFilling, FromTheButtonsOfTheBar) {
  startLarge();
  part<QPushButton>("fill-bed")->setFocus();
  QTest::keyClick(part<QPushButton>("fill-bed"), Qt::Key_Space);
  fillUntilItStands();
  ASSERT_EQ(window->focusWidget(), part<QPushButton>("fill-stop"));
  QTest::keyClick(window->focusWidget(), Qt::Key_Backtab, Qt::ShiftModifier);
  ASSERT_EQ(window->focusWidget(), part<QPushButton>("fill-stop-keep"));
  QTest::keyClick(window->focusWidget(), Qt::Key_Space);
  EXPECT_EQ(window->focusWidget(), part<QPushButton>("fill-bed"));
  expectKept();
}

TEST_F(KeepFilling, ByAKeyOnThePlanAndByTheLineAtTheFoot) {
  startLarge();
  const auto* action = window->findChild<QAction*>(QStringLiteral("actionKeepFilling"));
  EXPECT_FALSE(action->isEnabled());
  key(Qt::Key_B, Qt::ControlModifier);
  fillUntilItStands();
  EXPECT_TRUE(action->isEnabled());
  key(Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_FALSE(action->isEnabled());
  expectKept();
  key(Qt::Key_B, Qt::ControlModifier);
  fillUntilItStands();
  document.select({});
  push("fill-running-stop-keep");
  expectKept();
}

// The other way out, although a planting stands.
TEST_F(KeepFilling, EscapeLeavesTheBedAsItWas) {
  startLarge();
  key(Qt::Key_B, Qt::ControlModifier);
  fillUntilItStands();
  key(Qt::Key_Escape);
  EXPECT_FALSE(filling().running());
  EXPECT_FALSE(filling().canKeep());
  QTest::qWait(50);
  EXPECT_TRUE(inFile().drifts.empty());
  EXPECT_TRUE(undoLabel().isEmpty());
}

// Nobody asked for these species: that is said of what is kept early too.
TEST_F(KeepFilling, AProposedListIsToldToo) {
  startBed({}, "POLYGON((0 0, 40 0, 40 20, 0 20, 0 0))");
  push("fill-bed");
  fillUntilItStands();
  push("fill-stop-keep");
  ASSERT_GE(filling().notesOf(bed).size(), 2u);
  EXPECT_EQ(filling().notesOf(bed)[0].find("Stopped early"), 0u);
  EXPECT_EQ(filling().notesOf(bed)[1].find("The bed has no plant list"), 0u);
  EXPECT_FALSE(filling().proposedFor(bed).empty());
}

}  // namespace
}  // namespace tussock::test
