// SPDX-License-Identifier: MIT
// + and − on a selected drift: 1, 3, 5, 7 ... plants, with the count shown large for a moment.
#pragma once

#include <QObject>
#include <QTimer>

#include "app/canvas/canvas.h"

namespace tussock {

class DriftCount : public QObject {
  Q_OBJECT

 public:
  explicit DriftCount(Canvas& canvas, QObject* parent = nullptr);
  // False when no single drift is selected.
  bool step(int direction);

 private:
  Canvas& canvas_;
  QTimer fade_;
};

// "7 planned, 5 fit here"; empty when all fit.
[[nodiscard]] QString fitNote(int asked, int fitted);
// "1.2 m² · 0.40 m apart": the ground that so many plants take, and their spacing.
[[nodiscard]] QString groundNote(const Drift& drift, UnitSystem units);
// The same of the two parts of a drift.
[[nodiscard]] QString groundsNote(const Drift& one, const Drift& other, UnitSystem units);
// The first may be empty.
[[nodiscard]] QString notesTogether(const QString& first, const QString& second);
// The drift's count large above it, with its ground and spacing, after another note if there is
// one.
void showCount(Canvas& canvas, const Drift& drift, const QString& note = {});
// The drift as it is after the edit; nothing when the edit does not put it.
[[nodiscard]] const Drift* driftIn(const ChangeSet& edit, Id<Drift> drift);

}  // namespace tussock
