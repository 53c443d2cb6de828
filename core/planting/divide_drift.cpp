// SPDX-License-Identifier: MIT
#include "core/planting/divide_drift.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/planting/drift_plants.h"
#include "core/planting/one_piece.h"
#include "core/planting/patterns.h"

namespace tussock {

namespace {

Division refused(Refusal refusal, Id<Drift> first) {
  Division division;
  division.refusal = refusal;
  division.first = first;
  return division;
}

bool isEven(const Drift& drift) {
  return drift.plants.size() % 2 == 0;
}

bool hangsTogether(const Drift& drift, const std::vector<Plant>& plants) {
  Drift part = drift;
  part.plants = plants;
  return !isOnePiece(drift.pattern) || inOnePiece(positionsOf(part), drift.spacing);
}

// A part lies otherwise than the whole did. Rows keep the axis they stand along.
void lieAsPlanted(Drift& drift) {
  constexpr std::size_t kFewest = 3;  // fewer have no length to speak of
  if (drift.pattern != Pattern::Staggered || drift.plants.size() < kFewest) return;
  const OrientedRectangle box = smallestRectangle(positionsOf(drift), drift.spacing / 2.0);
  drift.axis = box.axis;
  drift.stretch = std::clamp(box.length / box.width, 1.0, 10.0);
}

struct CutLine {
  Point from, to;
  [[nodiscard]] double side(Point p) const { return cross(to - from, p - from); }
};

// The plant of `a` nearest the line goes over to `b`, if both still hang together then.
bool handOver(Drift& a, Drift& b, const CutLine& line) {
  if (a.plants.size() < 2) return false;
  const auto nearest =
      std::min_element(a.plants.begin(), a.plants.end(), [&](const Plant& p, const Plant& q) {
        return std::abs(line.side(p.at)) < std::abs(line.side(q.at));
      });
  std::vector<Plant> less = a.plants, more = b.plants;
  more.push_back(*nearest);
  less.erase(less.begin() + (nearest - a.plants.begin()));
  if (!hangsTogether(a, less) || !hangsTogether(b, more)) return false;
  sortById(more);
  a.plants = std::move(less);
  b.plants = std::move(more);
  return true;
}

// Gains a plant where one fits, else gives up the outermost. `yard` holds everything else.
void makeOdd(const Yard& yard, Drift& drift, Division& division, IdSource& ids) {
  if (!isEven(drift) || drift.plants.empty()) return;
  const int count = static_cast<int>(drift.plants.size());
  std::vector<Plant> more = morePlants(yard, drift, count + 1, ids);
  if (more.size() > drift.plants.size()) {
    drift.plants = std::move(more);
    ++division.added;
  } else {
    drift.plants = fewerPlants(drift, count - 1);
    ++division.removed;
  }
}

std::string changed(const Division& division) {
  if (division.added > 0) return fmt::format(", {} added", division.added);
  if (division.removed > 0) return fmt::format(", {} given up", division.removed);
  return {};
}

Refusal whyNotMerge(const Drift* a, const Drift* b) {
  if (a == nullptr || b == nullptr || a == b) return Refusal::Missing;
  if (a->locked || b->locked) return Refusal::Locked;
  if (a->species != b->species) return Refusal::OtherSpecies;
  if (a->layer != b->layer || a->size != b->size || a->bed != b->bed) return Refusal::OtherPlanting;
  return Refusal::None;
}

}  // namespace

std::string_view explain(Refusal refusal) {
  switch (refusal) {
    case Refusal::None:
      return {};
    case Refusal::Missing:
      return "There is no such drift. Choose one on the plan.";
    case Refusal::Locked:
      return "The drift is locked. Unlock it first.";
    case Refusal::AllOnOneSide:
      return "All plants are on one side of the line. Draw it across the drift.";
    case Refusal::OtherSpecies:
      return "The drifts are of different species. Choose two of one species.";
    case Refusal::OtherPlanting:
      return "The drifts differ in bed, layer or size. Make these the same first.";
    case Refusal::Apart:
      return "The drifts stand apart. Move one beside the other first.";
  }
  return {};
}

Division splitDrift(const Yard& yard, Id<Drift> id, Point from, Point to, IdSource& ids) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr) return refused(Refusal::Missing, id);
  if (found->locked) return refused(Refusal::Locked, id);
  const CutLine line{from, to};
  Drift first = *found, second = *found;
  const auto isLeft = [&](const Plant& p) { return line.side(p.at) > 0.0; };
  std::erase_if(first.plants, isLeft);
  std::erase_if(second.plants, [&](const Plant& p) { return !isLeft(p); });
  if (first.plants.empty() || second.plants.empty()) return refused(Refusal::AllOnOneSide, id);
  if (second.plants.size() > first.plants.size()) std::swap(first.plants, second.plants);
  second.id = ids.take<Drift>();
  second.foreign.clear();
  if (isEven(first) && isEven(second) && !handOver(first, second, line))
    handOver(second, first, line);
  Division division{{}, Refusal::None, id, second.id, 0, 0};
  Draft draft(yard);
  draft.put(first), draft.put(second);
  if (!found->existing()) {
    makeOdd(draft.yard(), first, division, ids), draft.put(first);
    makeOdd(draft.yard(), second, division, ids), draft.put(second);
  }
  lieAsPlanted(first), lieAsPlanted(second);
  draft.put(first), draft.put(second);
  division.edit = draft.finish(fmt::format("Split drift into {} and {}{}", first.plants.size(),
                                           second.plants.size(), changed(division)));
  return division;
}

Division mergeDrifts(const Yard& yard, Id<Drift> a, Id<Drift> b, IdSource& ids) {
  const Drift* first = yard.drifts.find(a);
  const Drift* second = yard.drifts.find(b);
  if (const Refusal why = whyNotMerge(first, second); why != Refusal::None) return refused(why, a);
  if (second->plants.size() > first->plants.size()) std::swap(first, second);
  Drift merged = *first;
  merged.plants.insert(merged.plants.end(), second->plants.begin(), second->plants.end());
  sortById(merged.plants);
  if (!hangsTogether(merged, merged.plants)) return refused(Refusal::Apart, a);
  Division division{{}, Refusal::None, merged.id, {}, 0, 0};
  Draft draft(yard);
  draft.remove(second->id);
  if (!merged.existing()) makeOdd(draft.yard(), merged, division, ids);
  lieAsPlanted(merged);
  const std::size_t count = merged.plants.size();
  draft.put(std::move(merged));
  division.edit = draft.finish(fmt::format("Merge drifts to {}{}", count, changed(division)));
  return division;
}

}  // namespace tussock
