// SPDX-License-Identifier: MIT
#include "app/files/whole_file.h"

#include <filesystem>
#include <QBuffer>
#include <QCoreApplication>
#include <QSaveFile>
#include <stdexcept>

namespace tussock {

bool isSameFile(const QString& a, const QString& b) {
  std::error_code trouble;
  return std::filesystem::equivalent(a.toStdString(), b.toStdString(), trouble) && !trouble;
}

void saveWhole(const QString& path, const QByteArray& bytes) {
  QSaveFile file(path);
  if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit()) return;
  throw std::runtime_error(
      QCoreApplication::translate("WholeFile",
                                  "%1 cannot be written: %2. Choose a folder that exists and can "
                                  "be written to, or free some space.")
          .arg(path, file.errorString())
          .toStdString());
}

void savePng(const QString& path, const QImage& picture) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!picture.save(&buffer, "PNG"))
    throw std::runtime_error(
        QCoreApplication::translate("WholeFile",
                                    "The picture for %1 cannot be made into a PNG of %2 "
                                    "by %3 pixels. Choose a smaller one.")
            .arg(path)
            .arg(picture.width())
            .arg(picture.height())
            .toStdString());
  saveWhole(path, bytes);
}

}  // namespace tussock
