// SPDX-License-Identifier: MIT
#include "core/checks/left_shares.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/checks/checked_fill.h"
#include "core/planting/fill_quota.h"
#include "core/planting/plant_count.h"

namespace tussock {

namespace {

constexpr const char* kMoreKinds = "Add species of other genera and families.";
constexpr const char* kArrangeAnew = "Another arrangement may do better.";

// Of the list what could be planted: the shares of the others went to these.
std::vector<ListedSpecies> suitingList(const FillOutcome& outcome) {
  std::vector<ListedSpecies> list;
  for (const ListedSpecies& listed : outcome.result.plants)
    if (outcome.suits(listed.species)) list.push_back(listed);
  return list;
}

}  // namespace

LeftShares::LeftShares(const FillOutcome& outcome)
    : outcome_(outcome),
      words_(outcome.input.yard, outcome.input.facts),
      shares_(suitingList(outcome), outcome.input.yard, outcome.input.facts, outcome.request.bed,
              [&outcome](const Drift& drift) { return !outcome.isKept(drift); }) {}

void LeftShares::add(const Finding& largest, Rank rank) {
  limits_[rank] = percent(largest.required);
  const Survey survey = surveyOf(outcome_.input);
  const bool isNew = outcome_.isOfTheRefill(largest);
  for (const Share& share : sharesOf(survey, rank)) {
    if (share.name.empty() || share.share <= largest.required + 1e-9) continue;
    Finding one = largest;
    one.about = share.name, one.measured = share.share;
    const bool refill = outcome_.request.what == FillWhat::OneSpecies;
    if (refill && !outcome_.concerns(one, outcome_.request.species) && !(isNew && one == largest))
      continue;
    const std::set<std::string> here = plantedOf(one);
    const auto asked = shares_.of(here);
    const bool matrix = std::all_of(here.begin(), here.end(), [&](const std::string& species) {
      return outcome_.isMatrix(species);
    });
    // That is told with what else came otherwise.
    if (asked && !asked->kept() && !matrix && isOfOthers(here)) continue;
    if (rank == Rank::Species) told_.insert(one.about);
    addTo(reasonFor(one), rank, nameOf(one, rank));
  }
}

bool LeftShares::isOfOthers(const std::set<std::string>& here) const {
  return std::any_of(here.begin(), here.end(), [&](const std::string& species) {
    const auto share = shares_.of({species});
    return share && !share->kept();
  });
}

void LeftShares::addTo(const Reason& reason, Rank rank, std::string over) {
  auto at = std::find_if(groups_.begin(), groups_.end(),
                         [&](const Group& group) { return group.reason == reason; });
  if (at == groups_.end()) at = groups_.insert(at, Group{reason, {}});
  at->over[rank].push_back(std::move(over));
}

std::string LeftShares::nameOf(const Finding& finding, Rank rank) const {
  const std::string name = rank == Rank::Species ? words_.species(finding.about) : finding.about;
  const std::string measured = percent(finding.measured);
  return measured == limits_.at(rank) ? fmt::format("{} a little over {}", name, measured)
                                      : fmt::format("{} {}", name, measured);
}

std::vector<std::string> LeftShares::tell() const {
  std::vector<std::string> notes;
  const std::string others =
      shares_.others(told_, [this](std::string_view name) { return words_.species(name); });
  if (!others.empty()) notes.push_back(others + ' ' + nearer());
  for (const Group& group : groups_) notes.push_back(textOf(group));
  return notes;
}

// "Over the usual share of the yard's plants, as the plant list asks: little bluestem 40 % (10 %);
// the family Poaceae 40 % (30 %)."
std::string LeftShares::textOf(const Group& group) const {
  constexpr std::size_t kNamed = 4;
  std::vector<std::string> parts;
  for (const auto& [rank, names] : group.over) {
    const bool many = names.size() > 1;
    const char* what = rank == Rank::Species ? ""
                       : rank == Rank::Genus ? (many ? "the genera " : "the genus ")
                                             : (many ? "the families " : "the family ");
    parts.push_back(fmt::format("{}{} ({}{})", what, firstOf(names, kNamed), many ? "each " : "",
                                limits_.at(rank)));
  }
  return fmt::format("Over the usual share of the yard's plants, {}: {}.{}{}", group.reason.why,
                     fmt::join(parts, "; "), group.reason.remedy.empty() ? "" : " ",
                     group.reason.remedy);
}

std::string LeftShares::nearer() const {
  return outcome_.result.cutShort ? "Allow more time to come nearer."
                                  : "Another arrangement may come nearer.";
}

LeftShares::Reason LeftShares::reasonFor(const Finding& finding) const {
  if (outcome_.request.what == FillWhat::OneSpecies)
    return {"as only one species was planted anew", "Fill the whole bed for other shares."};
  const std::set<std::string> here = plantedOf(finding);
  if (const auto asked = shares_.of(here))
    return asked->kept() || !std::all_of(here.begin(), here.end(),
                                         [&](const auto& one) { return outcome_.isMatrix(one); })
               ? Reason{"as the plant list asks", ""}
               : Reason{fmt::format("as a matrix takes what the drifts leave ({} in this bed)",
                                    asked->text()),
                        ""};
  if (outcome_.isMatrix(finding.about)) return {"as the matrix plant of the list", ""};
  if (shares_.any() && finding.check == CheckId::SpeciesShare &&
      shares_.leftToEach() > finding.required)
    return {fmt::format("as the shares of the list leave {} to each species without one",
                        percent(shares_.leftToEach())),
            ""};
  return reasonByList(finding);
}

LeftShares::Reason LeftShares::reasonByList(const Finding& finding) const {
  const std::vector<FillKind> kinds = mainKinds();
  const FillLimits limits = fillLimits(outcome_.input.yard.settings);
  const int all = outcome_.mainPlants();
  if (static_cast<double>(keptOf(finding)) > finding.required * all)
    return {"as so many stood there already", ""};
  const int odd = oddCount(static_cast<int>(finding.required * all + 1e-9));
  const bool few =
      !sharesCanBeKept(kinds, limits) || !sharesCanBeKept(kinds, limits, all) ||
      (finding.check == CheckId::SpeciesShare && odd * static_cast<int>(kinds.size()) < all);
  if (few) return {"as the list has too few kinds", kMoreKinds};
  return reasonByRoom(finding, limitsWithin(kinds, limits).speciesShare > limits.speciesShare);
}

// Where the list could keep to the limits; `barely` when they had to be widened for odd counts.
LeftShares::Reason LeftShares::reasonByRoom(const Finding& finding, bool barely) const {
  if (keptOf(finding) > 0) return {"as some stood there already and more found room", kArrangeAnew};
  if (outcome_.result.cutShort)
    return {"as the time was up before it was mended", "Allow more time."};
  const auto& takers = outcome_.result.takers;
  if (std::any_of(takers.begin(), takers.end(),
                  [&](const std::string& taker) { return outcome_.concerns(finding, taker); }))
    return {"having been given drifts of others, as more would be found otherwise", kArrangeAnew};
  if (barely)
    return {"as the list is just long enough and groups of odd number need some room", kMoreKinds};
  return {"as more found room than of others", kArrangeAnew};
}

// What the list says of the share, for species that stand in the bed.
std::set<std::string> LeftShares::plantedOf(const Finding& finding) const {
  std::set<std::string> species;
  for (const Drift* drift : driftsIn(outcome_.input.yard, outcome_.request.bed))
    if (drift->layer == Layer::Main && outcome_.concerns(finding, drift->species))
      species.insert(drift->species);
  return species;
}

std::size_t LeftShares::keptOf(const Finding& finding) const {
  std::size_t count = 0;
  for (const Drift& drift : outcome_.input.yard.drifts)
    if (drift.layer == Layer::Main && outcome_.concerns(finding, drift.species) &&
        outcome_.isKept(drift))
      count += drift.plants.size();
  return count;
}

std::vector<FillKind> LeftShares::mainKinds() const {
  std::vector<const Species*> main;
  for (const Species* species : outcome_.listed())
    if (species->usualLayer() == Layer::Main) main.push_back(species);
  return kindsOf(main, outcome_.input.yard.settings);
}

}  // namespace tussock
