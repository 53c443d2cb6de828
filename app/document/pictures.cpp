// SPDX-License-Identifier: MIT
#include "app/document/pictures.h"

#include <cmath>
#include <QBuffer>
#include <QImageReader>

namespace tussock {

namespace {

constexpr double kMostPixels = 64e6;

}  // namespace

QImage decodePicture(const QByteArray& bytes) {
  QBuffer buffer;
  buffer.setData(bytes);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer);
  reader.setAutoTransform(true);
  const QSize size = reader.size();
  const double pixels = double(size.width()) * size.height();
  if (pixels > kMostPixels) reader.setScaledSize(size * std::sqrt(kMostPixels / pixels));
  return reader.read();
}

}  // namespace tussock
