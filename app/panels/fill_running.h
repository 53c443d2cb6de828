// SPDX-License-Identifier: MIT
// A line that tells which bed is being filled and how far that has come, with buttons that
// stop it, for whenever the bed's own bar is not in sight.
#pragma once

#include <QWidget>

#include "app/document/filling.h"

class QProgressBar;
class QPushButton;

namespace tussock {

class FillRunning : public QWidget {
  Q_OBJECT

 public:
  FillRunning(Document& document, Filling& filling, QWidget* parent = nullptr);

  // That of the bed selected, where the margin shows what is selected.
  void setOwnBarInSight(bool inSight);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void follow();

  Document& document_;
  Filling& filling_;
  bool ownBarInSight_ = false;
  QPushButton* bed_ = nullptr;
  QProgressBar* progress_ = nullptr;
};

}  // namespace tussock
