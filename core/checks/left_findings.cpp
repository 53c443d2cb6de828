// SPDX-License-Identifier: MIT
#include "core/checks/left_findings.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/catalog/season_weeks.h"
#include "core/catalog/week_range.h"
#include "core/checks/describe.h"
#include "core/checks/fill_outcome.h"
#include "core/checks/heights_unseen.h"
#include "core/checks/left_shares.h"
#include "core/checks/suggestions.h"
#include "core/checks/wording.h"
#include "core/geometry/overlay.h"
#include "core/planting/fill_kinds.h"
#include "core/planting/ground.h"

namespace tussock {

namespace {

constexpr int kVast = 20'000;  // plants; the checks then look at each for seconds

constexpr std::size_t kFlowering = 6;  // species named

// Gaps first, then the thirds of the season in their order.
int orderOf(const Finding& gap) {
  const auto third = fromWord<SeasonThird>(gap.about);
  return third ? 1 + static_cast<int>(*third) : 0;
}

class Leftovers {
 public:
  explicit Leftovers(const FillOutcome& outcome)
      : outcome_(outcome), words_(outcome.input.yard, outcome.input.facts), shares_(outcome) {}

  // What changes the bed most comes first.
  std::vector<std::string> tell() {
    const auto findings = runChecks(outcome_.input);
    for (const Finding& finding : findings.value_or(std::vector<Finding>()))
      if (isHere(finding)) add(finding);
    addBloom();
    addOthers();
    for (std::string& note : shares_.tell()) notes_.push_back(std::move(note));
    return std::move(notes_);
  }

 private:
  [[nodiscard]] bool isHere(const Finding& finding) const {
    if (acceptanceOf(outcome_.input.yard, finding) != nullptr) return false;
    return finding.subjects.empty() || isAbout(finding, outcome_.input.yard, outcome_.request.bed);
  }
  void add(const Finding& finding) {
    if (const auto rank = rankOf(finding.check)) return shares_.add(finding, *rank);
    if (outcome_.request.what == FillWhat::OneSpecies && !outcome_.isOfTheRefill(finding)) return;
    if (finding.check == CheckId::BloomGap)
      gaps_.push_back(finding);
    else
      others_[finding.check].push_back(finding);
  }

