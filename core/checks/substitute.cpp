// SPDX-License-Identifier: MIT
#include "core/checks/substitute.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>

#include <fmt/format.h>

#include "core/catalog/bloom.h"
#include "core/catalog/place.h"
#include "core/checks/describe.h"
#include "core/edit/draft.h"
#include "core/planting/replant_drift.h"
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
  return withSpacing(shapeOf(drift), with.spacing).count;
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

struct Candidate {
  const Species* species = nullptr;
  double likeness = 0.0;  // 0 to 100
  Substitution done;

  [[nodiscard]] double points() const { return pointsOf(likeness, bareShare(done)); }
};

// Those that suit, the most alike first.
std::vector<Candidate> mostAlike(const CheckInput& input, const Species& of) {
  const auto beds = bedsWith(input.yard, of.botanicalName);
  std::vector<Candidate> found;
  for (const Species& one : input.facts.species())
    if (one.botanicalName != of.botanicalName && !beds.empty() && suitsAll(one, input, beds))
      found.push_back({&one, likenessOf(of, one).points(), {}});
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.likeness > b.likeness; });
  return found;
}

Substitution lookedAt(const Yard& yard, const Species& of, const Species& with) {
  IdSource ids(largestId(yard) + 1);  // for looking only
  return substitute(yard, of.botanicalName, with, ids);
}

// The `count` of most points. Bare ground only takes points away, so the trial ends where even the
// likeness of the next would not do.
std::vector<Candidate> bestOf(const CheckInput& input, const Species& of, std::size_t count,
                              const std::stop_token& stop) {
  std::vector<Candidate> best;
  for (Candidate& next : mostAlike(input, of)) {
    if (stop.stop_requested()) break;
    if (best.size() >= count && (count == 0 || best.back().points() >= next.likeness)) break;
    next.done = lookedAt(input.yard, of, *next.species);
    if (next.done.edit.empty()) continue;
    const auto place = std::find_if(best.begin(), best.end(), [&](const Candidate& other) {
      return other.points() < next.points();
    });
    best.insert(place, std::move(next));
    if (best.size() > count) best.pop_back();
  }
  return best;
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

Substitute described(const CheckInput& input, const Species& of, Candidate candidate,
                     const FindingsByKey& before) {
  Substitute result;
  result.species = candidate.species;
  result.likeness = candidate.likeness;
  result.points = candidate.points();
  result.differences = differencesOf(of, *candidate.species, input.yard.settings.units);
  result.done = std::move(candidate.done);
  const Yard after = apply(input.yard, result.done.edit);
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
    const int wanted = countOnGround(drift, with);
    const DriftEdit made = replantDrift(after, drift.id, with, wanted, ids, CountAs::Asked);
    if (made.fitted == 0) {
      ++result.withoutPlace;
      result.groundWithoutPlace += groundOf(drift);
      continue;
    }
    after = apply(after, made.edit);
    result.drifts.push_back({drift.id, sizeOf(drift), made.fitted});
    result.noPlace += std::max(0, wanted - made.fitted);
    result.groundBefore += groundOf(drift);
    result.groundAfter += groundOf(*after.drifts.find(drift.id));
  }
  if (result.drifts.empty()) return result;
  Draft draft(after);
  takeCode(draft, with.botanicalName, ids);
  if (result.keptAsTheyAre + result.withoutPlace == 0) renameInLists(draft, species, with);
  result.edit = difference(yard, draft.yard(),
                           fmt::format("Put {} in place of {}", with.botanicalName, species));
  return result;
}

int plantsBefore(const Substitution& done) {
  return std::accumulate(done.drifts.begin(), done.drifts.end(), 0,
                         [](int sum, const CountChange& drift) { return sum + drift.before; });
}

int plantsAfter(const Substitution& done) {
  return std::accumulate(done.drifts.begin(), done.drifts.end(), 0,
                         [](int sum, const CountChange& drift) { return sum + drift.after; });
}

double bareShare(const Substitution& done) {
  const double all = (done.groundBefore + done.groundWithoutPlace).squareMetres();
  return all > 0.0 ? std::max(0.0, 1.0 - done.groundAfter.squareMetres() / all) : 0.0;
}

double pointsOf(double likeness, double bare) {
  return likeness - kBareGround * bare;
}

std::vector<Substitute> substitutesFor(const CheckInput& input, std::string_view species,
                                       std::size_t count, const std::stop_token& stop) {
  const Species* of = input.facts.find(species);
  if (of == nullptr) return {};
  std::vector<Candidate> best = bestOf(input, *of, count, stop);
  if (best.empty()) return {};
  const FindingsByKey before = findingsOf(input);
  std::vector<Substitute> all;
  for (Candidate& one : best)
    if (!stop.stop_requested()) all.push_back(described(input, *of, std::move(one), before));
  return all;
}

Substitute substituteBy(const CheckInput& input, const Species& of, const Species& with) {
  return described(input, of,
                   {&with, likenessOf(of, with).points(), lookedAt(input.yard, of, with)},
                   findingsOf(input));
}

}  // namespace tussock
