// SPDX-License-Identifier: MIT
#include "core/checks/checked_fill.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

#include "core/checks/bare_ground.h"
#include "core/checks/describe.h"
#include "core/checks/kept_findings.h"
#include "core/checks/left_findings.h"
#include "core/checks/registry.h"
#include "core/checks/share_excess.h"
#include "core/checks/thresholds.h"
#include "core/checks/wording.h"
#include "core/planting/arrangements.h"
#include "core/planting/fill_words.h"

namespace tussock {

namespace {

// `over`: what is measured over what is asked, as a share of it.
double costOf(const Finding& finding, double over) {
  const double weight = finding.severity == Severity::Alert     ? 4.0
                        : finding.severity == Severity::Caution ? 2.0
                                                                : 1.0;
  return weight * (1.0 + 0.5 * std::clamp(over, 0.0, 1.0));
}

double overOf(const Finding& finding) {
  return finding.required > 0.0 ? finding.measured / finding.required - 1.0 : 0.0;
}

std::set<Id<Drift>> driftsOf(const Finding& finding) {
  std::set<Id<Drift>> drifts;
  for (const ObjectRef ref : finding.subjects)
    if (const auto drift = idIf<Drift>(ref)) drifts.insert(*drift);
  return drifts;
}

// What is found about two drifts is mended by changing one of the two; what is found about dozens
// may have to wait.
std::vector<Id<Drift>> fewestFirst(std::vector<std::set<Id<Drift>>> concerned) {
  std::stable_sort(concerned.begin(), concerned.end(),
                   [](const auto& a, const auto& b) { return a.size() < b.size(); });
  std::vector<Id<Drift>> drifts;
  std::set<Id<Drift>> told;
  for (const auto& ofOne : concerned)
    for (const Id<Drift> drift : ofOne)
      if (told.insert(drift).second) drifts.push_back(drift);
  return drifts;
}

// Findings of the checks as a verdict; what was found in one bed is kept for the next look.
class Judge {
 public:
  Judge(const Catalogue& facts, const SunMap* sun)
      : facts_(facts), sun_(std::shared_ptr<void>(), sun) {}

  FillVerdict operator()(const Yard& yard) {
    const auto findings = kept_.run(yard, facts_, sun_);
    FillVerdict verdict;
    std::vector<std::set<Id<Drift>>> concerned;
    std::map<Id<Plant>, Id<Drift>> owner;
    for (const Finding& finding : findings.value()) {
      if (const auto rank = rankOf(finding.check)) {
        ShareExcess excess = shareExcess(yard, facts_, *rank, finding.required);
        verdict.cost += costOf(finding, excess.over);
        concerned.push_back(std::move(excess.drifts));
        continue;
      }
      verdict.cost += costOf(finding, overOf(finding));
      concerned.push_back(concernedBy(finding, yard, owner));
    }
    verdict.concerned = fewestFirst(std::move(concerned));
    return verdict;
  }

