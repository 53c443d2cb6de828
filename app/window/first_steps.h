// SPDX-License-Identifier: MIT
// In the middle of an empty yard: what can be done first, each a click away.
#pragma once

#include <QFrame>

class QAction;
class QActionGroup;
class QVBoxLayout;

namespace tussock {

class Actions;

class FirstSteps : public QFrame {
  Q_OBJECT

 public:
  // Lies over `canvas`, which owns it.
  FirstSteps(QWidget& canvas, const Actions& actions, const QActionGroup& tools);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void addStep(const QString& words, QAction* action);
  void stayInTheMiddle();

  QVBoxLayout* column_;
};

}  // namespace tussock
