// SPDX-License-Identifier: MIT
#include "tests/bench/app/first_paint.h"

#include <cstdlib>
#include <QEvent>
#include <QMainWindow>
#include <QTimer>

#include "app/window/application.h"
#include "app/window/run_window.h"

namespace tussock::bench {

namespace {

// Waits for the paint event of the widget of that name.
class EndAtPaint : public QObject {
 public:
  explicit EndAtPaint(QString name) : name_(std::move(name)) {}

  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::Paint && watched->objectName() == name_)
      QTimer::singleShot(0, [] { std::_Exit(EXIT_SUCCESS); });  // when the others are painted too
    return false;
  }

 private:
  QString name_;
};

}  // namespace

int endAtFirstPaint(Application& application, const QString& file) {
  EndAtPaint end(file.isEmpty() ? QStringLiteral("empty") : QStringLiteral("canvas"));
  application.installEventFilter(&end);
  if (!file.isEmpty()) return runWindow(application, file);
  QMainWindow window;
  window.setObjectName(QStringLiteral("empty"));
  window.resize(1440, 900);
  window.show();
  return application.exec();
}

}  // namespace tussock::bench
