// SPDX-License-Identifier: MIT
// The program itself, or an empty window of the same toolkit, until it has been painted once.
#pragma once

#include "app/window/application.h"

namespace tussock::bench {

// An empty window without a file. Gives the exit code.
[[nodiscard]] int endAtFirstPaint(Application& application, const QString& file);

}  // namespace tussock::bench
