// SPDX-License-Identifier: MIT
// How well the bed keeps each rule, one to a line with a bar; what a rule asks and who says so when
// the pointer rests on it.
#pragma once

#include <QWidget>

#include "core/planting/fill_score.h"

namespace tussock {

class ScoreView : public QWidget {
  Q_OBJECT

 public:
  explicit ScoreView(QWidget* parent = nullptr);

  void show(FillScore score);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] const FillScore& score() const { return score_; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

 private:
  FillScore score_;
};

// What the rule asks, who says so, and its weight.
[[nodiscard]] QString termTip(FillTerm term);

}  // namespace tussock
