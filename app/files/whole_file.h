// SPDX-License-Identifier: MIT
// Files that appear whole or not at all: what stood there before stays until the new one is on
// disk.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>

namespace tussock {

// Why nothing may be written there: a yard stands there, by a link too, or the name is that of one.
// Empty where it may.
[[nodiscard]] QString whyNotOver(const QString& path);
// Never over a yard. Throws std::runtime_error that names the path, what went wrong and what to do.
void saveWhole(const QString& path, const QByteArray& bytes);
// As PNG. Throws as above.
void savePng(const QString& path, const QImage& picture);

}  // namespace tussock
