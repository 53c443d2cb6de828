// SPDX-License-Identifier: MIT
// One species of a bed planted anew, chosen from the menu with the keyboard.
#include <QMenu>

#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

using Refill = FillWindow;

TEST_F(Refill, PlantsOneSpeciesAnewAndNoOther) {
  startBed(sunnyList());
  fillWith("fill-bed");
  const Yard before = inFile();
  ASSERT_GT(speciesIn(before).size(), 1u);
  QMenu* menu = part<QPushButton>("fill-species")->menu();
  menu->popup(window->mapToGlobal(QPoint(20, 20)));
  ASSERT_EQ(std::size_t(menu->actions().size()), speciesIn(before).size());
  QSignalSpy ended(&filling(), &Filling::ended);
  QTest::keyClick(menu, Qt::Key_Down);
  QTest::keyClick(menu, Qt::Key_Return);
  ASSERT_TRUE(ended.wait(60000));
  std::set<std::string> changed;
  const Yard after = inFile();
  for (const Drift& drift : before.drifts)
    if (const Drift* now = after.drifts.find(drift.id); !now || *now != drift)
      changed.insert(drift.species);
  EXPECT_EQ(changed.size(), 1u);
  EXPECT_EQ(speciesIn(after), speciesIn(before));
  const Species* known = document.facts().find(*changed.begin());
  ASSERT_NE(known, nullptr);
  EXPECT_EQ(undoLabel().toStdString(), "Refill " + document.facts().nameApart(*known) + " in Walk");
}

}  // namespace
}  // namespace tussock::test
