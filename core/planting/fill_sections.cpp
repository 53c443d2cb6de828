// SPDX-License-Identifier: MIT
#include "core/planting/fill_sections.h"

#include <algorithm>

#include "core/geometry/point.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

constexpr std::size_t kInSection = 48;

struct SectionDrift {
  Id<Drift> id;
  Point middle;
};
using Section = std::vector<SectionDrift>;

// Halved across its longer side until small enough.
void halve(Section drifts, std::vector<std::vector<Id<Drift>>>& sections) {
  if (drifts.size() <= kInSection) {
    auto& section = sections.emplace_back();
    for (const SectionDrift& drift : drifts) section.push_back(drift.id);
    std::sort(section.begin(), section.end());
    return;
  }
  Box box;
  for (const SectionDrift& drift : drifts) box.include(drift.middle);
  const Point size = box.high - box.low;
  const auto along = [wide = size.x >= size.y](const SectionDrift& drift) {
    return wide ? std::pair(drift.middle.x, drift.id) : std::pair(drift.middle.y, drift.id);
  };
  const auto half = drifts.begin() + static_cast<std::ptrdiff_t>(drifts.size() / 2);
  std::nth_element(drifts.begin(), half, drifts.end(),
                   [&](const auto& a, const auto& b) { return along(a) < along(b); });
  halve(Section(drifts.begin(), half), sections);
  halve(Section(half, drifts.end()), sections);
}

Box boxAround(const Drift& drift) {
  Box box;
  for (const Plant& plant : drift.plants) box.include(plant.at);
  return box;
}

}  // namespace

std::vector<std::vector<Id<Drift>>> sectionsOf(const Yard& yard,
                                               const std::vector<Id<Drift>>& drifts) {
  Section all;
  for (const Id<Drift> id : drifts)
    if (const Drift* drift = yard.drifts.find(id); drift != nullptr && !drift->plants.empty())
      all.push_back({id, middleOf(*drift)});
  std::vector<std::vector<Id<Drift>>> sections;
  if (!all.empty()) halve(std::move(all), sections);
  return sections;
}

Yard aroundSection(const Yard& yard, const std::vector<Id<Drift>>& section, double reach) {
  Box box;
  for (const Id<Drift> id : section)
    for (const Plant& plant : yard.drifts.find(id)->plants) box.include(plant.at);
  box = box.grown(reach);
  std::vector<Drift> near;
  for (const Drift& drift : yard.drifts)
    if (!drift.plants.empty() && box.overlaps(boxAround(drift))) near.push_back(drift);
  Yard part = yard;
  part.drifts = Collection<Drift>(std::move(near));
  return part;
}

}  // namespace tussock
