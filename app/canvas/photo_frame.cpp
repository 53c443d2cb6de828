// SPDX-License-Identifier: MIT
#include "app/canvas/photo_frame.h"

#include <cmath>

namespace tussock {

QTransform photoTransform(const Photo& photo) {
  const double c = std::cos(photo.turn.radians()) * photo.metresPerPixel;
  const double s = std::sin(photo.turn.radians()) * photo.metresPerPixel;
  return QTransform(c, s, s, -c, photo.corner.x, photo.corner.y);
}

Box boundsOf(const Photo& photo) {
  const QRectF frame =
      photoTransform(photo).mapRect(QRectF(0.0, 0.0, photo.widthPixels, photo.heightPixels));
  Box box;
  box.include(Point{frame.left(), frame.top()});
  box.include(Point{frame.right(), frame.bottom()});
  return box;
}

Photo scaledByTwoPoints(Photo photo, Point a, Point b, Length apart) {
  const double shown = distance(a, b);
  if (shown <= 0.0 || apart.metres() <= 0.0) return photo;
  const double factor = apart.metres() / shown;
  photo.metresPerPixel *= factor;
  photo.corner = a + (photo.corner - a) * factor;
  return photo;
}

Photo turned(Photo photo, Angle turn, Point about) {
  photo.turn = photo.turn + turn;
  photo.corner = rotated(photo.corner, turn, about);
  return photo;
}

}  // namespace tussock
