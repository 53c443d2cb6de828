// SPDX-License-Identifier: MIT
#include "core/checks/left_findings.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

#include "core/catalog/season_weeks.h"
#include "core/catalog/week_range.h"
#include "core/checks/asked_shares.h"
#include "core/checks/checked_fill.h"
#include "core/checks/describe.h"
#include "core/checks/heights_unseen.h"
#include "core/checks/shares.h"
#include "core/checks/wording.h"
#include "core/planting/drift_plants.h"
#include "core/planting/fill_kinds.h"
#include "core/planting/fill_quota.h"

namespace tussock {

namespace {

constexpr int kVast = 20'000;  // plants; the checks then look at each for seconds

class Leftovers {
 public:
  Leftovers(const CheckInput& input, const FillRequest& request, const FillResult& result)
      : input_(input),
        request_(request),
        result_(result),
        words_(input.yard, input.facts),
        shares_(result.plants, input.yard, request.bed, [this](const Drift& drift) {
          return takesOut(request_, drift) || isPlanted(drift.id);
        }) {
    for (const ListedSpecies& listed : result.plants) {
      const Species* known = input.facts.find(listed.species);
      if (known == nullptr || !suits(listed.species)) continue;
      if (std::find(listed_.begin(), listed_.end(), known) == listed_.end())
        listed_.push_back(known);
      if (listed.matrix) matrices_.insert(listed.species);
    }
  }

  std::vector<std::string> tell() {
    const std::vector<Finding> findings = runChecks(input_).value_or(std::vector<Finding>());
    for (const Finding& finding : findings)
      if (isHere(finding)) add(finding);
    addOtherShares();
    addOthers();
    return std::move(notes_);
  }

 private:
  [[nodiscard]] bool suits(const std::string& species) const {
    return result_.suiting.empty() || result_.suiting.contains(species);
  }
  [[nodiscard]] bool isHere(const Finding& finding) const {
    if (acceptanceOf(input_.yard, finding) != nullptr) return false;
    return finding.subjects.empty() || isAbout(finding, input_.yard, request_.bed);
  }
  void add(const Finding& finding) {
    if (const auto rank = rankOf(finding.check)) return addShares(finding, *rank);
    if (finding.check == CheckId::BloomGap) return addBloom(finding);
    others_[finding.check].push_back(finding);
  }