  [[nodiscard]] std::optional<WeekRange> rangeOfFinding(const Finding& finding) const {
    if (const auto third = fromWord<SeasonThird>(finding.about))
      return rangeOf(*third, seasonWeeks(outcome_.input.yard.settings));
    return parseWeeks(finding.about);
  }
  [[nodiscard]] WeekSet weeksOfFinding(const Finding& finding) const {
    const auto range = rangeOfFinding(finding);
    return range ? weeksOf(*range) : WeekSet{0};
  }
  // Whether something that is not there yet flowers then, suits the bed and is not too wide for it.
  [[nodiscard]] bool moreCouldFlower(const Finding& finding) const {
    constexpr std::size_t kAll = 1000;
    const CheckInput& input = outcome_.input;
    const auto range = rangeOfFinding(finding);
    const Bed* bed = input.yard.beds.find(outcome_.request.bed);
    if (bed == nullptr || !range) return false;
    const auto kinds = kindsOf(speciesToFill(*range, bed, input.yard, input.facts, input.sun, kAll),
                               input.yard.settings);
    return std::any_of(kinds.begin(), kinds.end(), [&](const FillKind& kind) {
      const Length back = setBackFor(*bed, Length::metres(kind.spacing));
      return !inset(bed->outline, back - Length::millimetres(1)).empty();
    });
  }
  [[nodiscard]] std::string daysOf(const Finding& finding) const {
    const auto gap = parseWeeks(finding.about);
    return gap ? daysInWords(*gap, growingSeason(outcome_.input.yard.settings)) : finding.about;
  }
  // Of a group of fewer than three no more can be asked than that it flowers when it does.
  void addBloom() {
    constexpr std::size_t kGroup = 3;
    if (gaps_.empty()) return;
    if (const std::size_t here = outcome_.plantsHere(); here < kGroup) {
      notes_.push_back(fmt::format("The bed has {}, too few to flower all season.", plants(here)));
      return;
    }
    std::stable_sort(gaps_.begin(), gaps_.end(),
                     [](const Finding& a, const Finding& b) { return orderOf(a) < orderOf(b); });
    for (const Finding& gap : gaps_) notes_.push_back(orderOf(gap) > 0 ? third(gap) : weeks(gap));
  }
  [[nodiscard]] std::vector<std::string> flowering(const Finding& finding) const {
    const WeekSet weeks = weeksOfFinding(finding);
    std::vector<std::string> names;
    for (const Species* species : outcome_.listed())
      if (showsFlowers(*species) && (weeksInFlower(*species) & weeks) != 0)
        names.push_back(words_.species(species->botanicalName));
    return names;
  }
  [[nodiscard]] std::string weeks(const Finding& gap) const {
    const std::vector<std::string> names = flowering(gap);
    return fmt::format("Nothing flowers from {}: ", daysOf(gap)) +
           (names.empty() ? nothingFlowers(gap)
                          : fmt::format("the list has {} for it, for which there was no fitting "
                                        "place.",
                                        firstOf(names, kFlowering)));
  }
  [[nodiscard]] std::string third(const Finding& finding) const {
    const std::vector<std::string> names = flowering(finding);
    const std::string fact = fmt::format(
        "{} in the {} of the season, where {} are asked: ",
        finding.measured < 0.5   ? "No species flowers"
        : finding.measured < 1.5 ? "Only one species flowers"
                                 : fmt::format("Only {:.0f} species flower", finding.measured),
        finding.about, words_.measure(finding.required, finding.unit));
    if (names.empty()) return fact + nothingFlowers(finding);
    if (static_cast<double>(names.size()) < finding.required)
      return fact +
             fmt::format("the list has only {}{}", firstOf(names, kFlowering),
                         moreCouldFlower(finding)
                             ? ". Add others that flower then."
                             : ", and no other plant known here that flowers then suits the bed "
                               "and fits it.");
    return fact + fmt::format("the list has {}, not all of which found a fitting place.",
                              firstOf(names, kFlowering));
  }
  [[nodiscard]] std::string nothingFlowers(const Finding& finding) const {
    if (!moreCouldFlower(finding))
      return "no plant known here that suits the bed and fits it does.";
    if (outcome_.result.proposed)
      return "nothing on the proposed list does. Give a list with some that do.";
    return fmt::format(
        "nothing on the list{} does. Add some that do.",
        outcome_.listed().size() < outcome_.result.plants.size() ? " that suits the bed" : "");
  }
  void addOthers() {
    for (const auto& [check, findings] : others_)
      notes_.push_back(fmt::format(
          "{}: {} left, {}; {}", titleOf(findings),
          findings.size() == 1 ? "one finding is" : fmt::format("{} findings are", findings.size()),
          concerned(findings), whyLeft(findings)));
  }
  // The species of the drifts concerned, as they are found.
  [[nodiscard]] std::string concerned(const std::vector<Finding>& findings) const {
    constexpr std::size_t kNamed = 4;
    std::vector<std::string> names;
    for (const Finding& finding : findings)
      for (const ObjectRef ref : finding.subjects) {
        if (words_.drift(ref) == nullptr) continue;
        std::string name = words_.plant(ref);
        if (std::find(names.begin(), names.end(), name) == names.end())
          names.push_back(std::move(name));
      }
    return names.empty() ? "see the findings" : "about " + firstOf(std::move(names), kNamed);
  }
  // As the findings are called where they are listed; the check's where they differ.
  [[nodiscard]] std::string titleOf(const std::vector<Finding>& findings) const {
    std::set<std::string> titles;
    const CheckInput& input = outcome_.input;
    for (const Finding& finding : findings)
      titles.insert(describe(finding, input.yard, input.facts, input.sun).title);
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
    const FillResult& result = outcome_.result;
    const std::size_t species = outcome_.speciesHere().size();
    if (species < 2)
      return "with one species no arrangement differs in it. Add species that suit those places.";
    const bool vast = outcome_.mainPlants() > kVast;
    if (vast && result.cutShort)
      return "in so large a bed few exchanges between drifts are tried in the time. Allow more "
             "(tussock fill --time), or draw it as several beds, one beside the other.";
    if (vast && result.untried)
      return "in so large a bed not every exchange between drifts is tried, however long. Draw it "
             "as several beds, one beside the other, to have each filled well.";
    if (result.cutShort) return "the time was up before they were mended. Allow more time.";
    if (result.untried)
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
      return drift != nullptr && outcome_.isKept(*drift);
    });
  }

  const FillOutcome& outcome_;
  Wording words_;
  LeftShares shares_;
  std::vector<Finding> gaps_;
  std::map<CheckId, std::vector<Finding>> others_;
  std::vector<std::string> notes_;
};

}  // namespace

std::vector<std::string> whatIsLeft(const CheckInput& input, const FillRequest& request,
                                    const FillResult& result) {
  const FillOutcome outcome(input, request, result);
  std::vector<std::string> notes = Leftovers(outcome).tell();
  if (std::string unseen = heightsUnseen(outcome); !unseen.empty())
    notes.insert(notes.begin(), std::move(unseen));
  return notes;
}

}  // namespace tussock
