// SPDX-License-Identifier: MIT
#include "app/canvas/photo_pyramid.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {
constexpr int kSmallestLevel = 256;  // pixels along the longer side
}

PhotoPyramid::PhotoPyramid(const QImage& picture) {
  levels_.push_back(picture.convertToFormat(
      picture.hasAlphaChannel() ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32));
  while (std::max(levels_.back().width(), levels_.back().height()) > kSmallestLevel) {
    const QImage& last = levels_.back();
    levels_.push_back(last.scaled(std::max(1, last.width() / 2), std::max(1, last.height() / 2),
                                  Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
  }
}

QSize PhotoPyramid::size() const {
  return levels_.front().size();
}

int PhotoPyramid::levelFor(double scale) const {
  if (scale <= 0.0 || scale >= 1.0) return 0;
  return std::min(int(std::floor(std::log2(1.0 / scale))), levels() - 1);
}

void PhotoPyramid::paint(QPainter& painter, const QRectF& wanted, double scale) const {
  const QImage& level = levels_[std::size_t(levelFor(scale))];
  const QRectF all(0.0, 0.0, size().width(), size().height());
  const QRectF part = wanted.intersected(all);
  if (part.isEmpty()) return;
  const double across = double(level.width()) / size().width();
  const double down = double(level.height()) / size().height();
  const QRect source =
      QRectF(part.left() * across, part.top() * down, part.width() * across, part.height() * down)
          .toAlignedRect()
          .adjusted(-1, -1, 1, 1)
          .intersected(level.rect());
  const QRectF target(source.left() / across, source.top() / down, source.width() / across,
                      source.height() / down);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawImage(target, level, QRectF(source));
}

}  // namespace tussock