  void addShare(const Finding& finding) {
    const std::string name =
        finding.check == CheckId::SpeciesShare
            ? sentence(words_.species(finding.about))
            : fmt::format("The {} {}", finding.check == CheckId::GenusShare ? "genus" : "family",
                          finding.about);
    const std::string measured = percent(finding.measured), asked = percent(finding.required);
    const std::string fact =
        measured == asked
            ? fmt::format("{} has a little over {} of the yard's plants: ", name, asked)
            : fmt::format("{} has {} of the yard's plants, over {}: ", name, measured, asked);
    notes_.push_back(fact + whyShared(finding));
    if (finding.check == CheckId::SpeciesShare) told_.insert(finding.about);
  }
  // The finding is about the largest; the others over the limit have reasons of their own.
  void addShares(const Finding& largest, Rank rank) {
    constexpr std::size_t kTold = 4;
    const Survey survey = surveyOf(input_);
    std::size_t told = 0;
    for (const Share& share : sharesOf(survey, rank)) {
      if (share.name.empty() || share.share <= largest.required + 1e-9 || told == kTold) continue;
      Finding one = largest;
      one.about = share.name, one.measured = share.share;
      addShare(one);
      ++told;
    }
  }
  [[nodiscard]] std::string whyShared(const Finding& finding) const {
    const std::set<std::string> here = plantedOf(finding);
    if (const auto asked = shares_.of(here))
      return whyAsked(*asked,
                      std::includes(matrices_.begin(), matrices_.end(), here.begin(), here.end()));
    if (matrices_.contains(finding.about)) return "it is the matrix plant of the list.";
    if (shares_.any() && finding.check == CheckId::SpeciesShare &&
        shares_.leftToEach() > finding.required)
      return fmt::format("the shares of the list leave {} to each species without one.",
                         percent(shares_.leftToEach()));
    const std::vector<FillKind> kinds = mainKinds();
    const FillLimits limits = fillLimits(input_.yard.settings);
    const int all = mainPlants();
    if (!sharesCanBeKept(kinds, limits))
      return "the list has too few kinds for all to stay under. Add species of other genera and "
             "families.";
    const int most = static_cast<int>(finding.required * all + 1e-9);
    if (!sharesCanBeKept(kinds, limits, all))
      return fmt::format(
          "that is at most {} of {}, and the list has too few kinds to come to {} so. Add species "
          "of other genera and families.",
          most, plants(static_cast<std::size_t>(all)), all);
    const int odd = oddCount(most);
    if (finding.check == CheckId::SpeciesShare && odd * static_cast<int>(kinds.size()) < all)
      return fmt::format(
          "a group of odd number with at most {} of {} has {}, and the list has too few species to "
          "come to {} so. Add some.",
          most, plants(static_cast<std::size_t>(all)), odd, all);
    return whyOverAll(finding, limitsWithin(kinds, limits).speciesShare > limits.speciesShare);
  }
  [[nodiscard]] std::string whyAsked(const AskedShare& share, bool matrix) const {
    if (share.kept())
      return fmt::format("the plant list asks for {} in this bed.", percent(share.asked));
    if (matrix)
      return fmt::format("{} in this bed, as a matrix takes what the drifts leave.", share.text());
    return fmt::format("{} in this bed. {}", share.text(), nearer());
  }
  [[nodiscard]] std::string nearer() const {
    return result_.cutShort ? "Allow more time to come nearer."
                            : "Another arrangement may come nearer.";
  }
  // What the list says of the share, for species that stand in the bed.
  [[nodiscard]] std::set<std::string> plantedOf(const Finding& finding) const {
    std::set<std::string> species;
    for (const Drift* drift : driftsIn(input_.yard, request_.bed))
      if (drift->layer == Layer::Main && concerns(finding, drift->species))
        species.insert(drift->species);
    return species;
  }
  void addOtherShares() {
    const std::string others =
        shares_.others(told_, [this](std::string_view name) { return words_.species(name); });
    if (!others.empty()) notes_.push_back(others + ' ' + nearer());
  }
  // Where the list could keep to the limits; `barely` when they had to be widened for odd counts.
  [[nodiscard]] std::string whyOverAll(const Finding& finding, bool barely) const {
    const std::size_t kept = keptOf(finding);
    if (static_cast<double>(kept) > finding.required * mainPlants())
      return fmt::format("{} of it stood there already.", plants(kept));
    if (kept > 0)
      return fmt::format(
          "{} of it stood there already, and it found room for more. Another "
          "arrangement may do better.",
          plants(kept));
    if (result_.cutShort) return "the time was up before it was mended. Allow more time.";
    if (std::any_of(result_.takers.begin(), result_.takers.end(),
                    [&](const std::string& taker) { return concerns(finding, taker); }))
      return "it was given drifts of others, as more would be found otherwise. Another arrangement "
             "may do better.";
    if (barely)
      return "the list is just long enough, and groups of odd number need some room. Add species "
             "of other genera and families.";
    return "more of it found room than of others. Another arrangement may do better.";
  }
  // Whether the species is, or belongs to, what has the share.
  [[nodiscard]] bool concerns(const Finding& finding, const std::string& species) const {
    if (finding.check == CheckId::SpeciesShare) return finding.about == species;
    const Species* known = input_.facts.find(species);
    return known != nullptr &&
           finding.about == (finding.check == CheckId::GenusShare ? known->genus : known->family);
  }
  [[nodiscard]] std::size_t keptOf(const Finding& finding) const {
    std::size_t count = 0;
    for (const Drift& drift : input_.yard.drifts)
      if (drift.layer == Layer::Main && concerns(finding, drift.species) && !isPlanted(drift.id))
        count += drift.plants.size();
    return count;
  }
  [[nodiscard]] std::vector<FillKind> mainKinds() const {
    std::vector<const Species*> main;
    for (const Species* species : listed_)
      if (species->usualLayer() == Layer::Main) main.push_back(species);
    return kindsOf(main, input_.yard.settings);
  }
  // Of the main layer of the bed.
  [[nodiscard]] int speciesHere() const {
    std::set<std::string_view> species;
    for (const Drift* drift : driftsIn(input_.yard, request_.bed))
      if (drift->layer == Layer::Main) species.insert(drift->species);
    return static_cast<int>(species.size());
  }
  [[nodiscard]] int mainPlants() const {
    std::size_t count = 0;
    for (const Drift& drift : input_.yard.drifts)
      if (drift.layer == Layer::Main) count += drift.plants.size();
    return static_cast<int>(count);
  }

