// SPDX-License-Identifier: MIT
#include "app/tools/place_tool.h"

#include "app/tools/path_tool.h"
#include "core/edit/draft.h"

namespace tussock {

namespace {

template <class T>
void put(Canvas& canvas, T object, const QString& label) {
  const ObjectRef ref = refTo(object.id);
  Draft draft(canvas.document().yard());
  draft.put(std::move(object));
  if (canvas.document().commit(draft.finish(label.toStdString()))) canvas.document().select({ref});
}

}  // namespace

QString SteppingPlaceTool::hint() const {
  return QObject::tr("Click where people may step inside a bed");
}

QList<GestureWords> SteppingPlaceTool::gestures() const {
  return {
      {QObject::tr("Click"), QObject::tr("Lays a stepping place")},
  };
}

void SteppingPlaceTool::press(const PointerAt& at) {
  SteppingPlace step;
  step.id = canvas_.document().ids().take<SteppingPlace>();
  step.at = at.site;
  put(canvas_, std::move(step), QObject::tr("Lay stepping place"));
}

QString WaterPointTool::hint() const {
  return QObject::tr("Click where there is a tap or a hydrant");
}

QList<GestureWords> WaterPointTool::gestures() const {
  return {
      {QObject::tr("Click"), QObject::tr("Marks a tap or hydrant")},
  };
}

void WaterPointTool::press(const PointerAt& at) {
  WaterPoint point;
  point.id = canvas_.document().ids().take<WaterPoint>();
  point.name = freshName(canvas_.document().yard().waterPoints, QObject::tr("Water"));
  point.at = at.site;
  put(canvas_, std::move(point), QObject::tr("Mark water point"));
}

}  // namespace tussock
