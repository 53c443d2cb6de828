// SPDX-License-Identifier: MIT
#include "core/catalog/rank.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include <fmt/format.h>

#include "core/catalog/native_record.h"

namespace tussock {

namespace {

// Points of a species that suits, before what speaks for and against it.
constexpr double kStart = 50.0;
constexpr double kSun = 10.0;        // hours of sun that it asks for
constexpr double kRecorded = 6.0;    // recorded in the state
constexpr double kDeerLeave = 8.0;   // where deer are about
constexpr double kWeekFilled = 2.0;  // for each week with too little in flower
constexpr double kWeeksAtMost = 24.0;
constexpr double kNewLayer = 8.0;  // the layer has nothing yet
constexpr double kHost = 4.0;
constexpr double kNectar = 3.0;
// Points taken away.
constexpr double kAlready = 15.0;
constexpr double kOverShare = 10.0;  // of genus or family, limits below
constexpr double kCrowds = 6.0;
constexpr double kFlops = 3.0;
// Species in flower at one time that people ask for (as in the checks, after the Xerces Society).
constexpr std::size_t kInFlower = 3;
// Santamour (1990): no more than a fifth of one genus, three tenths of one family.
constexpr double kGenusShare = 0.20, kFamilyShare = 0.30;

// What all species of one request are held against.
struct Against {
  explicit Against(const RankRequest& asked) : request(asked), figures(figuresOf(asked.planted)) {
    for (const int week : request.season)
      if (figures.inFlower[static_cast<std::size_t>(week)].size() < kInFlower)
        poorWeeks |= WeekSet{1} << week;
  }

  const RankRequest& request;
  PlantFigures figures;
  WeekSet poorWeeks = 0;  // of the season, with too little in flower
};

class Points {
 public:
  explicit Points(Ranked& ranked) : ranked_(ranked) { ranked_.points = kStart; }
  void add(double points, std::string reason) {
    ranked_.points += points;
    ranked_.reasons.push_back(std::move(reason));
  }
  // What is to be known of it and speaks against it, whether or not it takes points away.
  void take(double points, std::string reason) {
    ranked_.points -= points;
    ranked_.costs.push_back(std::move(reason));
  }
  void finish() { ranked_.points = std::clamp(ranked_.points, 1.0, 100.0); }

