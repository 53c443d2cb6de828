// SPDX-License-Identifier: MIT
// The window on a yard with one bed, selected by a click; its buttons are pressed where they are
// seen.
#pragma once

#include <QLineEdit>
#include <QPushButton>

#include "app/document/filling.h"
#include "app/panels/margin_panel.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {

class FillWindow : public WindowTest {
 protected:
  // `wkt` must hold (2, 1.5).
  void startBed(std::vector<ListedSpecies> list = {},
                std::string_view wkt = "POLYGON((0 0, 6 0, 6 3, 0 3, 0 0))") {
    YardBuilder builder;
    builder.bed("Walk", wkt).viewing("S");
    bed = builder.lastBed();
    Yard yard = builder.build();
    Bed listed = *yard.beds.find(bed);
    listed.plantList = std::move(list);
    yard.beds = yard.beds.with(listed);
    start(yard);
    document.waitForAnalysis();
    click({2.0, 1.5});
    EXPECT_EQ(document.selection(), std::vector{refTo(bed)});
  }
  [[nodiscard]] Filling& filling() const {
    return window->findChild<MarginPanel*>(QStringLiteral("margin"))->filling();
  }
  // Shown; what was dropped a moment ago is not.
  template <class W>
  [[nodiscard]] W* part(const char* name) const {
    QCoreApplication::processEvents();
    for (W* found : window->findChildren<W*>(QLatin1String(name)))
      if (found->isVisible()) return found;
    return nullptr;
  }
  // Nothing of it is scrolled away, covered or cut off once the window is laid out, however long
  // a busy machine takes over that.
  [[nodiscard]] static bool comesIntoSight(const QWidget* part) {
    return part && QTest::qWaitFor([part] {
             return part->isVisible() && part->visibleRegion().boundingRect() == part->rect();
           });
  }
  void push(const char* name) const {
    auto* button = part<QPushButton>(name);
    ASSERT_TRUE(button) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  // Presses the button and waits for the filling to end.
  void fillWith(const char* name) {
    QSignalSpy ended(&filling(), &Filling::ended);
    push(name);
    ASSERT_TRUE(filling().running());
    ASSERT_TRUE(ended.wait(60000));
    QTest::qWait(20);  // what it had to say is laid out
  }
  void list(const char* typed) const {
    auto* line = part<QLineEdit>("plant-list-add");
    ASSERT_TRUE(line);
    line->selectAll();  // what was not understood is left there to be mended
    QTest::keyClicks(line, QLatin1String(typed));
    QTest::keyClick(line, Qt::Key_Return);
  }
  [[nodiscard]] std::vector<ListedSpecies> listInFile() const {
    return inFile().beds.find(bed)->plantList;
  }
  [[nodiscard]] static std::set<std::string> speciesIn(const Yard& yard) {
    std::set<std::string> species;
    for (const Drift& drift : yard.drifts) species.insert(drift.species);
    return species;
  }

  Id<Bed> bed;
};

// Asks for full sun and medium ground, as the bed has (see resources/plants.csv).
inline std::vector<ListedSpecies> sunnyList() {
  return {{"Echinacea purpurea", 0.0}, {"Liatris spicata", 0.0}, {"Rudbeckia hirta", 0.0}};
}

}  // namespace tussock::test
