// SPDX-License-Identifier: MIT
// What stands across the bench in place of the cards: as high as the window allows beside the
// drawing, so that charts and lists need not be scrolled where there is room.
#pragma once

#include <algorithm>
#include <QEvent>
#include <QWidget>

namespace tussock {

class DeskBody : public QWidget {
 public:
  explicit DeskBody(QWidget* parent = nullptr) : QWidget(parent) { setFixedHeight(kLeast); }

 protected:
  void showEvent(QShowEvent* event) override {
    window()->installEventFilter(this);
    followWindow();
    QWidget::showEvent(event);
  }
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (watched == window() && event->type() == QEvent::Resize) followWindow();
    return QWidget::eventFilter(watched, event);
  }

 private:
  static constexpr int kLeast = 232, kMost = 400;  // pixels
  static constexpr double kShareOfWindow = 0.36;   // the drawing keeps the greater part

  void followWindow() {
    setFixedHeight(std::clamp(int(window()->height() * kShareOfWindow), kLeast, kMost));
  }
};

}  // namespace tussock
