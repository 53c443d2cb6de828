// SPDX-License-Identifier: MIT
// A drift's symbol and names, and its count as a large figure with − and +.
#pragma once

#include <QWidget>

#include "app/document/document.h"

class QLabel;
class QPushButton;

namespace tussock {

class DriftHead : public QWidget {
  Q_OBJECT

 public:
  DriftHead(Document& document, Id<Drift> drift, QWidget* parent = nullptr);

  void refresh();
  // With the count that an edit in hand would make; nothing ends that.
  void preview(const Drift* inHand);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QWidget* makeCount();
  [[nodiscard]] const Drift* drift() const;
  void resizeTo(int count);

  Document& document_;
  Id<Drift> id_;
  std::optional<std::size_t> inHand_;  // plants
  QLabel* botanical_;
  QLabel* common_;
  QLabel* count_ = nullptr;
  QLabel* unit_ = nullptr;
  QLabel* said_;
  QPushButton* fewer_ = nullptr;
  QPushButton* more_ = nullptr;
};

}  // namespace tussock
