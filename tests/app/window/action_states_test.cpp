// SPDX-License-Identifier: MIT
// A command that could do nothing is not offered.
#include <filesystem>
#include <QAction>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include "app/document/filling.h"
#include "app/panels/margin_panel.h"
#include "tests/app/window/window_fixture.h"
#include "tests/support/without_privileges.h"

namespace tussock {
namespace {

using test::YardBuilder;

class ActionStates : public test::WindowTest {
 protected:
  [[nodiscard]] bool enabled(const char* name) const {
    const auto* action = window->findChild<QAction*>(QString::fromLatin1(name));
    EXPECT_TRUE(action) << name;
    return action && action->isEnabled();
  }
  void expectAll(const std::vector<const char*>& names, bool wanted) const {
    for (const char* name : names) EXPECT_EQ(enabled(name), wanted) << name;
  }
  const std::vector<const char*> ofYard{
      "actionSaveCopy", "actionClose", "actionImport",    "actionExport", "actionPhoto",
      "actionPlan",     "actionPrint", "actionFit",       "actionZoomIn", "actionZoomOut",
      "actionSun",      "actionNames", "actionUnitsFeet", "toolSelect",   "toolBed",
      "toolPhoto",      "toolMeasure"};
  const std::vector<const char*> ofSelection{"actionDelete", "actionToSelection"};
  const std::vector<const char*> ofDrift{"actionSetOut", "actionSettle", "actionLock"};
};

TEST_F(ActionStates, WithoutAYardOnlyThoseThatBringOne) {
  expectAll(ofYard, false);
  expectAll(ofSelection, false);
  expectAll(ofDrift, false);
  expectAll({"actionMerge", "actionSelectAll", "actionUndo", "actionRedo"}, false);
  expectAll({"actionNew", "actionOpen", "actionExample", "actionQuit", "actionKeys", "actionAbout"},
            true);
}

TEST_F(ActionStates, TwoKeysDoAgainWhatWasUndone) {
  start();
  window->activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  trigger("toolWater");
  click({2.0, 1.0});
  ASSERT_EQ(inFile().waterPoints.size(), 1u);
  for (const auto& [again, held] :
       {std::pair{Qt::Key_Y, Qt::KeyboardModifiers(Qt::ControlModifier)},
        std::pair{Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier}}) {
    QTest::keyClick(&canvas(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(inFile().waterPoints.size(), 0u);
    QTest::keyClick(&canvas(), again, held);
    EXPECT_EQ(inFile().waterPoints.size(), 1u);
  }
}

TEST_F(ActionStates, FollowWhatIsSelected) {
  YardBuilder yard;
  yard.bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))");
  yard.drift("Echinacea purpurea", {{1, 1}, {1.4, 1}, {1.8, 1}});
  yard.drift("Echinacea purpurea", {{4, 1}, {4.4, 1}, {4.8, 1}});
  start(yard.build());
  expectAll(ofYard, true);
  expectAll(ofSelection, false);
  expectAll({"actionSelectAll"}, true);
  click({0.2, 1.8});  // the bed beside the drifts
  expectAll(ofSelection, true);
  expectAll(ofDrift, false);
  click({1.4, 1.0});
  expectAll(ofDrift, true);
  expectAll({"actionMerge"}, false);
  click({4.4, 1.0}, Qt::ShiftModifier);
  expectAll({"actionMerge"}, true);
  trigger("actionDelete");
  EXPECT_TRUE(inFile().drifts.empty());
  expectAll(ofSelection, false);
  expectAll(ofDrift, false);
  expectAll({"actionSelectAll"}, false);
  expectAll({"actionUndo"}, true);
}

// With a drift of it selected, and from the keyboard.
TEST_F(ActionStates, TheBedAtHandIsFilled) {
  YardBuilder yard;
  yard.bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))");
  yard.drift("Echinacea purpurea", {{1, 1}, {1.4, 1}, {1.8, 1}});
  start(yard.build());
  expectAll({"actionFillBed"}, false);
  click({1.4, 1.0});
  expectAll({"actionFillBed"}, true);
  Filling& filling = window->findChild<MarginPanel*>(QStringLiteral("margin"))->filling();
  QSignalSpy ended(&filling, &Filling::ended);
  QTest::keyClick(&canvas(), Qt::Key_B, Qt::ControlModifier);
  ASSERT_TRUE(filling.running());
  ASSERT_TRUE(ended.wait(30000));
  const Yard planted = inFile();
  EXPECT_GT(planted.drifts.size(), 3u);
  EXPECT_EQ(document.selection(), std::vector{refTo(planted.beds.begin()->id)});
}

TEST_F(ActionStates, AYardThatCannotBeWrittenToCanBeLookedAtAndCopied) {
  const QString locked = path(QStringLiteral("locked.yard"));
  (void)YardFile::create(locked.toStdString(),
                         YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build());
  std::filesystem::permissions(locked.toStdString(), std::filesystem::perms(0444));
  std::filesystem::permissions(dir.path().toStdString(), std::filesystem::perms(0755));
  const test::WithoutPrivileges asOthers;
  prompts->yard = locked;
  trigger("actionOpen");
  ASSERT_TRUE(document.isReadOnly()) << window->messages().words().toStdString();
  click({1.0, 1.0});
  expectAll({"actionDelete", "actionPhoto", "actionImport", "toolBed", "actionUnitsMetres"}, false);
  expectAll({"actionSaveCopy", "actionPlan", "actionExport", "toolSelect", "toolMeasure",
             "actionToSelection"},
            true);
}

}  // namespace
}  // namespace tussock
