// SPDX-License-Identifier: MIT
#include "app/tools/handles.h"

#include <algorithm>
#include <cmath>

#include "app/tools/size_gesture.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {
constexpr double kReach = 8.0;                  // pixels
constexpr double kTurnAbove = 26.0;             // pixels above the drift
constexpr double kArrows = 11.0, kLift = 12.0;  // pixels: half the arrows over a solid; a step up
constexpr int kMostLifts = 6;
constexpr double kEndBeyond = 8.0;   // pixels
constexpr double kHeightTop = 18.0;  // pixels from the top, so that its arrows stay in sight
constexpr double kSideRoom = 44.0;   // pixels: shorter sides show no middle handle
}  // namespace

std::optional<ObjectRef> Handles::subject() const {
  const auto& selection = canvas_.document().selection();
  if (selection.size() != 1) return std::nullopt;
  return selection.front();
}

std::vector<Handles::Handle> Handles::all() const {
  std::vector<Handle> handles;
  const auto ref = subject();
  const auto object = ref ? objectAt(canvas_.document().yard(), *ref) : std::nullopt;
  if (!object) return handles;
  if (const auto* drift = std::get_if<Drift>(&*object)) {
    addTurn(handles, *drift);
    addEnds(handles, *drift);
  }
  if (stands(*object)) addHeight(handles, *ref);
  if (const auto* tree = std::get_if<Tree>(&*object)) {
    const Point rim = tree->at + Point{tree->crownRadius.metres(), 0.0};
    handles.push_back({Kind::Rim, canvas_.mapping().toPixels(rim), {}});
  }
  if (const auto outline = outlineOf(*object)) addCorners(handles, *outline);
  return handles;
}

void Handles::addCorners(std::vector<Handle>& handles, const Outline& outline) const {
  const SceneMapping& mapping = canvas_.mapping();
  for (std::size_t r = 0; r < outline.rings.size(); ++r) {
    const Ring& ring = outline.rings[r];
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const QPointF here = mapping.toPixels(ring[i]);
      handles.push_back({Kind::Corner, here, {r, i}});
      if (!outline.closed && i + 1 == ring.size()) continue;
      const QPointF next = mapping.toPixels(ring[(i + 1) % ring.size()]);
      if (QLineF(here, next).length() > kSideRoom)
        handles.push_back({Kind::Side, (here + next) / 2.0, {r, i}});
    }
  }
}

void Handles::addTurn(std::vector<Handle>& handles, const Drift& drift) const {
  const Item* item = canvas_.scene().find(refTo(drift.id));
  if (!item || drift.locked || drift.plants.size() < 2) return;
  const QRectF box = canvas_.mapping().toPixels(item->bounds());
  handles.push_back({Kind::Turn, QPointF(box.center().x(), box.top() - kTurnAbove), {}});
}

void Handles::addHeight(std::vector<Handle>& handles, ObjectRef ref) const {
  const Item* item = canvas_.scene().find(ref);
  if (!item) return;
  const QRectF box = canvas_.mapping().toPixels(item->bounds());
  const QRectF view(QPointF(), canvas_.mapping().view());
  QPointF at(box.center().x(), box.top() - kTurnAbove);
  if (box.intersects(view)) at.setY(std::max(at.y(), kHeightTop));
  at = liftedOverWords(at);
  handles.push_back({Kind::Height, at, {}, 1.0, std::max(kTurnAbove, box.top() - at.y())});
}

// Arrows over words could not be told from them.
QPointF Handles::liftedOverWords(QPointF at) const {
  for (int i = 0; i <= kMostLifts; ++i) {
    const QPointF higher = at - QPointF(0.0, i * kLift);
    if (higher.y() < kHeightTop) break;
    if (!canvas_.hasWordsIn(QRectF(higher, higher).adjusted(-kArrows, -kArrows, kArrows, kArrows)))
      return higher;
  }
  return at;
}

// Where the drift's axis leaves it, a little outside.
void Handles::addEnds(std::vector<Handle>& handles, const Drift& drift) const {
  constexpr std::size_t kFewest = 3;  // fewer have no length to speak of
  if (drift.locked || drift.existing() || drift.plants.size() < kFewest) return;
  const Point middle = middleOf(drift);
  const Point along{std::cos(drift.axis.radians()), std::sin(drift.axis.radians())};
  double most = 0.0, least = 0.0;
  for (const Plant& plant : drift.plants) {
    most = std::max(most, dot(plant.at - middle, along));
    least = std::min(least, dot(plant.at - middle, along));
  }
  const double beyond = drift.spacing.metres() / 2.0;
  for (const double reach : {most + beyond, least - beyond}) {
    const QPointF from = canvas_.mapping().toPixels(middle);
    QLineF line(from, canvas_.mapping().toPixels(middle + along * reach));
    line.setLength(line.length() + kEndBeyond);
    handles.push_back({Kind::End, line.p2(), {}, reach < 0.0 ? -1.0 : 1.0});
  }
}

std::optional<Handles::Handle> Handles::at(QPointF pixels) const {
  std::optional<Handle> found;
  double nearest = kReach;
  for (const Handle& handle : all()) {
    const double away = QLineF(handle.at, pixels).length();
    if (away > nearest || (found && found->kind == Kind::Corner && handle.kind == Kind::Side))
      continue;
    nearest = away;
    found = handle;
  }
  return found;
}

void Handles::paint(QPainter& painter, std::optional<CornerAt> active) const {
  const Theme& theme = canvas_.look().theme;
  for (const Handle& handle : all()) {
    const bool on = handle.kind == Kind::Corner && active && *active == handle.corner;
    painter.setPen(QPen(theme.sky, 1.6));
    painter.setBrush(on ? theme.sky : theme.raised);
    paintOne(painter, handle);
  }
}

void Handles::paintOne(QPainter& painter, const Handle& handle) const {
  const QPointF at = handle.at;
  switch (handle.kind) {
    case Kind::Corner:
      painter.drawRect(QRectF(at.x() - 4, at.y() - 4, 8, 8));
      break;
    case Kind::Side:
      painter.drawEllipse(at, 3.0, 3.0);
      break;
    case Kind::Rim:
    case Kind::End:
      painter.drawRoundedRect(QRectF(at.x() - 4.5, at.y() - 4.5, 9, 9), 2.5, 2.5);
      break;
    case Kind::Turn:
      painter.drawLine(at, at + QPointF(0, kTurnAbove));
      painter.drawEllipse(at, 5.5, 5.5);
      break;
    case Kind::Height:  // an arrow up and one down
      painter.drawLine(at, at + QPointF(0, handle.stem));
      painter.drawPolygon(
          QPolygonF({at + QPointF(-6, -2), at + QPointF(0, -9), at + QPointF(6, -2)}));
      painter.drawPolygon(QPolygonF({at + QPointF(-6, 2), at + QPointF(0, 9), at + QPointF(6, 2)}));
      break;
  }
}

}  // namespace tussock
