// SPDX-License-Identifier: MIT
#include "app/window/run_window.h"

#include <QApplication>

#include "app/document/document.h"
#include "app/window/main_window.h"

namespace tussock {

int runWindow(QApplication& application, const QString& file) {
  QApplication::setApplicationName(QStringLiteral("tussock"));
  QApplication::setApplicationDisplayName(QStringLiteral("Tussock"));
  Document document(readShippedCatalogue().catalogue);
  MainWindow window(document);
  window.show();
  if (!file.isEmpty()) window.commands().open(file);
  return application.exec();
}

}  // namespace tussock