  [[nodiscard]] WeekSet weeksOfFinding(const Finding& finding) const {
    const std::vector<int> season = seasonWeeks(input_.yard.settings);
    if (const auto third = fromWord<SeasonThird>(finding.about)) return weeksOf(*third, season);
    const auto gap = parseWeeks(finding.about);
    return gap ? weeksOf(*gap) : WeekSet{0};
  }
  [[nodiscard]] std::string daysOf(const Finding& finding) const {
    const auto gap = parseWeeks(finding.about);
    return gap ? daysInWords(*gap, growingSeason(input_.yard.settings)) : finding.about;
  }
  void addBloom(const Finding& finding) {
    const WeekSet weeks = weeksOfFinding(finding);
    std::vector<std::string> flowering;
    for (const Species* species : listed_)
      if (showsFlowers(*species) && (weeksInFlower(*species) & weeks) != 0)
        flowering.push_back(words_.species(species->botanicalName));
    constexpr std::size_t kNamed = 6;
    if (flowering.size() > kNamed) {
      const std::size_t others = flowering.size() - kNamed;
      flowering.resize(kNamed);
      flowering.push_back(fmt::format("{} more", others));
    }
    const bool third = fromWord<SeasonThird>(finding.about).has_value();
    const std::string when =
        third ? "in the " + finding.about + " of the season" : "from " + daysOf(finding);
    const std::string fact = third ? fmt::format("Few species flower {}: ", when)
                                   : fmt::format("Nothing flowers {}: ", when);
    notes_.push_back(fact + (flowering.empty() ? nothingFlowers()
                             : third
                                 ? fmt::format("the list has only {}.", joined(flowering, "and"))
                                 : fmt::format("the list has {} for it, for which there was no "
                                               "fitting place.",
                                               joined(flowering, "and"))));
  }

  [[nodiscard]] std::string nothingFlowers() const {
    return fmt::format("nothing on the list{} does. Add some that do.",
                       listed_.size() < result_.plants.size() ? " that suits the bed" : "");
  }

  void addOthers() {
    for (const auto& [check, findings] : others_)
      notes_.push_back(fmt::format(
          "{}: {} left, see the findings; {}", titleOf(findings),
          findings.size() == 1 ? "one finding is" : fmt::format("{} findings are", findings.size()),
          whyLeft(findings)));
  }
  // As the findings are called where they are listed; the check's where they differ.
  [[nodiscard]] std::string titleOf(const std::vector<Finding>& findings) const {
    std::set<std::string> titles;
    for (const Finding& finding : findings)
      titles.insert(describe(finding, input_.yard, input_.facts, input_.sun).title);
    if (titles.size() == 1) return *titles.begin();
    for (const CheckEntry& entry : allChecks())
      if (entry.id == findings.front().check) return std::string(entry.title);
    return {};
  }
  // The kept come first: nothing that was planted could have helped.
  [[nodiscard]] std::string whyLeft(const std::vector<Finding>& findings) const {
    const auto kept = std::count_if(findings.begin(), findings.end(),
                                    [&](const Finding& finding) { return concernsKept(finding); });
    if (kept == static_cast<std::ptrdiff_t>(findings.size()))
      return "what was kept in the bed has a part in each.";
    const int species = speciesHere();
    if (species < 2)
      return "with one species no arrangement differs in it. Add species that suit those places.";
    const bool vast = mainPlants() > kVast;
    if (vast && (result_.cutShort || result_.untried))
      return "in so large a bed few exchanges between drifts are tried in any time that one would "
             "wait. Draw it as several beds, one beside the other, to have each filled well.";
    if (result_.cutShort) return "the time was up before they were mended. Allow more time.";
    if (result_.untried)
      return "in so large a bed not every exchange between drifts was tried. Another arrangement "
             "may do better.";
    if (species == 2)
      return "with two species there is little to exchange. Add species that suit those places.";
    return "no exchange between drifts mends it without harm elsewhere. Another "
           "arrangement or a wider choice of plants may do better.";
  }
  [[nodiscard]] bool concernsKept(const Finding& finding) const {
    return std::any_of(finding.subjects.begin(), finding.subjects.end(), [&](ObjectRef ref) {
      const Drift* drift = words_.drift(ref);
      return drift != nullptr && !takesOut(request_, *drift) && !isPlanted(drift->id);
    });
  }
  [[nodiscard]] bool isPlanted(Id<Drift> id) const {
    return std::any_of(
        result_.edit.changes.begin(), result_.edit.changes.end(), [&](const Change& change) {
          const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
          return after != nullptr && after->id == id;
        });
  }

  const CheckInput& input_;
  const FillRequest& request_;
  const FillResult& result_;
  Wording words_;
  AskedShares shares_;
  std::vector<const Species*> listed_;  // each once
  std::set<std::string> matrices_, told_;
  std::map<CheckId, std::vector<Finding>> others_;
  std::vector<std::string> notes_;
};

}  // namespace

std::vector<std::string> whatIsLeft(const CheckInput& input, const FillRequest& request,
                                    const FillResult& result) {
  std::vector<std::string> notes = Leftovers(input, request, result).tell();
  if (std::string unseen = heightsUnseen(input.yard, request, result); !unseen.empty())
    notes.insert(notes.begin(), std::move(unseen));
  return notes;
}

}  // namespace tussock
