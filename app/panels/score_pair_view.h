// SPDX-License-Identifier: MIT
// Two scores beside each other, a rule to a line: what is kept better on the left has the longer
// bar to the left.
#pragma once

#include <QWidget>
#include <vector>

#include "core/checks/arrangement_facts.h"

namespace tussock {

class ScorePairView : public QWidget {
  Q_OBJECT

 public:
  explicit ScorePairView(QWidget* parent = nullptr);

  void show(std::vector<TermPair> pairs);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] const std::vector<TermPair>& pairs() const { return pairs_; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

 private:
  std::vector<TermPair> pairs_;
};

}  // namespace tussock
