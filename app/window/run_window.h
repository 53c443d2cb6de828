// SPDX-License-Identifier: MIT
// The program with its window.
#pragma once

#include <QString>

namespace tussock {

class Application;

// Whether there is a display that a window can be opened on.
[[nodiscard]] bool hasDisplay();
// Opens `file`, or the start page when it is empty. Gives the exit code.
int runWindow(Application& application, const QString& file);

}  // namespace tussock
