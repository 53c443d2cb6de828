// SPDX-License-Identifier: MIT
// The list of keys holds every key there is, and nothing that two commands share.
#include "app/window/key_list.h"

#include <map>
#include <QAction>

#include <gtest/gtest.h>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class KeyListTest : public test::WindowTest {
 protected:
  [[nodiscard]] KeyList* list() const { return window->findChild<KeyList*>(); }
  [[nodiscard]] std::multimap<QString, QString> listed() const {
    std::multimap<QString, QString> keys;
    for (const KeyList::Section& section : list()->sections())
      for (const GestureWords& row : section.rows) keys.emplace(row.keys, row.does);
    return keys;
  }
};

TEST_F(KeyListTest, HoldsTheKeyOfEveryCommandAndTool) {
  const auto keys = listed();
  int found = 0;
  for (const QAction* action : window->findChildren<QAction*>()) {
    const QString name = action->objectName();
    if (!name.startsWith(QLatin1String("action")) && !name.startsWith(QLatin1String("tool")))
      continue;
    if (action->shortcut().isEmpty()) continue;
    ++found;
    EXPECT_EQ(keys.count(action->shortcut().toString(QKeySequence::NativeText)), 1u)
        << name.toStdString();
  }
  EXPECT_GT(found, 25);
  EXPECT_EQ(keys.count(QStringLiteral("Ctrl+Shift+S")), 1u);
}

TEST_F(KeyListTest, TellsTheGesturesOfEveryTool) {
  QString titles;
  for (const KeyList::Section& section : list()->sections())
    titles += section.title + QLatin1Char(' ');
  for (const char* tool : {"Select", "Bed", "Hole", "Split", "Building", "Wall", "Tree", "Paving",
                           "Step", "Water", "Lot line", "Photo", "Measure"})
    EXPECT_TRUE(titles.contains(QString::fromLatin1(tool))) << tool;
}

// Letters are struck by mistake. Alone they may take up a tool, lock or turn; what they change is
// one undo away.
TEST_F(KeyListTest, NoLetterAloneTakesAPlantOrAThingAway) {
  test::YardBuilder planted;
  planted.bed("Walk", "POLYGON((0 0, 6 0, 6 3, 0 3, 0 0))");
  const Id<Drift> low =
      planted.drift("Monarda fistulosa", test::row(3, 0.1, {1.0, 1.0})).lastDrift();
  const Id<Drift> high =
      planted.drift("Monarda fistulosa", test::row(5, 0.4, {1.0, 2.0})).lastDrift();
  start(planted.build());
  const Yard before = inFile();
  for (int letter = Qt::Key_A; letter <= Qt::Key_Z; ++letter) {
    trigger("toolSelect");
    document.select({refTo(low), refTo(high)});
    key(Qt::Key(letter));
    const Yard after = inFile();
    const auto said = std::string(1, char('A' + letter - Qt::Key_A));
    ASSERT_EQ(after.drifts.size(), before.drifts.size()) << said;
    EXPECT_EQ(after.beds.size(), before.beds.size()) << said;
    for (const Drift& drift : before.drifts)
      EXPECT_EQ(after.drifts.find(drift.id)->plants.size(), drift.plants.size()) << said;
    while (document.undoLabel()) document.undo();
    EXPECT_EQ(inFile().drifts.find(low)->plants, before.drifts.find(low)->plants) << said;
  }
}

TEST_F(KeyListTest, StandsBesideTheWork) {
  start();
  trigger("actionKeys");
  EXPECT_TRUE(list()->isVisible());
  EXPECT_FALSE(list()->isModal());
  trigger("actionKeys");
  EXPECT_TRUE(list()->isVisible());
  list()->close();
}

}  // namespace
}  // namespace tussock
