// SPDX-License-Identifier: MIT
// Files that appear whole or not at all: what stood there before stays until the new one is on
// disk.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>

namespace tussock {

// Whether both names lead to one file that exists, by links too.
[[nodiscard]] bool isSameFile(const QString& a, const QString& b);
// Throws std::runtime_error that names the path, what went wrong and what to do.
void saveWhole(const QString& path, const QByteArray& bytes);
// As PNG. Throws as above.
void savePng(const QString& path, const QImage& picture);

}  // namespace tussock
