// SPDX-License-Identifier: MIT
#include "app/tools/photo_tool.h"

#include "app/canvas/furniture.h"
#include "app/canvas/photo_frame.h"
#include "core/edit/draft.h"
#include "core/units/measure_text.h"

namespace tussock {

QStringList PhotoTool::ways() const {
  return {QObject::tr("Scale by two points"), QObject::tr("Turn to north"), QObject::tr("Drag")};
}

QString PhotoTool::hint() const {
  if (!photo()) return QObject::tr("Bring in a photo first, or drag a PNG or JPEG onto the plan");
  if (photo()->locked) return QObject::tr("The photo is locked. Unlock it to place it");
  switch (way_) {
    case Way::Scale:
      return points_.empty() ? QObject::tr("Click a point on the photo that you can find on site")
                             : QObject::tr("Click the second point, then give the true distance");
    case Way::North:
      return points_.empty() ? QObject::tr("Click the south end of a line that runs true north")
                             : QObject::tr("Click the north end of the line");
    case Way::Drag:
      return QObject::tr("Drag the photo to its place");
  }
  return {};
}

QList<GestureWords> PhotoTool::gestures() const {
  return {
      {QObject::tr("Two clicks"), QObject::tr("Give two points for scale or for north")},
      {QObject::tr("Drag"), QObject::tr("Takes the photo to its place, when set to Drag")},
      {QObject::tr("Escape"), QObject::tr("Takes the first point back")},
  };
}

void PhotoTool::setWay(int way) {
  cancel();
  way_ = Way(way);
}

const Photo* PhotoTool::photo() const {
  const Yard& yard = canvas_.document().yard();
  for (const ObjectRef ref : canvas_.document().selection())
    if (const auto id = idIf<Photo>(ref)) return yard.photos.find(*id);
  if (yard.photos.empty()) return nullptr;
  return &*(yard.photos.begin() + (std::ptrdiff_t(yard.photos.size()) - 1));
}

void PhotoTool::press(const PointerAt& at) {
  if (!photo()) return canvas_.tell(QObject::tr("There is no photo to place. Bring one in first."));
  if (photo()->locked)
    return canvas_.tell(QObject::tr("The photo is locked. Unlock it to place it."));
  if (way_ == Way::Drag) {
    dragFrom_ = at.site;
    return;
  }
  if (points_.size() >= 2) points_.clear();
  points_.push_back(at.site);
  hover_ = at.site;
  if (points_.size() < 2) return;
  if (way_ == Way::Scale)
    askDistance();
  else
    turnToNorth();
}

void PhotoTool::askDistance() {
  const Point a = points_[0], b = points_[1];
  canvas_.ask(canvas_.mapping().toPixels(b), QObject::tr("True distance between the points"), {},
              [this, a, b](const QString& text) {
                const UnitSystem units = canvas_.document().yard().settings.units;
                const auto apart = parseLength(text.toStdString(), units);
                if (!apart || apart->metres() <= 0.0)
                  return QObject::tr("Give a distance such as 24' 6\" or 7.5 m.");
                points_.clear();
                if (photo())
                  put(scaledByTwoPoints(*photo(), a, b, *apart), QObject::tr("Scale photo"));
                // While there is nothing but the photo, it is what there is to see.
                if (boundsOf(canvas_.document().yard()).empty()) canvas_.fit();
                return QString();
              });
}

void PhotoTool::turnToNorth() {
  const Point a = points_[0], b = points_[1];
  points_.clear();
  if (distance(a, b) <= 0.0) return;
  put(turned(*photo(), azimuthOf(b - a), a), QObject::tr("Turn photo to north"));
}

void PhotoTool::put(const Photo& photo, const QString& label) {
  Draft draft(canvas_.document().yard());
  draft.put(photo);
  canvas_.document().commit(draft.finish(label.toStdString()));
}

void PhotoTool::move(const PointerAt& at) {
  hover_ = at.site;
  if (dragFrom_ && photo()) canvas_.showMoved({refTo(photo()->id)}, at.site - *dragFrom_);
}

void PhotoTool::release(const PointerAt& at) {
  if (!dragFrom_) return;
  const Point step = at.site - *dragFrom_;
  dragFrom_.reset();
  canvas_.clearPreview();
  if (!photo() || step == Point{}) return;
  Photo moved = *photo();
  moved.corner += step;
  put(moved, QObject::tr("Move photo"));
}

bool PhotoTool::key(const QKeyEvent& event) {
  if (event.key() != Qt::Key_Escape || !busy()) return false;
  cancel();
  return true;
}

void PhotoTool::cancel() {
  points_.clear();
  dragFrom_.reset();
  canvas_.clearPreview();
}

void PhotoTool::paint(QPainter& painter, const SceneMapping& mapping) const {
  if (points_.empty()) return;
  const Theme& theme = canvas_.look().theme;
  const QPointF a = mapping.toPixels(points_.front());
  const QPointF b = mapping.toPixels(points_.size() > 1 ? points_.back() : hover_);
  painter.setPen(QPen(theme.paper, 4.0, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(a, b);
  painter.setPen(QPen(theme.sky, 2.0, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(a, b);
  painter.setBrush(theme.raised);
  painter.drawEllipse(a, 4.5, 4.5);
  painter.drawEllipse(b, 4.5, 4.5);
}

}  // namespace tussock
