// SPDX-License-Identifier: MIT
#include "app/document/pictures.h"

#include <cmath>
#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>

namespace tussock {

namespace {

constexpr double kMostPixels = 64e6;
constexpr int kDecodedMegabytes = 256;  // of 64 megapixels at four bytes; Qt's own limit is half
constexpr double kMega = 1e6;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Pictures)
};

double pixelsOf(QSize size) {
  return double(size.width()) * size.height();
}

}  // namespace

QString troubleWithPicture(const QByteArray& bytes) {
  QBuffer buffer;
  buffer.setData(bytes);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer);
  if (!reader.canRead())
    return Words::tr("is no picture that can be shown. Bring in a PNG or a JPEG.");
  const QSize size = reader.size();
  if (pixelsOf(size) <= kMostPixels)
    return Words::tr(
        "is damaged and cannot be shown. Open it in a picture program, save it anew, then bring "
        "that in.");
  return Words::
      tr("is %1 by %2 pixels, %3 megapixels, and cannot be shown. Up to %4 megapixels can. Crop "
         "it to the yard or save it smaller, then bring it in again.")
          .arg(size.width())
          .arg(size.height())
          .arg(std::round(pixelsOf(size) / kMega))
          .arg(std::round(kMostPixels / kMega));
}

QImage decodePicture(const QByteArray& bytes) {
  QBuffer buffer;
  buffer.setData(bytes);
  buffer.open(QIODevice::ReadOnly);
  QImageReader::setAllocationLimit(kDecodedMegabytes);
  QImageReader reader(&buffer);
  reader.setAutoTransform(true);
  const QSize size = reader.size();
  const double pixels = pixelsOf(size);
  if (pixels > kMostPixels) reader.setScaledSize(size * std::sqrt(kMostPixels / pixels));
  return reader.read();
}

}  // namespace tussock
