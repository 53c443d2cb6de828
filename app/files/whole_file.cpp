// SPDX-License-Identifier: MIT
#include "app/files/whole_file.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QSaveFile>
#include <stdexcept>

#include "core/store/yard_file.h"

namespace tussock {

QString whyNotOver(const QString& path) {
  if (isYardFile(path.toStdString()))
    return QCoreApplication::translate(
               "WholeFile", "%1 is a yard, and no yard is written over. Name another file.")
        .arg(path);
  if (path.endsWith(QLatin1String(".yard"), Qt::CaseInsensitive))
    return QCoreApplication::translate(
               "WholeFile",
               "%1 is the name of a yard file. Name another file, with another ending.")
        .arg(path);
  return {};
}

void saveWhole(const QString& path, const QByteArray& bytes) {
  if (const QString why = whyNotOver(path); !why.isEmpty())
    throw std::runtime_error(why.toStdString());
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
