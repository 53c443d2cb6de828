// SPDX-License-Identifier: MIT
#include "core/checks/left_findings.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

#include "core/catalog/season_weeks.h"
#include "core/catalog/week_range.h"
#include "core/checks/checked_fill.h"
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
      : input_(input), request_(request), result_(result), words_(input.yard, input.facts) {
    for (const ListedSpecies& listed : result.plants) {
      const Species* known = input.facts.find(listed.species);
      if (known == nullptr) continue;
      listed_.push_back(known);
      sharesAsked_ = sharesAsked_ || listed.share > 0.0 || listed.matrix;
      if (listed.matrix) matrices_.insert(listed.species);
    }
  }

  std::vector<std::string> tell() {
    const std::vector<Finding> findings = runChecks(input_).value_or(std::vector<Finding>());
    for (const Finding& finding : findings)
      if (isHere(finding)) add(finding);
    addOthers();
    return std::move(notes_);
  }

 private:
  [[nodiscard]] bool isHere(const Finding& finding) const {
    if (acceptanceOf(input_.yard, finding) != nullptr) return false;
    return finding.subjects.empty() || isAbout(finding, input_.yard, request_.bed);
  }
  void add(const Finding& finding) {
    switch (finding.check) {
      case CheckId::SpeciesShare:
      case CheckId::GenusShare:
      case CheckId::FamilyShare:
        return addShare(finding);
      case CheckId::BloomGap:
        return addBloom(finding);
      default:
        others_[finding.check].push_back(finding);
    }
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
    const bool matrix = matrices_.contains(finding.about);
    notes_.push_back(fact + (matrix ? "it is the matrix plant of the list." : whyShared(finding)));
  }
  [[nodiscard]] std::string whyShared(const Finding& finding) const {
    if (sharesAsked_) return "the shares of the plant list were kept.";
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
  // Where the list could keep to the limits; `barely` when they had to be widened for odd counts.
  [[nodiscard]] std::string whyOverAll(const Finding& finding, bool barely) const {
    if (const std::size_t kept = keptOf(finding); kept > 0)
      return fmt::format("{} of it stood there already.", plants(kept));
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
    notes_.push_back(fact +
                     (flowering.empty() ? std::string("nothing on the list does. Add some that do.")
                      : third ? fmt::format("the list has only {}.", joined(flowering, "and"))
                              : fmt::format("the list has {} for it, for which there was no "
                                            "fitting place.",
                                            joined(flowering, "and"))));
  }

  void addOthers() {
    for (const auto& [check, findings] : others_)
      for (const CheckEntry& entry : allChecks())
        if (entry.id == check)
          notes_.push_back(fmt::format("{}: {} left, see the findings; {}", entry.title,
                                       findings.size() == 1
                                           ? "one finding is"
                                           : fmt::format("{} findings are", findings.size()),
                                       whyLeft(findings)));
  }
  // The kept come first: nothing that was planted could have helped.
  [[nodiscard]] std::string whyLeft(const std::vector<Finding>& findings) const {
    const auto kept = std::count_if(findings.begin(), findings.end(),
                                    [&](const Finding& finding) { return concernsKept(finding); });
    if (kept == static_cast<std::ptrdiff_t>(findings.size()))
      return "what was kept in the bed has a part in each.";
    const bool vast = mainPlants() > kVast;
    if (vast && (result_.cutShort || result_.untried))
      return "in so large a bed few exchanges between drifts are tried in any time that one would "
             "wait. Draw it as several beds, one beside the other, to have each filled well.";
    if (result_.cutShort) return "the time was up before they were mended. Allow more time.";
    if (result_.untried)
      return "in so large a bed not every exchange between drifts was tried. Another arrangement "
             "may do better.";
    return "no exchange between drifts of one spacing mends it without harm elsewhere. Another "
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
  std::vector<const Species*> listed_;
  bool sharesAsked_ = false;
  std::set<std::string> matrices_;
  std::map<CheckId, std::vector<Finding>> others_;
  std::vector<std::string> notes_;
};

}  // namespace

std::vector<std::string> whatIsLeft(const CheckInput& input, const FillRequest& request,
                                    const FillResult& result) {
  return Leftovers(input, request, result).tell();
}

}  // namespace tussock
