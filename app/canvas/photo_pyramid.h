// SPDX-License-Identifier: MIT
// A picture at full size and halved again and again, so that drawing costs what is seen and not
// what was photographed.
#pragma once

#include <QImage>
#include <QPainter>
#include <vector>

namespace tussock {

class PhotoPyramid {
 public:
  explicit PhotoPyramid(const QImage& picture);

  [[nodiscard]] QSize size() const;
  [[nodiscard]] int levels() const { return int(levels_.size()); }
  // The coarsest level that still has a pixel for every device pixel. `scale`: device pixels for
  // one pixel of the picture.
  [[nodiscard]] int levelFor(double scale) const;
  // Draws the part within `wanted` (pixels of the picture) at its place in the painter's units,
  // where one unit is one pixel of the picture.
  void paint(QPainter& painter, const QRectF& wanted, double scale) const;

 private:
  std::vector<QImage> levels_;  // from full size down
};

}  // namespace tussock
