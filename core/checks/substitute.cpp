// SPDX-License-Identifier: MIT
#include "core/checks/substitute.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <fmt/format.h>

#include "core/catalog/bloom.h"
#include "core/catalog/place.h"
#include "core/checks/describe.h"
#include "core/edit/draft.h"
#include "core/planting/reshape_drift.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

int sizeOf(const Drift& drift) {
  return static_cast<int>(drift.plants.size());
}

bool canChange(const Drift& drift) {
  return !drift.locked && !drift.existing() && !drift.plants.empty();
}

// So many of the other species as the drift's ground comes to.
int countOnGround(const Drift& drift, const Species& with) {
  return countFor(drift.pattern, with.spacing,
                  areaFor(drift.pattern, drift.spacing, sizeOf(drift)));
}

// The yard with the drift's plants set out anew as the other species, ids kept.
Yard withDrift(const Yard& yard, const Drift& drift, const Species& with, IdSource& ids) {
  Drift changed = drift;
  changed.species = with.botanicalName;
  changed.layer = with.usualLayer();
  Draft draft(yard);
  draft.put(changed);
  DriftShape shape = shapeOf(changed);
  shape.spacing = with.spacing;
  shape.count = countOnGround(drift, with);
  return apply(draft.yard(), reshapeDrift(draft.yard(), drift.id, shape, ids).edit);
}

void renameInLists(Draft& draft, std::string_view species, const Species& with) {
  for (const Bed& bed : draft.yard().beds) {
    const auto has = [&](std::string_view name) {
      return std::any_of(bed.plantList.begin(), bed.plantList.end(),
                         [&](const ListedSpecies& listed) { return listed.species == name; });
    };
    if (!has(species)) continue;
    Bed changed = bed;
    if (has(with.botanicalName))
      std::erase_if(changed.plantList,
                    [&](const auto& listed) { return listed.species == species; });
    else
      for (ListedSpecies& listed : changed.plantList)
        if (listed.species == species) listed.species = with.botanicalName;
    draft.put(std::move(changed));
  }
}

std::vector<const Bed*> bedsWith(const Yard& yard, std::string_view species) {
  std::set<Id<Bed>> ids;
  for (const Drift& drift : yard.drifts)
    if (drift.species == species && canChange(drift)) ids.insert(drift.bed);
  std::vector<const Bed*> beds;
  for (const Id<Bed> id : ids)
    if (const Bed* bed = yard.beds.find(id)) beds.push_back(bed);
  return beds;
}

bool suitsAll(const Species& species, const CheckInput& input,
              const std::vector<const Bed*>& beds) {
  const SunProfile& profile = sunProfile(input.yard.settings.sunProfile);
  return std::all_of(beds.begin(), beds.end(), [&](const Bed* bed) {
    const auto hours = input.sun ? input.sun->meanHours(bed->outline) : std::nullopt;
    return whyNot(species, placeOf(input.yard, *bed, hours), profile).empty();
  });
}

std::vector<const Species*> mostAlike(const CheckInput& input, const Species& of,
                                      std::size_t count) {
  const auto beds = bedsWith(input.yard, of.botanicalName);
  std::vector<std::pair<double, const Species*>> found;
  for (const Species& one : input.facts.species())
    if (one.botanicalName != of.botanicalName && !beds.empty() && suitsAll(one, input, beds))
      found.emplace_back(likenessOf(of, one).points(), &one);
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  if (found.size() > count) found.resize(count);
  std::vector<const Species*> species;
  species.reserve(found.size());
  for (const auto& [points, one] : found) species.push_back(one);
  return species;
}

using FindingsByKey = std::map<std::string, Finding>;

FindingsByKey findingsOf(const CheckInput& input) {
  FindingsByKey byKey;
  for (Finding& finding : runChecks(input).value_or(std::vector<Finding>{}))
    byKey.try_emplace(keyOf(finding), std::move(finding));
  return byKey;
}

// How far from what is asked, in parts of that.
double missOf(const Finding& finding) {
  const double apart = std::abs(finding.measured - finding.required);
  return finding.required > 0.0 ? apart / finding.required : apart;
}

