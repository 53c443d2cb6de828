// SPDX-License-Identifier: MIT
#include "app/window/run_window.h"

#include <QtGlobal>

#include "app/document/document.h"
#include "app/window/application.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"

namespace tussock {

bool hasDisplay() {
#ifdef Q_OS_LINUX
  const auto says = [](const char* name) { return !qEnvironmentVariableIsEmpty(name); };
  return says("DISPLAY") || says("WAYLAND_DISPLAY") || says("QT_QPA_PLATFORM");
#else
  return true;
#endif
}

int runWindow(Application& application, const QString& file) {
  QApplication::setApplicationName(QStringLiteral("tussock"));
  QApplication::setApplicationDisplayName(QStringLiteral("Tussock"));
  Document document(readShippedCatalogue().catalogue);
  MainWindow window(document);
  window.loadOwnPlants();
  QObject::connect(&application, &Application::troubled, &window.messages(), &MessageBar::tell);
  window.show();
  if (!file.isEmpty()) window.commands().open(file);
  return application.exec();
}

}  // namespace tussock
