// SPDX-License-Identifier: MIT
#include "app/tools/size_gesture.h"

#include <algorithm>
#include <cmath>

#include "core/edit/draft.h"
#include "core/model/solid_bounds.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

// Steps a dragged size comes in; Shift leaves it where the pointer is.
Length stepOf(UnitSystem units) {
  return units == UnitSystem::FeetInches ? Length::inches(6) : Length::centimetres(10);
}

struct Steps {
  UnitSystem units;
  bool free;

  [[nodiscard]] Length operator()(Length size, Length least, Length most) const {
    const double step = stepOf(units).metres();
    const double metres = free ? size.metres() : std::round(size.metres() / step) * step;
    return Length::metres(std::clamp(metres, least.metres(), most.metres()));
  }
};

Tree raised(Tree tree, Length by, Steps steps) {
  tree.height = steps(tree.height + by, std::max(kLeastHeight, tree.crownBase), kMostHeight);
  return tree;
}

// The roof keeps its shape.
Building raised(Building building, Length by, Steps steps) {
  const Length roof = building.ridge - building.eave;
  const Length least = std::max(kLeastHeight, building.base + kLeastHeight);
  building.eave = steps(building.eave + by, least, kMostHeight - roof);
  building.ridge = building.eave + roof;
  return building;
}

Barrier raised(Barrier barrier, Length by, Steps steps) {
  barrier.height = steps(barrier.height + by, kLeastHeight, kMostHeight);
  return barrier;
}

std::string labelOf(const Object& object, SizeKind kind) {
  if (kind == SizeKind::Crown) return QObject::tr("Change crown radius").toStdString();
  if (std::holds_alternative<Building>(object)) return QObject::tr("Raise building").toStdString();
  if (std::holds_alternative<Tree>(object)) return QObject::tr("Raise tree").toStdString();
  return QObject::tr("Raise wall, fence or hedge").toStdString();
}

}  // namespace

bool stands(const Object& object) {
  return std::holds_alternative<Building>(object) || std::holds_alternative<Barrier>(object) ||
         std::holds_alternative<Tree>(object);
}

SizeGesture::SizeGesture(Canvas& canvas, ObjectRef ref, SizeKind kind, const PointerAt& from)
    : canvas_(canvas), ref_(ref), kind_(kind), from_(from.pixels) {}

// A metre up on the plan is a metre of height.
std::optional<Object> SizeGesture::changed(const PointerAt& at) const {
  const Yard& yard = canvas_.document().yard();
  const auto object = objectAt(yard, ref_);
  if (!object) return std::nullopt;
  const Steps steps{yard.settings.units, bool(at.modifiers & Qt::ShiftModifier)};
  const Length by = Length::metres(canvas_.mapping().metres(from_.y() - at.pixels.y()));
  if (const auto* tree = std::get_if<Tree>(&*object)) {
    if (kind_ == SizeKind::Height) return raised(*tree, by, steps);
    Tree wide = *tree;
    wide.crownRadius =
        steps(Length::metres(distance(tree->at, at.site)), kLeastCrownRadius, kMostCrownRadius);
    return wide;
  }
  if (const auto* building = std::get_if<Building>(&*object)) return raised(*building, by, steps);
  if (const auto* barrier = std::get_if<Barrier>(&*object)) return raised(*barrier, by, steps);
  return std::nullopt;
}

ChangeSet SizeGesture::edit(const PointerAt& at) const {
  const auto after = changed(at);
  if (!after) return {};
  Draft draft(canvas_.document().yard());
  std::visit([&draft](const auto& object) { draft.put(object); }, *after);
  return draft.finish(labelOf(*after, kind_));
}

void SizeGesture::tell(const Object& now) const {
  const UnitSystem units = canvas_.document().yard().settings.units;
  const auto text = [units](Length length) {
    return QString::fromStdString(formatLength(length, units));
  };
  const Item* item = canvas_.scene().find(ref_);
  if (!item) return;
  const Point above{item->bounds().centre().x, item->bounds().high.y};
  if (const auto* tree = std::get_if<Tree>(&now)) {
    const bool crown = kind_ == SizeKind::Crown;
    canvas_.showFigure(above, text(crown ? tree->crownRadius : tree->height),
                       crown ? QObject::tr("crown radius") : QObject::tr("high"));
  } else if (const auto* building = std::get_if<Building>(&now)) {
    canvas_.showFigure(above, text(building->eave),
                       building->roof == Roof::Flat
                           ? QObject::tr("high")
                           : QObject::tr("eave · ridge %1").arg(text(building->ridge)));
  } else if (const auto* barrier = std::get_if<Barrier>(&now)) {
    canvas_.showFigure(above, text(barrier->height), QObject::tr("high"));
  }
}

void SizeGesture::move(const PointerAt& at) {
  if (!dragged_ && (at.pixels - from_).manhattanLength() < kDragPixels) return;
  dragged_ = true;
  const auto after = changed(at);
  if (!after) return;
  canvas_.show(edit(at));
  tell(*after);
}

void SizeGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  canvas_.clearFigure();
  if (dragged_) canvas_.document().commit(edit(at));
}

}  // namespace tussock
