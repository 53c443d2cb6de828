// SPDX-License-Identifier: MIT
// Words for what the planting as a whole lacks or has too much of.
#include <fmt/format.h>

#include "core/catalog/season_weeks.h"
#include "core/catalog/week_range.h"
#include "core/checks/describe_parts.h"
#include "core/checks/shares.h"
#include "core/checks/suggestions.h"

namespace tussock {

namespace {

constexpr std::size_t kOthersNamed = 3;
constexpr std::size_t kProposals = 3;

struct RankWords {
  Rank rank;
  std::string_view one, many, remedy;
};

RankWords wordsFor(CheckId check) {
  if (check == CheckId::GenusShare)
    return {Rank::Genus, "genus", "genera", "Plant less of it or add other genera."};
  if (check == CheckId::FamilyShare)
    return {Rank::Family, "family", "families", "Plant less of it or add other families."};
  return {Rank::Species, "species", "species", "Plant less of it or add other species."};
}

std::string nameOf(std::string_view name, const RankWords& rank, const Wording& words) {
  return rank.rank == Rank::Species ? words.species(name)
                                    : fmt::format("the {} {}", rank.one, name);
}

// " Over it too: little bluestem (15 %) and foxglove beardtongue (12 %)."
std::string othersOver(const std::vector<Share>& shares, const Finding& finding,
                       const RankWords& rank, const Wording& words) {
  std::vector<std::string> others;
  for (const Share& share : shares)
    if (share.name != finding.about && !share.name.empty() && share.share > finding.required &&
        others.size() < kOthersNamed)
      others.push_back(
          fmt::format("{} ({})", nameOf(share.name, rank, words), percent(share.share)));
  return others.empty() ? "" : fmt::format(" Over it too: {}.", joined(others, "and"));
}

std::string remedyFor(const std::vector<Share>& shares, double limit, const RankWords& rank) {
  if (!tooFewKinds(shares.size(), limit)) return fmt::format(" {}", rank.remedy);
  return fmt::format(
      " With {} {} one is bound to be over {}; add more if you want to spread the "
      "risk.",
      shares.size(), shares.size() == 1 ? rank.one : rank.many, percent(limit));
}

// " Foamflower or golden alexanders would do."
std::string proposals(WeekRange weeks, const Bed* bed, const Wording& words, const SunMap* sun) {
  std::vector<std::string> names;
  for (const Species* species :
       speciesToFill(weeks, bed, words.yard(), words.facts(), sun, kProposals))
    names.push_back(words.species(species->botanicalName));
  if (names.empty()) return " No species in the plant facts does and suits the place.";
  return fmt::format(" {} would do.", sentence(joined(names, "or")));
}

FindingText describeThird(const Finding& finding, SeasonThird third, const Wording& words) {
  const WeekRange weeks = rangeOf(third, seasonWeeks(words.yard().settings));
  return {
      fmt::format("Few flowers in the {} of the season", finding.about),
      fmt::format("{:.0f} species {} in the {} of the growing season; at least {:.0f} are asked. "
                  "Add others that flower then.{}",
                  finding.measured, finding.measured == 1.0 ? "flowers" : "flower", finding.about,
                  finding.required, proposals(weeks, nullptr, words, nullptr)),
      {}};
}

constexpr double kDaysPerWeek = 7;

FindingText describeGap(const Finding& finding, WeekRange gap, const Wording& words,
                        const SunMap* sun) {
  const bool ofBed = !finding.subjects.empty();
  const auto id = ofBed ? idIf<Bed>(finding.subjects.front()) : std::nullopt;
  const Bed* bed = id ? words.yard().beds.find(*id) : nullptr;
  const std::string when = daysInWords(gap, growingSeason(words.yard().settings));
  const std::string where = ofBed ? words.bedName(finding.subjects.front()) : "the yard";
  return {
      fmt::format("Nothing in flower, {}", when),
      fmt::format("Nothing flowers in {} from {}, {:.0f} days. Add a species that does.{}", where,
                  when, finding.measured * kDaysPerWeek, proposals(gap, bed, words, sun)),
      {}};
}

}  // namespace

FindingText describeShare(const Finding& finding, const Wording& words) {
  const RankWords rank = wordsFor(finding.check);
  const Survey survey = surveyOf({words.yard(), words.facts(), nullptr});
  const std::vector<Share> shares = sharesOf(survey, rank.rank);
  return {
      fmt::format("Much of one {}", rank.one),
      sentence(fmt::format("{} is {} of the plants in the main layer; {} are asked at most.{}{}",
                           nameOf(finding.about, rank, words), percent(finding.measured),
                           percent(finding.required), othersOver(shares, finding, rank, words),
                           remedyFor(shares, finding.required, rank))),
      {}};
}

FindingText describeBloom(const Finding& finding, const Wording& words, const SunMap* sun) {
  if (const auto third = fromWord<SeasonThird>(finding.about))
    return describeThird(finding, *third, words);
  if (const auto gap = parseWeeks(finding.about)) return describeGap(finding, *gap, words, sun);
  return {"Nothing in flower", finding.about, {}};
}

}  // namespace tussock
