// SPDX-License-Identifier: MIT
#include "app/window/application.h"

namespace tussock {

// Qt cannot carry an exception through its event loop; leaving it to do so ends the program.
bool Application::notify(QObject* receiver, QEvent* event) {
  try {
    return QApplication::notify(receiver, event);
  } catch (const std::exception& problem) {
    emit troubled(tr("That could not be done: %1").arg(QString::fromUtf8(problem.what())));
  }
  return true;
}

}  // namespace tussock
