// SPDX-License-Identifier: MIT
// The yard: one value that holds everything drawn. It is never changed in place; an edit makes the
// next yard.
#pragma once

#include <variant>

#include "core/model/bed.h"
#include "core/model/collection.h"
#include "core/model/drift.h"
#include "core/model/own_species.h"
#include "core/model/settings.h"
#include "core/model/site.h"
#include "core/model/solids.h"

namespace tussock {

struct Yard {
  Settings settings;
  Collection<LotLine> lotLines;
  Collection<Building> buildings;
  Collection<Barrier> barriers;
  Collection<Tree> trees;
  Collection<Paving> pavings;
  Collection<SteppingPlace> steppingPlaces;
  Collection<WaterPoint> waterPoints;
  Collection<HeightLimit> heightLimits;
  Collection<BuriedLine> buriedLines;
  Collection<Bed> beds;
  Collection<Patch> patches;
  Collection<Drift> drifts;
  Collection<PlanCode> planCodes;
  Collection<Photo> photos;
  Collection<Acceptance> acceptances;
  Collection<ForeignFeature> foreignFeatures;
  Collection<SunReading> sunReadings;
  Collection<OwnSpecies> ownSpecies;
  Collection<Arrangement> arrangements;

  bool operator==(const Yard&) const = default;
};

// Any one object of a yard.
using Object = std::variant<Settings, LotLine, Building, Barrier, Tree, Paving, SteppingPlace,
                            WaterPoint, HeightLimit, BuriedLine, Bed, Patch, Drift, PlanCode, Photo,
                            Acceptance, ForeignFeature, SunReading, OwnSpecies, Arrangement>;

// The word for a kind of object: its table in the file, its tag in change sets.
template <class T>
inline constexpr std::string_view kKind = {};
template <>
inline constexpr std::string_view kKind<Settings> = "settings";
template <>
inline constexpr std::string_view kKind<LotLine> = "lot_line";
template <>
inline constexpr std::string_view kKind<Building> = "building";
template <>
inline constexpr std::string_view kKind<Barrier> = "barrier";
template <>
inline constexpr std::string_view kKind<Tree> = "tree";
template <>
inline constexpr std::string_view kKind<Paving> = "paving";
template <>
inline constexpr std::string_view kKind<SteppingPlace> = "stepping_place";
template <>
inline constexpr std::string_view kKind<WaterPoint> = "water_point";
template <>
inline constexpr std::string_view kKind<HeightLimit> = "height_limit";
template <>
inline constexpr std::string_view kKind<BuriedLine> = "buried_line";
template <>
inline constexpr std::string_view kKind<Bed> = "bed";
template <>
inline constexpr std::string_view kKind<Patch> = "patch";
template <>
inline constexpr std::string_view kKind<Drift> = "drift";
template <>
inline constexpr std::string_view kKind<PlanCode> = "plan_code";
template <>
inline constexpr std::string_view kKind<Photo> = "photo";
template <>
inline constexpr std::string_view kKind<Acceptance> = "acceptance";
template <>
inline constexpr std::string_view kKind<ForeignFeature> = "foreign_feature";
template <>
inline constexpr std::string_view kKind<SunReading> = "sun_reading";
template <>
inline constexpr std::string_view kKind<OwnSpecies> = "own_species";
template <>
inline constexpr std::string_view kKind<Arrangement> = "arrangement";

// Points at an object of any kind: the position of its type in Object, and its id.
struct ObjectRef {
  std::size_t kind = 0;
  std::int64_t id = 0;

  auto operator<=>(const ObjectRef&) const = default;
};
template <class T>
[[nodiscard]] ObjectRef refTo(Id<T> id) {
  return {Object(T{}).index(), id.value()};
}
[[nodiscard]] ObjectRef refTo(const Object& object);
[[nodiscard]] std::string_view kindOf(ObjectRef ref);  // kKind of its type
template <class T>
[[nodiscard]] std::optional<Id<T>> idIf(ObjectRef ref) {
  if (ref.kind != Object(T{}).index()) return std::nullopt;
  return Id<T>(ref.id);
}

// The collection that holds objects of type T (not for Settings).
template <class T>
[[nodiscard]] const Collection<T>& collectionOf(const Yard& yard);
template <class T>
[[nodiscard]] Collection<T>& collectionOf(Yard& yard);
// A copy of the object, or nothing when the yard has none such.
[[nodiscard]] std::optional<Object> objectAt(const Yard& yard, ObjectRef ref);
// Calls f(const T&) for every object, kind by kind, ids ascending; settings first.
template <class F>
void forEachObject(const Yard& yard, F&& f);

[[nodiscard]] std::vector<const Drift*> driftsIn(const Yard& yard, Id<Bed> bed);
[[nodiscard]] std::vector<const Arrangement*> arrangementsOf(const Yard& yard, Id<Bed> bed);
// Around everything drawn; empty when nothing is.
[[nodiscard]] Box boundsOf(const Yard& yard);
// The lot line's box, else everything drawn.
[[nodiscard]] Box siteBox(const Yard& yard);
[[nodiscard]] std::int64_t largestId(const Yard& yard);  // of objects and plants; 1 at least

}  // namespace tussock

#include "core/model/yard_access.h"  // IWYU pragma: export
