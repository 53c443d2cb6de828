// SPDX-License-Identifier: MIT
#include "core/store/soundness.h"

#include <algorithm>
#include <cmath>
#include <unordered_set>

#include <fmt/format.h>

#include "core/catalog/table.h"
#include "core/exchange/field_form.h"
#include "core/model/fields.h"

namespace tussock {

namespace {

using Faults = std::vector<std::string>;

// A barrier's footprint may be empty: its line then says it all.
template <class T>
inline constexpr bool kMayBeEmpty = std::is_same_v<T, Barrier>;

template <class T>
class FieldFaults {
 public:
  FieldFaults(const T& object, Faults& faults) : object_(object), faults_(faults) {}

  void operator()(std::string_view name, const NumberField auto& field) const {
    if (!std::isfinite(numberOf(field))) add(name, "is not a finite number");
  }
  void operator()(std::string_view name, const Point& field) const {
    if (!isFinite(field)) add(name, "is not a finite position");
  }
  void operator()(std::string_view name, const Polyline& field) const {
    if (!std::all_of(field.begin(), field.end(), isFinite)) add(name, "is not a finite line");
  }
  void operator()(std::string_view name, const Polygon& field) const {
    if (kMayBeEmpty<T> && field == Polygon{}) return;
    if (const auto reason = invalidityOf(field)) add(name, explain(*reason));
  }
  void operator()(std::string_view name, const std::vector<Plant>& field) const {
    for (const Plant& plant : field) {
      if (!plant.id.valid()) add(name, "have one without an id");
      if (!isFinite(plant.at)) add(name, "have one without a finite position");
    }
  }
  void operator()(std::string_view name, const std::vector<ListedSpecies>& field) const {
    for (const ListedSpecies& entry : field)
      (*this)(name, entry.species), (*this)(name, entry.share);
  }
  void operator()(std::string_view name, const std::vector<ThresholdOverride>& field) const {
    for (const ThresholdOverride& entry : field)
      (*this)(name, entry.threshold), (*this)(name, entry.value);
  }
  void operator()(std::string_view name, const std::vector<SkylinePoint>& field) const {
    for (const SkylinePoint& entry : field)
      (*this)(name, entry.azimuth), (*this)(name, entry.elevation);
  }
  void operator()(std::string_view name, const std::vector<OwnFact>& field) const {
    for (const OwnFact& entry : field) (*this)(name, entry.column), (*this)(name, entry.value);
  }
  void operator()(std::string_view name, const std::vector<KeptDrift>& field) const {
    for (const KeptDrift& drift : field) {
      (*this)(name, drift.species), (*this)(name, drift.spacing);
      (*this)(name, drift.axis), (*this)(name, drift.stretch);
      for (const Point place : drift.places) (*this)(name, place);
    }
  }
  void operator()(std::string_view name, const Viewing& field) const {
    for (const Angle side : field.from) (*this)(name, side);
  }
  void operator()(std::string_view name, const std::string& field) const {
    if (!isUtf8(field)) add(name, "is not text in UTF-8");
  }
  template <class F>
  void operator()(std::string_view name, const std::optional<F>& field) const {
    if (field) (*this)(name, *field);
  }
  void operator()(std::string_view, const auto&) const {}

 private:
  void add(std::string_view name, std::string_view what) const {
    faults_.push_back(fmt::format("{} {}, {}: {}", kKind<T>, object_.id.value(), name, what));
  }
  const T& object_;
  Faults& faults_;
};

template <class T>
void addFaults(const T& object, Faults& faults) {
  const bool idFits = std::is_same_v<T, Settings> ? object.id.value() == 1 : object.id.value() > 1;
  if (!idFits)
    faults.push_back(fmt::format("{} {}: has no id of its own", kKind<T>, object.id.value()));
  visitFields(object, FieldFaults<T>(object, faults));
}

void addSharedIds(const Yard& yard, Faults& faults) {
  std::unordered_set<std::int64_t> seen;
  auto see = [&](std::string_view kind, std::int64_t id) {
    if (!seen.insert(id).second)
      faults.push_back(fmt::format("{} {}: something else has this id too", kind, id));
  };
  forEachObject(yard, [&](const auto& object) {
    see(kKind<std::decay_t<decltype(object)>>, object.id.value());
  });
  for (const Drift& drift : yard.drifts)
    for (const Plant& plant : drift.plants) see("plant", plant.id.value());
}

}  // namespace

Faults faultsOf(const Object& object) {
  Faults faults;
  std::visit([&](const auto& o) { addFaults(o, faults); }, object);
  return faults;
}

Faults faultsOf(const Yard& yard) {
  Faults faults;
  forEachObject(yard, [&](const auto& object) { addFaults(object, faults); });
  addSharedIds(yard, faults);
  return faults;
}

std::int64_t largestId(const ChangeSet& edit) {
  std::int64_t largest = 1;
  auto include = [&](const std::optional<Object>& object) {
    if (!object) return;
    largest = std::max(largest, refTo(*object).id);
    if (const Drift* drift = std::get_if<Drift>(&*object))
      for (const Plant& plant : drift->plants) largest = std::max(largest, plant.id.value());
  };
  for (const Change& change : edit.changes) include(change.before), include(change.after);
  return largest;
}

}  // namespace tussock
