// SPDX-License-Identifier: MIT
#include "core/checks/fill_outcome.h"

#include <algorithm>

#include "core/checks/shares.h"

namespace tussock {

FillOutcome::FillOutcome(const CheckInput& made, const FillRequest& asked, const FillResult& came)
    : input(made), request(asked), result(came) {
  for (const ListedSpecies& one : result.plants) {
    const Species* known = input.facts.find(one.species);
    if (known == nullptr || !suits(one.species)) continue;
    if (std::find(listed_.begin(), listed_.end(), known) == listed_.end()) listed_.push_back(known);
    if (one.matrix) matrices_.insert(one.species);
  }
  for (const Change& change : result.edit.changes)
    if (const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr)
      planted_.insert(after->id);
  if (request.what == FillWhat::OneSpecies) takeThoseBefore();
}

void FillOutcome::takeThoseBefore() {
  const Yard yard = apply(input.yard, inverse(result.edit));
  const auto findings = runChecks({yard, input.facts, input.sun});
  for (const Finding& finding : findings.value_or(std::vector<Finding>()))
    before_.insert(keyOf(finding));
}

bool FillOutcome::suits(const std::string& species) const {
  return result.suiting.empty() || result.suiting.contains(species);
}

bool FillOutcome::isMatrix(const std::string& species) const {
  return matrices_.contains(species);
}

bool FillOutcome::isKept(const Drift& drift) const {
  return !takesOut(request, drift) && !isPlanted(drift.id);
}

bool FillOutcome::concerns(const Finding& finding, const std::string& species) const {
  if (finding.check == CheckId::SpeciesShare) return finding.about == species;
  const Species* known = input.facts.find(species);
  return known != nullptr &&
         finding.about == (finding.check == CheckId::GenusShare ? known->genus : known->family);
}

std::set<std::string_view> FillOutcome::speciesHere() const {
  std::set<std::string_view> species;
  for (const Drift* drift : driftsIn(input.yard, request.bed))
    if (drift->layer == Layer::Main) species.insert(drift->species);
  return species;
}

std::size_t FillOutcome::plantsHere() const {
  std::size_t count = 0;
  for (const Drift* drift : driftsIn(input.yard, request.bed)) count += drift->plants.size();
  return count;
}

int FillOutcome::mainPlants() const {
  std::size_t count = 0;
  for (const Drift& drift : input.yard.drifts)
    if (drift.layer == Layer::Main) count += drift.plants.size();
  return static_cast<int>(count);
}

bool FillOutcome::isAboutTheRefilled(const Finding& finding) const {
  if (rankOf(finding.check)) return concerns(finding, request.species);
  return std::any_of(finding.subjects.begin(), finding.subjects.end(), [&](ObjectRef ref) {
    const auto id = idIf<Drift>(ref);
    const Drift* drift = id ? input.yard.drifts.find(*id) : nullptr;
    return drift != nullptr && drift->species == request.species;
  });
}

bool FillOutcome::isOfTheRefill(const Finding& finding) const {
  return isAboutTheRefilled(finding) || !before_.contains(keyOf(finding));
}

}  // namespace tussock
