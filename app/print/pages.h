// SPDX-License-Identifier: MIT
// Pages of sheets as Qt knows them, and files that appear whole or not at all.
#pragma once

#include <QByteArray>
#include <QCoreApplication>
#include <QPageLayout>
#include <QString>

#include "core/sheets/sheet.h"

namespace tussock {

// Words for people in this folder.
struct PrintWords {
  Q_DECLARE_TR_FUNCTIONS(PrintWords)
};

// Without margins: the sheets keep their own.
[[nodiscard]] QPageLayout pageLayoutOf(const Sheet& sheet);
// Throws std::runtime_error that names the path.
void saveWhole(const QString& path, const QByteArray& bytes);

}  // namespace tussock
