// SPDX-License-Identifier: MIT
// Pages of sheets as Qt knows them.
#pragma once

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

}  // namespace tussock