 private:
  static std::set<Id<Drift>> concernedBy(const Finding& finding, const Yard& yard,
                                         std::map<Id<Plant>, Id<Drift>>& owner) {
    std::set<Id<Drift>> drifts = driftsOf(finding);
    if (!finding.subjects.empty() || finding.plants.empty()) return drifts;
    if (owner.empty()) owner = owners(yard);
    for (const Id<Plant> plant : finding.plants)
      if (const auto at = owner.find(plant); at != owner.end()) drifts.insert(at->second);
    return drifts;
  }
  static std::map<Id<Plant>, Id<Drift>> owners(const Yard& yard) {
    std::map<Id<Plant>, Id<Drift>> owner;
    for (const Drift& drift : yard.drifts)
      for (const Plant& plant : drift.plants) owner.emplace(plant.id, drift.id);
    return owner;
  }
  const Catalogue& facts_;
  std::shared_ptr<const SunMap> sun_;
  KeptFindings kept_;
};

// What is found in a bed, such as height and masses, is found in a part of it too; the shares and
// the flowers of a yard are not.
FillVerdict judgeOfSection(const Yard& yard, const Catalogue& facts, const SunMap* sun) {
  const Survey survey = surveyOf({yard, facts, sun});
  FillVerdict verdict;
  std::vector<std::set<Id<Drift>>> concerned;
  for (const SurveyedBed& bed : survey.beds)
    for (const CheckEntry& check : allChecks()) {
      if (check.ofBed == nullptr || bed.drifts.empty()) continue;
      for (const Finding& finding : check.ofBed(survey, bed)) {
        verdict.cost += costOf(finding, overOf(finding));
        concerned.push_back(driftsOf(finding));
      }
    }
  verdict.concerned = fewestFirst(std::move(concerned));
  return verdict;
}

void addName(std::vector<std::string>& names, const Species* known, const Catalogue& catalogue) {
  if (known == nullptr) return;
  std::string name = catalogue.nameApart(*known);
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(std::move(name));
}

constexpr std::size_t kNamed = 6;

// By the names that tell them apart; each once.
std::vector<std::string> namesPlanted(const ChangeSet& edit, const Catalogue& catalogue) {
  std::vector<std::string> names;
  for (const Change& change : edit.changes)
    if (const auto* drift = change.after ? std::get_if<Drift>(&*change.after) : nullptr)
      addName(names, catalogue.find(drift->species), catalogue);
  return names;
}

// What goes between plants that were chosen otherwise is to be known for not chosen by anybody.
void tellProposed(FillResult& result, const Yard& before, const FillRequest& request,
                  const Catalogue& catalogue) {
  if (!result.proposed || result.edit.empty() || request.what != FillWhat::EmptyPart ||
      driftsIn(before, request.bed).empty())
    return;
  const std::vector<std::string> names = namesPlanted(result.edit, catalogue);
  result.notes.insert(
      result.notes.begin(),
      fmt::format("The bed has no plant list, so species for its gaps were proposed from the plant "
                  "facts{}. Give a list to choose them yourself.",
                  names.empty() ? "" : ": " + firstOf(names, kNamed)));
}

// Of the list what suits the bed and does not stand in it.
std::vector<std::string> namesWanting(const FillResult& result, const Yard& after, Id<Bed> bed,
                                      const Catalogue& catalogue) {
  std::set<std::string_view> standing;
  for (const Drift* drift : driftsIn(after, bed)) standing.insert(drift->species);
  std::vector<std::string> names;
  for (const ListedSpecies& listed : result.plants)
    if (result.suiting.contains(listed.species) && !standing.contains(listed.species))
      addName(names, catalogue.find(listed.species), catalogue);
  return names;
}

// Where not all of the list is asked for at all costs: in gaps, and of a list of our own. What does
// not suit the bed has been told.
void tellUnplanted(FillResult& result, const Yard& after, const FillRequest& request,
                   const Catalogue& catalogue) {
  const bool gaps = request.what == FillWhat::EmptyPart;
  if (request.what == FillWhat::OneSpecies || (!gaps && !result.proposed)) return;
  const auto names = namesWanting(result, after, request.bed, catalogue);
  if (names.empty()) return;
  result.notes.push_back(
      gaps ? fmt::format("{} species {} found no place in the gaps: {}.", names.size(),
                         result.proposed ? "proposed" : "of the list that suit the bed",
                         firstOf(names, kNamed))
           : fmt::format("Of the {} species proposed, {} found no place or gave way to others: {}.",
                         result.plants.size(), names.size(), firstOf(names, kNamed)));
}

// By the time somebody stopped the work.
void tellNotYet(FillResult& result, const Yard& after, const FillRequest& request,
                const Catalogue& catalogue) {
  if (request.what == FillWhat::OneSpecies) return;
  const auto names = namesWanting(result, after, request.bed, catalogue);
  if (!names.empty())
    result.notes.push_back(fmt::format(
        "Not planted by then: {}. Fill the gaps to add what finds room.", firstOf(names, kNamed)));
}

void makeSentences(std::vector<std::string>& notes) {
  for (std::string& note : notes) note = sentence(std::move(note));
}

// Bare ground and what was not planted come before what the checks find.
void tellWhatCame(FillResult& result, const CheckInput& after, const FillRequest& request) {
  if (std::string bare = bareGround(after.yard, after.facts, request, result); !bare.empty())
    result.notes.insert(result.notes.begin(), std::move(bare));
  tellUnplanted(result, after.yard, request, after.facts);
  for (std::string& note : whatIsLeft(after, request, result))
    result.notes.push_back(std::move(note));
}

}  // namespace

std::string whyNoRefill(const Yard& yard, const Catalogue& catalogue, const FillRequest& request) {
  const Bed* bed = yard.beds.find(request.bed);
  if (bed == nullptr || request.what != FillWhat::OneSpecies) return {};
  bool stands = false;
  for (const Drift* drift : driftsIn(yard, bed->id)) {
    if (takesOut(request, *drift)) return {};
    stands = stands || drift->species == request.species;
  }
  const Wording words(yard, catalogue);
  const std::string name = words.species(request.species), where = words.bedName(refTo(bed->id));
  return stands
             ? sentence(fmt::format("{} in {} is locked or stood there before, and stays. Unlock "
                                    "what is to be planted anew.",
                                    name, where))
             : sentence(fmt::format("{} does not stand in {}, so there is none to plant anew. "
                                    "Add it to the plant list and fill the bed, or its gaps.",
                                    name, where));
}

FillLimits fillLimits(const Settings& settings) {
  const auto limit = [&](std::string_view id) { return thresholdFor(settings, id); };
  FillLimits limits;
  limits.hiddenShare = limit("hidden_share");
  limits.speciesShare = limit("species_share");
  limits.genusShare = limit("genus_share");
  limits.familyShare = limit("family_share");
  limits.shareMinPlants = limit("share_min_plants");
  limits.diseaseMass = limit("disease_mass");
  limits.bloomGapWeeks = limit("bloom_gap_weeks");
  limits.bloomPerThird = limit("bloom_per_third");
  limits.sight = {limit("eye_height"), limit("viewing_distance"), limit("taller_by"),
                  limit("hides_within"), limit("see_through")};
  return limits;
}

std::optional<FillResult> fillChecked(const Yard& yard, const Catalogue& catalogue,
                                      const SunMap* sun, FillRequest request, IdSource& ids,
                                      const std::stop_token& stop,
                                      const FillProgressCall& progress) {
  request.limits = fillLimits(yard.settings);
  request.judge = Judge(catalogue, sun);
  request.judgeOfSection = [&](const Yard& section) {
    return judgeOfSection(section, catalogue, sun);
  };
  if (std::string why = whyNoRefill(yard, catalogue, request); !why.empty()) {
    FillResult none;
    none.notes.push_back(std::move(why));
    return none;
  }
  auto result = fillBed(yard, catalogue, sun, request, ids, stop, progress);
  if (!result) return result;
  if (!result->edit.empty() || result->unchanged) {
    const Yard after = apply(yard, result->edit);
    tellWhatCame(*result, {after, catalogue, sun}, request);
  }
  tellProposed(*result, yard, request, catalogue);
  makeSentences(result->notes);
  return result;
}

std::optional<FillResult> plantedSoFar(const Yard& yard, const Catalogue& catalogue,
                                       const FillRequest& request, const FillProgress& progress,
                                       IdSource ids) {
  const Bed* bed = yard.beds.find(request.bed);
  if (bed == nullptr || progress.best.empty()) return std::nullopt;
  FillResult result = progress.listed != nullptr ? *progress.listed : FillResult();
  result.stopped = true;
  const auto instead = [&](const Drift& drift) { return takesOut(request, drift); };
  result.edit =
      plantKept(yard, bed->id, progress.best, instead, labelOf(request, *bed, catalogue), ids);
  result.unchanged = result.edit.empty();
  tellNotYet(result, apply(yard, result.edit), request, catalogue);
  tellProposed(result, yard, request, catalogue);
  makeSentences(result.notes);
  return result;
}

}  // namespace tussock
