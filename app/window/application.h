// SPDX-License-Identifier: MIT
// The application object: a failure that nobody has caught is told, and the program goes on.
#pragma once

#include <QApplication>

namespace tussock {

class Application : public QApplication {
  Q_OBJECT

 public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override;

 signals:
  void troubled(const QString& words);
};

}  // namespace tussock
