// SPDX-License-Identifier: MIT
// Soil with an edge, and the sides people look from.
#include <algorithm>
#include <cmath>
#include <QObject>

#include "app/canvas/items.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {

constexpr double kNamedFrom = 40.0, kRoomForName = 130.0, kNameSlide = 10.0,
                 kAnyRoom = 1e9;                         // pixels
constexpr Length kViewingGap = Length::centimetres(22);  // from the edge to its dotted line

bool faces(Point from, Point to, const Viewing& viewing) {
  if (viewing.allRound) return true;
  const Point step = to - from;
  const double length = std::hypot(step.x, step.y);
  if (length <= 0.0) return false;
  const Point outward{step.y / length, -step.x / length};  // outer rings run anticlockwise
  for (const Angle side : viewing.from)
    if (dot(outward, directionOf(side)) > 0.5) return true;
  return false;
}

// A line off the edges that face the people.
QPainterPath viewingLine(const Bed& bed) {
  QPainterPath path;
  if (!bed.viewing.known()) return path;
  for (const Polygon& around : outset(bed.outline, kViewingGap)) {
    const Ring& ring = around.outer;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i], b = ring[(i + 1) % ring.size()];
      if (!faces(a, b, bed.viewing)) continue;
      if (path.isEmpty() || path.currentPosition() != QPointF(a.x, a.y)) path.moveTo(a.x, a.y);
      path.lineTo(b.x, b.y);
    }
  }
  return path;
}

class BedItem : public Item {
 public:
  explicit BedItem(const Bed& bed)
      : Item(refTo(bed.id), Depth::Bed),
        viewing_(viewingLine(bed)),
        name_(QString::fromStdString(bed.name)),
        seenFrom_(QString::fromStdString(describeViewing(bed.viewing))) {
    setArea({bed.outline});
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const Theme& t = look.theme;
    painter.setTransform(mapping.transform(), true);
    painter.fillPath(shape(), t.soil);
    painter.setClipPath(shape(), Qt::IntersectClip);
    painter.strokePath(shape(), linePen(faded(t.ink, t.dark ? 0.10 : 0.07), 9.0));
  }

  void paintEdge(QPainter& painter, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    const Theme& t = look.theme;
    painter.setTransform(mapping.transform(), true);
    painter.strokePath(shape(), linePen(t.ink, 1.6));
    painter.strokePath(viewing_, linePen(t.sky, 2.2, Qt::DotLine));
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    const double room = mapping.pixels(bounds().width());
    if (!name_.isEmpty()) {
      QFont font = fontFor(TextRole::Body);
      font.setWeight(QFont::DemiBold);
      Label label{{name_}, font, {}, look.theme.ink};
      label.middle = mapping.toPixels(Point{bounds().centre().x, bounds().high.y}) - QPointF(0, 14);
      // A bed too small for its name is still told, beside its marks; so is a narrow one.
      const double longest = std::max(room, mapping.pixels(bounds().height()));
      label.room = longest < kNamedFrom ? 0.0 : std::max(room * 1.6, kRoomForName);
      label.aside = room * 0.5;
      label.slide = kNameSlide;
      label.always = look.allNames;
      if (look.allNames) label.room = kAnyRoom;
      label.weight = 1000.0;
      label.names = ref();
      labels.push_back(label);
    }
    if (!seenFrom_.isEmpty()) labels.push_back(viewingNote(mapping, look, room));
  }

 private:
  [[nodiscard]] Label viewingNote(const SceneMapping& mapping, const CanvasLook& look,
                                  double room) const {
    Label label{{QObject::tr("seen from %1").arg(seenFrom_)},
                botanicalFont(TextRole::Note),
                {},
                look.theme.sky};
    if (seenFrom_ == QLatin1String("all round")) label.lines = {QObject::tr("seen from all round")};
    label.middle = mapping.toPixels(lowestNearMiddle()) + QPointF(0.0, 14.0);
    label.room = room;
    label.weight = 900.0;
    return label;
  }

  // The point of the viewing line below the bed's middle.
  [[nodiscard]] Point lowestNearMiddle() const {
    const double middle = bounds().centre().x;
    const double near = std::max(0.3, bounds().width() * 0.12);  // metres
    Point found{middle, bounds().high.y};
    for (int i = 0; i < viewing_.elementCount(); ++i) {
      const QPointF p = viewing_.elementAt(i);
      if (std::abs(p.x() - middle) <= near && p.y() < found.y) found = {p.x(), p.y()};
    }
    return found.y < bounds().high.y ? found : Point{middle, bounds().low.y};
  }

  QPainterPath viewing_;
  QString name_;
  QString seenFrom_;
};

}  // namespace

std::unique_ptr<Item> makeBedItem(const Bed& bed) {
  return std::make_unique<BedItem>(bed);
}

}  // namespace tussock
