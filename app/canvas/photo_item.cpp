// SPDX-License-Identifier: MIT
#include "app/canvas/items.h"
#include "app/canvas/photo_frame.h"
#include "app/canvas/photo_pyramid.h"

namespace tussock {

namespace {

class PhotoItem : public Item {
 public:
  explicit PhotoItem(const Photo& photo) : Item(refTo(photo.id), Depth::Photo), photo_(photo) {
    Polygon frame;
    const QTransform toSite = photoTransform(photo);
    for (const QPointF corner :
         {QPointF(0, 0), QPointF(0, photo.heightPixels),
          QPointF(photo.widthPixels, photo.heightPixels), QPointF(photo.widthPixels, 0)}) {
      const QPointF at = toSite.map(corner);
      frame.outer.push_back({at.x(), at.y()});
    }
    setArea({frame});
  }

  // A locked photo is ground: it cannot be picked by accident.
  [[nodiscard]] bool hit(Point p, double reach) const override {
    return !photo_.locked && Item::hit(p, reach);
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const PhotoPyramid* picture = look.picture ? look.picture(photo_.contentHash) : nullptr;
    if (!picture) return paintMissing(painter, mapping, look);
    const QTransform toCanvas = photoTransform(photo_) * mapping.transform();
    const QRectF seen = toCanvas.inverted().mapRect(painter.clipBoundingRect().isEmpty()
                                                        ? QRectF(QPointF(), mapping.view())
                                                        : painter.clipBoundingRect());
    painter.setTransform(toCanvas, true);
    painter.setOpacity(photo_.opacity);
    picture->paint(painter, seen, mapping.pixels(photo_.metresPerPixel) * look.dpr);
  }

 private:
  void paintMissing(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) const {
    painter.setTransform(mapping.transform(), true);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(linePen(look.theme.edge, 1.0, Qt::DashLine));
    painter.drawPath(shape());
  }

  Photo photo_;
};

}  // namespace

std::unique_ptr<Item> makePhotoItem(const Photo& photo) {
  return std::make_unique<PhotoItem>(photo);
}

}  // namespace tussock
