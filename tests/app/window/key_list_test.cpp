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
