// SPDX-License-Identifier: MIT
#include "core/edit/draft.h"

#include <set>

#include <fmt/format.h>

namespace tussock {

namespace {

struct Mover {
  Point step;

  bool operator()(Bed& o) const { return shift(o.outline); }
  bool operator()(Patch& o) const { return shift(o.outline); }
  bool operator()(LotLine& o) const { return shift(o.outline); }
  bool operator()(Paving& o) const { return shift(o.outline); }
  bool operator()(HeightLimit& o) const { return shift(o.outline); }
  bool operator()(Building& o) const { return shift(o.footprint); }
  bool operator()(Barrier& o) const {
    if (!o.footprint.empty()) shift(o.footprint);
    return shift(o.line);
  }
  bool operator()(BuriedLine& o) const { return shift(o.line); }
  bool operator()(Tree& o) const { return shift(o.at); }
  bool operator()(SteppingPlace& o) const { return shift(o.at); }
  bool operator()(WaterPoint& o) const { return shift(o.at); }
  bool operator()(Photo& o) const { return !o.locked && shift(o.corner); }
  bool operator()(Drift& o) const {
    if (o.locked) return false;
    for (Plant& plant : o.plants) plant.at += step;
    return true;
  }
  bool operator()(auto&) const { return false; }

 private:
  bool shift(Point& p) const { return p += step, true; }
  bool shift(Polygon& polygon) const { return polygon = moved(std::move(polygon), step), true; }
  bool shift(Polyline& line) const {
    for (Point& p : line) p += step;
    return true;
  }
};

// With the drifts of every bed among them.
std::set<ObjectRef> withDrifts(const Yard& yard, const std::vector<ObjectRef>& refs) {
  std::set<ObjectRef> all(refs.begin(), refs.end());
  for (const ObjectRef ref : refs)
    if (const auto bed = idIf<Bed>(ref))
      for (const Drift* drift : driftsIn(yard, *bed)) all.insert(refTo(drift->id));
  return all;
}

std::string nameForLabel(ObjectRef ref, std::size_t count) {
  std::string name(kindOf(ref));
  for (char& c : name)
    if (c == '_') c = ' ';
  return count == 1 ? name : fmt::format("{} things", count);
}

}  // namespace

void Draft::remove(ObjectRef ref) {
  const auto object = objectAt(after_, ref);
  if (!object) return;
  std::visit(
      [&](const auto& o) {
        if constexpr (!std::is_same_v<std::decay_t<decltype(o)>, Settings>) remove(o.id);
      },
      *object);
}

ChangeSet removeObjects(const Yard& yard, const std::vector<ObjectRef>& refs) {
  Draft draft(yard);
  const auto all = withDrifts(yard, refs);
  for (const ObjectRef ref : all) draft.remove(ref);
  if (refs.empty()) return {};
  std::string label = "Delete " + nameForLabel(refs.front(), refs.size());
  if (const std::size_t drifts = all.size() - std::set(refs.begin(), refs.end()).size(); drifts > 0)
    label += fmt::format(" with {} {}", drifts, drifts == 1 ? "drift" : "drifts");
  return draft.finish(label);
}

ChangeSet moveObjects(const Yard& yard, const std::vector<ObjectRef>& refs, Point step) {
  Draft draft(yard);
  for (const ObjectRef ref : withDrifts(yard, refs)) {
    auto object = objectAt(yard, ref);
    if (!object) continue;
    std::visit(
        [&](auto& o) {
          if (Mover{step}(o)) draft.put(o);
        },
        *object);
  }
  return refs.empty() ? ChangeSet{}
                      : draft.finish("Move " + nameForLabel(refs.front(), refs.size()));
}

}  // namespace tussock
