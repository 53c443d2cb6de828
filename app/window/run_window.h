// SPDX-License-Identifier: MIT
// The program with its window.
#pragma once

#include <QString>

class QApplication;

namespace tussock {

// Opens `file`, or the start page when it is empty. Gives the exit code.
int runWindow(QApplication& application, const QString& file);

}  // namespace tussock
