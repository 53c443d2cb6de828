// SPDX-License-Identifier: MIT
#include <QStandardPaths>

#include <gtest/gtest.h>

#include "app/window/application.h"

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);  // never the settings of whoever runs the tests
  tussock::Application application(argc, argv);
  testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