bool isWorse(const Finding& now, const Finding& before) {
  constexpr double kShows = 0.01;  // less is lost in the rounding of the words
  return now.severity > before.severity || missOf(now) > missOf(before) + kShows;
}

std::vector<std::string> textsOf(const std::vector<Finding>& findings, const CheckInput& input) {
  std::vector<std::string> texts;
  texts.reserve(findings.size());
  for (const Finding& finding : findings)
    texts.push_back(describe(finding, input.yard, input.facts, input.sun).text);
  return texts;
}

// What the checks say of the yard after that they did not say, or not so badly, before.
void addFindings(Substitute& result, const CheckInput& after, const FindingsByKey& before) {
  for (Finding& finding : runChecks(after).value_or(std::vector<Finding>{})) {
    const auto was = before.find(keyOf(finding));
    if (was == before.end())
      result.caused.push_back(std::move(finding));
    else if (isWorse(finding, was->second))
      result.worsened.push_back(std::move(finding));
  }
  result.causedTexts = textsOf(result.caused, after);
  result.worsenedTexts = textsOf(result.worsened, after);
}

Substitute described(const CheckInput& input, const Species& of, const Species& with,
                     const FindingsByKey& before) {
  IdSource ids(largestId(input.yard) + 1);  // for looking only
  Substitution done = substitute(input.yard, of.botanicalName, with, ids);
  Substitute result{&with,
                    likenessOf(of, with).points(),
                    differencesOf(of, with, input.yard.settings.units),
                    std::move(done.drifts),
                    0,
                    0,
                    done.noPlace,
                    done.groundBefore,
                    done.groundAfter,
                    {},
                    {},
                    {},
                    {}};
  for (const CountChange& drift : result.drifts)
    result.before += drift.before, result.after += drift.after;
  const Yard after = apply(input.yard, done.edit);
  addFindings(result, {after, input.facts, input.sun}, before);
  return result;
}

}  // namespace

Substitution substitute(const Yard& yard, std::string_view species, const Species& with,
                        IdSource& ids) {
  Substitution result;
  if (species == with.botanicalName) return result;
  Yard after = yard;
  for (const Drift& drift : yard.drifts) {
    if (drift.species != species) continue;
    if (!canChange(drift)) {
      ++result.keptAsTheyAre;
      continue;
    }
    after = withDrift(after, drift, with, ids);
    const Drift& changed = *after.drifts.find(drift.id);
    result.drifts.push_back({drift.id, sizeOf(drift), sizeOf(changed)});
    result.noPlace += std::max(0, countOnGround(drift, with) - sizeOf(changed));
    result.groundBefore += groundOf(drift);
    result.groundAfter += groundOf(changed);
  }
  if (result.drifts.empty()) return result;
  Draft draft(after);
  takeCode(draft, with.botanicalName, ids);
  if (result.keptAsTheyAre == 0) renameInLists(draft, species, with);
  result.edit = difference(yard, draft.yard(),
                           fmt::format("Put {} in place of {}", with.botanicalName, species));
  return result;
}

std::string groundChangeWords(Area before, Area after, UnitSystem units) {
  const std::string was = formatArea(before, units), is = formatArea(after, units);
  return was == is ? std::string() : fmt::format("They take {} in place of {}.", is, was);
}

std::string noPlaceWords(int noPlace) {
  return noPlace == 0
             ? std::string()
             : fmt::format("As many as find a place; the same ground would come to {} more.",
                           noPlace);
}

std::vector<Substitute> substitutesFor(const CheckInput& input, std::string_view species,
                                       std::size_t count, const std::stop_token& stop) {
  const Species* of = input.facts.find(species);
  if (of == nullptr) return {};
  const auto candidates = mostAlike(input, *of, count);
  if (candidates.empty()) return {};
  const FindingsByKey before = findingsOf(input);
  std::vector<Substitute> all;
  for (const Species* with : candidates)
    if (!stop.stop_requested()) all.push_back(described(input, *of, *with, before));
  return all;
}

Substitute substituteBy(const CheckInput& input, const Species& of, const Species& with) {
  return described(input, of, with, findingsOf(input));
}

}  // namespace tussock
