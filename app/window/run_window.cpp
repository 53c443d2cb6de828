// SPDX-License-Identifier: MIT
#include "app/window/run_window.h"

#include <QtGlobal>

#include "app/document/document.h"
#include "app/document/personal_plants.h"
#include "app/window/application.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"

namespace tussock {

namespace {

void takePersonalPlants(Document& document, MessageBar& messages) {
  OwnPlantsReading own = readPersonalPlants(document.facts());
  if (!own.errors.empty())
    messages.tell(QCoreApplication::translate(
                      "runWindow",
                      "Some of your own plants cannot be used (%1 faults). The first: "
                      "%2 The rest is in use.")
                      .arg(own.errors.size())
                      .arg(QString::fromStdString(own.errors.front().text())));
  document.setPersonalPlants(std::move(own.plants));
}

}  // namespace

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
  takePersonalPlants(document, window.messages());
  QObject::connect(&application, &Application::troubled, &window.messages(), &MessageBar::tell);
  window.show();
  if (!file.isEmpty()) window.commands().open(file);
  return application.exec();
}

}  // namespace tussock
