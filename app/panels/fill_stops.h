// SPDX-License-Identifier: MIT
// The two ways of stopping a filling: with what stands by then, or with the bed as it was.
#pragma once

#include <QWidget>

#include "app/document/filling.h"

class QPushButton;

namespace tussock {

class FillStops : public QWidget {
  Q_OBJECT

 public:
  // Its buttons are called `name` and `name`-keep.
  FillStops(Filling& filling, const QString& name, QWidget* parent = nullptr);

  [[nodiscard]] QPushButton* leave() const { return leave_; }
  [[nodiscard]] QPushButton* keep() const { return keep_; }

 private:
  void follow();

  Filling& filling_;
  QPushButton* keep_;
  QPushButton* leave_;
};

}  // namespace tussock
