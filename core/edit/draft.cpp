// SPDX-License-Identifier: MIT
#include "core/edit/draft.h"

#include <algorithm>
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
  bool operator()(SunReading& o) const { return shift(o.at); }
  bool operator()(Arrangement& o) const {
    for (KeptDrift& drift : o.drifts)
      for (Point& place : drift.places) place += step;
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

// With the drifts and kept arrangements of every bed among them.
std::set<ObjectRef> withContents(const Yard& yard, const std::vector<ObjectRef>& refs) {
  std::set<ObjectRef> all(refs.begin(), refs.end());
  for (const ObjectRef ref : refs)
    if (const auto bed = idIf<Bed>(ref)) {
      for (const Drift* drift : driftsIn(yard, *bed)) all.insert(refTo(drift->id));
      for (const Arrangement* kept : arrangementsOf(yard, *bed)) all.insert(refTo(kept->id));
    }
  return all;
}

// How many drifts go that were not named themselves.
std::size_t driftsBeside(const std::set<ObjectRef>& all, const std::vector<ObjectRef>& named) {
  const std::set<ObjectRef> asked(named.begin(), named.end());
  return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [&](ObjectRef ref) {
    return idIf<Drift>(ref).has_value() && !asked.contains(ref);
  }));
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
  const auto all = withContents(yard, refs);
  for (const ObjectRef ref : all) draft.remove(ref);
  if (refs.empty()) return {};
  std::string label = "Delete " + nameForLabel(refs.front(), refs.size());
  if (const std::size_t drifts = driftsBeside(all, refs); drifts > 0)
    label += fmt::format(" with {} {}", drifts, drifts == 1 ? "drift" : "drifts");
  return draft.finish(label);
}

ChangeSet moveObjects(const Yard& yard, const std::vector<ObjectRef>& refs, Point step) {
  Draft draft(yard);
  for (const ObjectRef ref : withContents(yard, refs)) {
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
