// SPDX-License-Identifier: MIT
#include "core/model/yard.h"

#include <array>
#include <utility>

namespace tussock {

namespace {

using Kinds = std::make_index_sequence<std::variant_size_v<Object>>;

template <std::size_t... I>
std::string_view kindAt(std::size_t kind, std::index_sequence<I...>) {
  std::string_view result;
  ((I == kind ? void(result = kKind<std::variant_alternative_t<I, Object>>) : void()), ...);
  return result;
}

template <std::size_t I>
void findIn(const Yard& yard, ObjectRef ref, std::optional<Object>& result) {
  using T = std::variant_alternative_t<I, Object>;
  if (ref.kind != I) return;
  if constexpr (std::is_same_v<T, Settings>) {
    result = yard.settings;
  } else if (const T* found = collectionOf<T>(yard).find(Id<T>(ref.id))) {
    result = *found;
  }
}

template <std::size_t... I>
std::optional<Object> findAny(const Yard& yard, ObjectRef ref, std::index_sequence<I...>) {
  std::optional<Object> result;
  (findIn<I>(yard, ref, result), ...);
  return result;
}

void includeAll(Box& box, const auto& collection, auto shape) {
  for (const auto& object : collection) box.include(shape(object));
}

}  // namespace

ObjectRef refTo(const Object& object) {
  return std::visit([&](const auto& o) { return ObjectRef{object.index(), o.id.value()}; }, object);
}

std::string_view kindOf(ObjectRef ref) {
  return kindAt(ref.kind, Kinds{});
}

std::optional<Object> objectAt(const Yard& yard, ObjectRef ref) {
  return findAny(yard, ref, Kinds{});
}

std::vector<Point> positionsOf(const Drift& drift) {
  std::vector<Point> result;
  result.reserve(drift.plants.size());
  for (const Plant& plant : drift.plants) result.push_back(plant.at);
  return result;
}

std::vector<const Drift*> driftsIn(const Yard& yard, Id<Bed> bed) {
  std::vector<const Drift*> result;
  for (const Drift& drift : yard.drifts)
    if (drift.bed == bed) result.push_back(&drift);
  return result;
}

std::vector<const Arrangement*> arrangementsOf(const Yard& yard, Id<Bed> bed) {
  std::vector<const Arrangement*> result;
  for (const Arrangement& arrangement : yard.arrangements)
    if (arrangement.bed == bed) result.push_back(&arrangement);
  return result;
}

Box boundsOf(const Yard& yard) {
  Box box;
  auto outline = [](const auto& o) { return boundsOf(o.outline); };
  includeAll(box, yard.lotLines, outline);
  includeAll(box, yard.pavings, outline);
  includeAll(box, yard.beds, outline);
  includeAll(box, yard.heightLimits, outline);
  includeAll(box, yard.patches, outline);
  includeAll(box, yard.buildings, [](const Building& b) { return boundsOf(b.footprint); });
  includeAll(box, yard.barriers, [](const Barrier& b) {
    Box both = boundsOf(b.line);
    both.include(boundsOf(b.footprint));
    return both;
  });
  includeAll(box, yard.buriedLines, [](const BuriedLine& b) { return boundsOf(b.line); });
  includeAll(box, yard.trees, [](const Tree& t) {
    return Box{t.at, t.at}.grown(t.crownRadius.metres());
  });
  includeAll(box, yard.steppingPlaces, [](const SteppingPlace& s) { return Box{s.at, s.at}; });
  includeAll(box, yard.waterPoints, [](const WaterPoint& w) { return Box{w.at, w.at}; });
  for (const Drift& drift : yard.drifts) box.include(boundsOf(positionsOf(drift)));
  return box;
}

Box siteBox(const Yard& yard) {
  Box box;
  for (const LotLine& lot : yard.lotLines) box.include(boundsOf(lot.outline));
  return box.empty() ? boundsOf(yard) : box;
}

std::int64_t largestId(const Yard& yard) {
  std::int64_t largest = 1;
  forEachObject(yard, [&](const auto& object) { largest = std::max(largest, object.id.value()); });
  for (const Drift& drift : yard.drifts)
    for (const Plant& plant : drift.plants) largest = std::max(largest, plant.id.value());
  return largest;
}

}  // namespace tussock
