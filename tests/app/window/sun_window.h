// SPDX-License-Identifier: MIT
// The window on a bed with a tree, and the sun's own parts of it.
#pragma once

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "tests/app/window/window_fixture.h"

namespace tussock::test {

class SunInTheWindow : public WindowTest {
 protected:
  // A bed north of a tree that grows.
  void startShaded() {
    YardBuilder builder;
    builder.bed("Walk", "POLYGON((0 0,6 0,6 3,0 3,0 0))").tree("Oak", {3.0, -2.0}, 0.3);
    Yard yard = builder.build();
    Tree oak = *yard.trees.begin();
    oak.growth = Length::centimetres(40);
    yard.trees = yard.trees.with(oak);
    start(yard);
    settle();
  }
  void settle() const { canvas().sunView().waitForMap(); }
  [[nodiscard]] SunView& view() const { return canvas().sunView(); }
  template <class W>
  W* part(const char* name) const {
    auto* found = window->findChild<W*>(QLatin1String(name));
    EXPECT_TRUE(found) << name;
    return found;
  }
  [[nodiscard]] QWidget* strip() const { return part<QWidget>("sun-strip"); }
  [[nodiscard]] QString words() const { return part<QLabel>("sun-words")->text(); }
  void clickOn(const char* button) const {
    QTest::mouseClick(part<QPushButton>(button), Qt::LeftButton);
  }
  [[nodiscard]] bool checked(const char* action) const {
    return part<QAction>(action)->isChecked();
  }
  void typeDate(const QString& text) const {
    auto* date = part<QLineEdit>("sun-date");
    date->setFocus();
    date->selectAll();
    QTest::keyClicks(date, text);
    QTest::keyClick(date, Qt::Key_Return);
  }
};

}  // namespace tussock::test
