// SPDX-License-Identifier: MIT
// Chips that narrow a choice: those of one set add up.
#pragma once

#include <QFrame>
#include <QLayout>
#include <QPushButton>
#include <set>
#include <vector>

#include "app/look/theme.h"

namespace tussock {

[[nodiscard]] inline QPushButton* makeChip(QWidget* row, const char* name, const QString& words) {
  auto* chip = new QPushButton(words, row);
  chip->setObjectName(QLatin1String(name));
  chip->setProperty("look", QStringLiteral("chip"));
  chip->setCheckable(true);
  return chip;
}

template <class E>
struct FilterChip {
  E value;
  const char* name;
  QString words;
};
// A gap and the chips, at the end of the row. What is pressed is in `chosen`, and told.
template <class E, class Told>
void addChips(QWidget* row, std::set<E>& chosen, const std::vector<FilterChip<E>>& chips,
              Told told) {
  auto* gap = new QFrame(row);
  gap->setFixedSize(kSpace2, 1);
  row->layout()->addWidget(gap);
  for (const FilterChip<E>& one : chips) {
    QPushButton* chip = makeChip(row, one.name, one.words);
    row->layout()->addWidget(chip);
    QObject::connect(chip, &QPushButton::toggled, row, [&chosen, value = one.value, told](bool on) {
      on ? void(chosen.insert(value)) : void(chosen.erase(value));
      told();
    });
  }
}

}  // namespace tussock
