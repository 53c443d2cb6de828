// SPDX-License-Identifier: MIT
// What a PDF says of itself to viewers and printers.
#pragma once

#include <QByteArray>
#include <QSizeF>
#include <vector>

namespace tussock {

// Asks viewers not to shrink the pages when printing (ISO 32000-1, 12.2, PrintScaling None), to
// show the title, and sets the pages' exact sizes, given in millimetres.
[[nodiscard]] QByteArray withPrintSettings(const QByteArray& pdf, const std::vector<QSizeF>& pages);

}  // namespace tussock
