// SPDX-License-Identifier: MIT
#include "app/print/pages.h"

#include <algorithm>

#include <QSizeF>

namespace tussock {

QPageLayout pageLayoutOf(const Sheet& sheet) {
  const double shorter = std::min(sheet.widthMm, sheet.heightMm);
  const double longer = std::max(sheet.widthMm, sheet.heightMm);
  const QPageSize size(QSizeF(shorter, longer), QPageSize::Millimeter, QString(),
                       QPageSize::FuzzyMatch);
  const bool wide = sheet.widthMm > sheet.heightMm;
  return {size, wide ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(),
          QPageLayout::Millimeter, QMarginsF()};
}

}  // namespace tussock