 private:
  Ranked& ranked_;
};

double shareOf(const std::vector<NamedShare>& shares, std::string_view name) {
  for (const NamedShare& share : shares)
    if (share.name == name) return share.share;
  return 0.0;
}

bool hasLayer(const PlantFigures& figures, Layer layer) {
  return shareOf(figures.byLayer, wordOf(layer)) > 0.0;
}

// How well so many hours suit what the species takes, from 0 to 1. What takes full sun does better
// the more it has, up to where full sun begins, an hour above its least at least; for the rest any
// hours an hour or more inside the range are alike. Never less for hours nearer to either.
double sunShare(double hours, const HoursRange& wanted, const SunProfile& profile) {
  constexpr double kEdge = 1.0;  // hours
  if (wanted.most >= 24.0) {
    const double best = std::max(profile.fullFrom, wanted.least + kEdge);
    return std::clamp((hours - wanted.least) / (best - wanted.least), 0.0, 1.0);
  }
  const double below = wanted.least <= 0.0 ? kEdge : hours - wanted.least;
  return std::clamp(std::min(below, wanted.most - hours) / kEdge, 0.0, 1.0);
}

std::string sunWords(double hours, double share, const HoursRange& wanted) {
  const char* how = share >= 1.0          ? "are what it asks for"
                    : wanted.most >= 24.0 ? "are fewer than suit it best"
                                          : "are only just within what it takes";
  return fmt::format("{:.1f} hours of sun {}", hours, how);
}

void addPlace(Points& points, const Species& species, const RankRequest& request) {
  const Place& place = request.place;
  if (place.sunHours) {
    const HoursRange wanted = hoursWanted(species, request.profile);
    const double share = sunShare(*place.sunHours, wanted, request.profile);
    std::string words = sunWords(*place.sunHours, share, wanted);
    if (share >= 1.0)
      points.add(kSun, std::move(words));
    else
      points.take(-kSun * share, std::move(words));
  }
  if (place.moisture) points.add(0.0, fmt::format("grows in {} ground", wordOf(*place.moisture)));
  const auto& states = species.nativeStates;
  if (!place.state.empty() && std::find(states.begin(), states.end(), place.state) != states.end())
    points.add(kRecorded,
               fmt::format("recorded as native in {} ({})", place.state, nativeRecordOf(species)));
  if (place.deer == DeerAbout::No) return;
  if (species.deerResistant == Answer::Yes) points.add(kDeerLeave, "deer mostly leave it");
  if (species.deerResistant == Answer::Unknown)
    points.take(0.0, "whether deer eat it is not known");
}

int weeksFilled(const Species& species, const Against& against) {
  return showsFlowers(species) ? std::popcount(weeksInFlower(species) & against.poorWeeks) : 0;
}

void addBloom(Points& points, const Species& species, const Against& against) {
  const int filled = weeksFilled(species, against);
  if (filled == 0) return;
  points.add(std::min(kWeeksAtMost, kWeekFilled * filled),
             fmt::format("in flower in {} {} when little else is", filled,
                         filled == 1 ? "week" : "weeks"));
}

void addMix(Points& points, const Species& species, const PlantFigures& planted) {
  if (planted.empty()) return;
  if (!hasLayer(planted, species.usualLayer()))
    points.add(kNewLayer,
               fmt::format("the {} layer has nothing yet", wordOf(species.usualLayer())));
  if (shareOf(planted.bySpecies, species.botanicalName) > 0.0)
    points.take(kAlready, "grows here already");
  const double genus = shareOf(planted.byGenus, species.genus);
  if (genus > kGenusShare)
    points.take(kOverShare,
                fmt::format("{:.0f} % of the plants are {} already", genus * 100.0, species.genus));
  const double family = shareOf(planted.byFamily, species.family);
  if (family > kFamilyShare)
    points.take(kOverShare, fmt::format("{:.0f} % of the plants are {} already", family * 100.0,
                                        species.family));
}

void addWays(Points& points, const Species& species) {
  if (!species.hostNote.empty()) points.add(kHost, "feeds caterpillars");
  if (!species.nectarNote.empty()) points.add(kNectar, "visited for nectar or pollen");
  if (species.competitiveness == Competitiveness::High)
    points.take(kCrowds, "crowds its neighbours");
  if (species.needsSupport == Answer::Yes) points.take(kFlops, "leans without neighbours");
  // Of other places, or of states where it is not said which this is.
  if (!species.regulated.empty())
    points.take(0.0, fmt::format("regulated somewhere: {}", species.regulated));
}

Merit meritOf(const Species& species, const Against& against) {
  Merit merit;
  merit.weeks = weeksFilled(species, against);
  const PlantFigures& planted = against.figures;
  merit.newLayer = !planted.empty() && !hasLayer(planted, species.usualLayer());
  merit.host = !species.hostNote.empty();
  merit.nectar = !species.nectarNote.empty();
  merit.leftAlone =
      (species.deerResistant == Answer::Yes) + (species.rabbitResistant == Answer::Yes);
  if (species.competitiveness == Competitiveness::Low) merit.gentle = 2;
  if (species.competitiveness == Competitiveness::Medium) merit.gentle = 1;
  merit.lasting = species.lifeSpan == LifeSpan::LongLived;
  return merit;
}

// The first merit in which one is more than the other, in words.
std::string_view merited(const Merit& more, const Merit& less) {
  if (more.weeks != less.weeks) return "more weeks in flower when little else is";
  if (more.newLayer != less.newLayer) return "a layer that has nothing yet";
  if (more.host != less.host) return "feeding caterpillars";
  if (more.nectar != less.nectar) return "nectar or pollen";
  if (more.leftAlone != less.leftAlone) return "being left alone by deer or rabbits";
  if (more.gentle != less.gentle) return "crowding its neighbours less";
  return "living longer";
}

void tellTies(std::vector<Ranked>& all) {
  for (std::size_t i = 0; i + 1 < all.size() && all[i + 1].suits(); ++i)
    if (all[i].points == all[i + 1].points && all[i].merit != all[i + 1].merit)
      all[i].overEquals = fmt::format("before others that fit as well for {}",
                                      merited(all[i].merit, all[i + 1].merit));
}

Ranked ranked(const Species& species, const Against& against) {
  Ranked result;
  result.species = &species;
  result.whyNot = whyNot(species, against.request.place, against.request.profile);
  if (!result.suits()) return result;
  Points points(result);
  addPlace(points, species, against.request);
  addBloom(points, species, against);
  addMix(points, species, against.figures);
  addWays(points, species);
  points.finish();
  result.merit = meritOf(species, against);
  return result;
}

}  // namespace

std::vector<std::string> toldReasons(const Ranked& ranked) {
  if (!ranked.suits()) return ranked.whyNot;
  std::vector<std::string> told = ranked.reasons;
  if (!ranked.overEquals.empty()) told.push_back(ranked.overEquals);
  for (const std::string& cost : ranked.costs) told.push_back("but " + cost);
  return told;
}

bool isBetter(const Ranked& a, const Ranked& b) {
  if (a.whyNot.size() != b.whyNot.size()) return a.whyNot.size() < b.whyNot.size();
  return a.points != b.points ? a.points > b.points : a.merit > b.merit;
}

std::vector<Ranked> rankFor(const Catalogue& catalogue, const RankRequest& request) {
  std::vector<const Species*> all;
  for (const Species& species : catalogue.species()) all.push_back(&species);
  return rankAmong(all, request);
}

std::vector<Ranked> rankAmong(const std::vector<const Species*>& species,
                              const RankRequest& request) {
  const Against against(request);
  std::vector<Ranked> all;
  for (const Species* one : species) all.push_back(ranked(*one, against));
  std::stable_sort(all.begin(), all.end(), isBetter);  // species come in order of names
  tellTies(all);
  return all;
}

Ranked rankOf(const Species& species, const RankRequest& request) {
  return ranked(species, Against(request));
}

}  // namespace tussock
