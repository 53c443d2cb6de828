// SPDX-License-Identifier: MIT
// Typing into the fields beside the plan.
#pragma once

#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

#include "app/panels/margin_panel.h"

namespace tussock::test {

inline QLineEdit* marginField(const QWidget& window, const char* name) {
  return window.findChild<MarginPanel*>()->findChild<QLineEdit*>(QLatin1String(name));
}
inline void enterInMargin(const QWidget& window, const char* name, const QString& typed) {
  QLineEdit* line = marginField(window, name);
  ASSERT_NE(line, nullptr) << name;
  line->setFocus();
  line->selectAll();
  QTest::keyClicks(line, typed);
  QTest::keyClick(line, Qt::Key_Return);
}

}  // namespace tussock::test
