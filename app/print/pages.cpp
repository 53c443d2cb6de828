// SPDX-License-Identifier: MIT
#include "app/print/pages.h"

#include <algorithm>
#include <QSaveFile>
#include <stdexcept>

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

void saveWhole(const QString& path, const QByteArray& bytes) {
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
    throw std::runtime_error(
        PrintWords::tr("%1 cannot be written: %2. Choose another place or free some space.")
            .arg(path, file.errorString())
            .toStdString());
}

}  // namespace tussock
