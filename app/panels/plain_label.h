// SPDX-License-Identifier: MIT
// A label whose words are shown as they are: a plant's own text may look like markup.
#pragma once

#include <QLabel>
#include <QVariant>

namespace tussock {

// `look` is one of those of the style sheet, or empty.
[[nodiscard]] inline QLabel* plainLabel(const QString& words, const char* look, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setProperty("look", QLatin1String(look));
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace tussock
