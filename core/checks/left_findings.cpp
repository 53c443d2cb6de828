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
#include "core/planting/fill_kinds.h"
#include "core/planting/fill_quota.h"

namespace tussock {

namespace {

class Leftovers {
 public:
  Leftovers(const CheckInput& input, Id<Bed> bed, const FillResult& result)
      : input_(input), bed_(bed), words_(input.yard, input.facts) {
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
    addCounted();
    return std::move(notes_);
  }

 private:
  [[nodiscard]] bool isHere(const Finding& finding) const {
    if (acceptanceOf(input_.yard, finding) != nullptr) return false;
    if (finding.subjects.empty()) return true;
    return std::any_of(finding.subjects.begin(), finding.subjects.end(), [&](ObjectRef ref) {
      if (ref == refTo(bed_)) return true;
      const Drift* drift = words_.drift(ref);
      return drift != nullptr && drift->bed == bed_;
    });
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
        ++counted_[finding.check];
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
    notes_.push_back(fact + (matrix ? "it is the matrix plant of the list." : whyShared()));
  }
  [[nodiscard]] std::string whyShared() const {
    if (sharesAsked_) return "the shares of the plant list were kept.";
    std::vector<const Species*> main;
    for (const Species* species : listed_)
      if (species->usualLayer() == Layer::Main) main.push_back(species);
    if (!sharesCanBeKept(kindsOf(main, input_.yard.settings), fillLimits(input_.yard.settings)))
      return "the list has too few kinds for all to stay under. Add species of other genera and "
             "families.";
    return "odd numbers and what stays in the yard came to that. Another arrangement may do "
           "better.";
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

  void addCounted() {
    for (const auto& [check, count] : counted_)
      for (const CheckEntry& entry : allChecks())
        if (entry.id == check)
          notes_.push_back(fmt::format(
              "{}: {} left, see the findings. Another arrangement or a wider choice of plants "
              "may do better.",
              entry.title, count == 1 ? "one finding is" : fmt::format("{} findings are", count)));
  }

  const CheckInput& input_;
  Id<Bed> bed_;
  Wording words_;
  std::vector<const Species*> listed_;
  bool sharesAsked_ = false;
  std::set<std::string> matrices_;
  std::map<CheckId, int> counted_;
  std::vector<std::string> notes_;
};

}  // namespace

std::vector<std::string> whatIsLeft(const CheckInput& input, Id<Bed> bed,
                                    const FillResult& result) {
  return Leftovers(input, bed, result).tell();
}

}  // namespace tussock
