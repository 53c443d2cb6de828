// SPDX-License-Identifier: MIT
// Buttons of the panels, each by its name.
#pragma once

#include <QPushButton>

namespace tussock {

[[nodiscard]] inline QPushButton* pushButton(const QString& name, const QString& words,
                                             const QString& says, QWidget* parent) {
  auto* made = new QPushButton(words, parent);
  made->setObjectName(name);
  made->setToolTip(says);
  return made;
}

// One that reads as words of the text around it.
[[nodiscard]] inline QPushButton* linkButton(const QString& name, const QString& words,
                                             const QString& says, QWidget* parent) {
  QPushButton* made = pushButton(name, words, says, parent);
  made->setProperty("look", QStringLiteral("link"));
  return made;
}

}  // namespace tussock
