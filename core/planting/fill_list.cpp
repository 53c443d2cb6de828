// SPDX-License-Identifier: MIT
#include "core/planting/fill_list.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include <fmt/format.h>

#include "core/catalog/season_weeks.h"
#include "core/geometry/lattice.h"
#include "core/planting/fill_choose.h"
#include "core/planting/fill_gaps.h"
#include "core/planting/fill_layer.h"
#include "core/planting/fill_propose.h"
#include "core/planting/fill_quota.h"
#include "core/planting/laid_flat.h"
#include "core/planting/whole_shares.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

constexpr double kUsualSpacing = 0.45;  // metres, of a catalogue of perennials

std::string joined(const std::vector<std::string>& names) {
  constexpr std::size_t kMost = 6;
  std::string text;
  for (std::size_t i = 0; i < names.size() && i < kMost; ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  if (names.size() > kMost) text += fmt::format(" and {} more", names.size() - kMost);
  return text;
}

class ListMaker {
 public:
  explicit ListMaker(const ListRequest& request)
      : request_(request),
        ground_(request.yard, request.bed, Layer::Main, 0.3,
                cellSizeFor(request.bed, kUsualSpacing)) {
    ground_.lookAt(request.sun, request.fill.limits.sight);
  }

  FillList run() {
    const auto wanted = wantedList();
    if (ground_.cells().empty()) {
      note(noRoom());
      list_.plants = wanted;
      return std::move(list_);
    }
    if (wanted.empty()) return propose();
    return fromList(wanted);
  }

 private:
  [[nodiscard]] std::vector<ListedSpecies> wantedList() const {
    const auto& listed = request_.bed.plantList;
    if (request_.fill.what == FillWhat::OneSpecies) {
      const bool matrix = std::any_of(listed.begin(), listed.end(), [&](const ListedSpecies& one) {
        return one.matrix && one.species == request_.fill.species;
      });
      return {{request_.fill.species, 0.0, matrix}};
    }
    return request_.fill.plants.empty() ? request_.bed.plantList : request_.fill.plants;
  }
  void note(std::string text) { list_.notes.push_back(std::move(text)); }
  // Told after what was left out.
  void noteLater(std::string text) { later_.push_back(std::move(text)); }

  // Names the set-back where there would be room without it.
  [[nodiscard]] std::string noRoom() const {
    const auto setback = request_.bed.setback;
    Bed open = request_.bed;
    open.setback.reset();
    const double size = cellSizeFor(open, kUsualSpacing);
    if (setback && !FillGround(request_.yard, open, Layer::Main, 0.3, size).cells().empty())
      return fmt::format(
          "There is no room for a plant: the set-back of {} from the edges leaves none of the "
          "bed. Make the set-back less.",
          formatLength(*setback, request_.yard.settings.units));
    return "There is no room for a plant: the bed is too narrow, or what stands and lies in it "
           "leaves none. Widen the bed or take something out.";
  }

  FillList propose() {
    for (const ListedSpecies& listed : proposeFrom()) list_.plants.push_back(listed);
    list_.proposed = true;
    if (list_.plants.empty() && !tooNarrow_)
      note(
          "Nothing in the catalogue suits this bed's sun, moisture, zone and state. Change what "
          "the bed says of its ground, or choose the plants yourself.");
    takeKinds(kindsFor(list_.plants));
    return std::move(list_);
  }

  [[nodiscard]] Place place() const {
    Place place;
    place.moisture = std::nullopt;  // judged cell by cell
    place.state = request_.yard.settings.state;
    place.hardinessZone = request_.yard.settings.hardinessZone;
    place.deer = request_.yard.settings.deerAbout;
    return place;
  }
  [[nodiscard]] std::vector<FillKind> fitting(Layer layer) const {
    const SunProfile& profile = sunProfile(request_.yard.settings.sunProfile);
    std::vector<const Species*> fitting;
    for (const Species& species : request_.catalogue.species())
      if (species.usualLayer() == layer && species.habit != Habit::Vine &&
          whyNot(species, place(), profile).empty())
        fitting.push_back(&species);
    std::vector<FillKind> kinds = kindsOf(fitting, request_.yard.settings);
    std::erase_if(
        kinds, [&](const FillKind& kind) { return suitableShare(kind, ground_.cells()) < 0.25; });
    return kinds;
  }
  [[nodiscard]] std::vector<ListedSpecies> proposeFrom() {
    std::vector<FillKind> kinds = fitting(Layer::Main);
    const bool some = !kinds.empty();
    std::erase_if(kinds, [&](const FillKind& kind) { return tooWide(kind); });
    tooNarrow_ = some && kinds.empty();
    if (tooNarrow_)
      note(
          "The bed is too narrow for every species that suits it: a plant stands half its spacing "
          "from the edge. Widen the bed, or list plants of small spacing.");
    std::vector<ListedSpecies> result;
    for (const FillKind& kind : chosenFor(kinds))
      result.push_back({kind.species->botanicalName, 0.0});
    if (result.empty()) return result;
    for (const Layer layer : {Layer::Ground, Layer::Bulbs})
      for (const FillKind& kind : underneath(layer))
        result.push_back({kind.species->botanicalName, 0.0});
    return result;
  }
  // One to three species for the ground between the plants, and as many bulbs.
  [[nodiscard]] std::vector<FillKind> underneath(Layer layer) const {
    std::vector<FillKind> kinds = fitting(layer);
    std::erase_if(kinds, [&](const FillKind& kind) { return tooWide(kind); });
    constexpr double kSmall = 12.0, kLarge = 60.0;  // square metres
    ChooseRequest request = chooseRequest();
    request.count = ground_.area() < kSmall ? 1 : ground_.area() < kLarge ? 2 : 3;
    Chance chance(static_cast<unsigned>(request_.fill.seed) * 7919U + 11U +
                  static_cast<unsigned>(layer));
    std::vector<FillKind> chosen;
    for (const std::size_t i : chooseKinds(kinds, ground_.cells(), request, chance))
      chosen.push_back(kinds[i]);
    return chosen;
  }
  [[nodiscard]] std::vector<FillKind> chosenFor(const std::vector<FillKind>& kinds) const {
    ProposeRequest request{
        ground_.cells(),  chooseRequest(), {},
        thirdsOfSeason(), standing(),      static_cast<unsigned>(request_.fill.seed) * 7919U + 3U};
    for (const Layer layer : {Layer::Ground, Layer::Bulbs})
      for (FillKind& kind : underneath(layer)) request.beneath.push_back(std::move(kind));
    return proposeKinds(kinds, request);
  }
  [[nodiscard]] std::vector<WeekSet> thirdsOfSeason() const {
    const std::vector<int> season = seasonWeeks(request_.yard.settings);
    std::vector<WeekSet> thirds;
    for (const auto& [third, word] : EnumWords<SeasonThird>::values)
      thirds.push_back(weeksOf(third, season));
    return thirds;
  }
  // Plants of the main layer that stay.
  [[nodiscard]] double standing() const {
    double sum = 0.0;
    for (const Drift& drift : request_.yard.drifts)
      if (drift.layer == Layer::Main) sum += static_cast<double>(drift.plants.size());
    return sum;
  }
  // No plant's centre may come nearer to an edge than half its spacing.
  [[nodiscard]] bool tooWide(const FillKind& kind) const {
    constexpr double kRounding = 1e-6;  // metres, as the ground holds plants
    return kind.spacing > ground_.width() + kRounding;
  }
  [[nodiscard]] ChooseRequest chooseRequest() const {
    double depth = 0.0;
    for (const FillCell& cell : ground_.cells())
      depth = std::max(depth, static_cast<double>(cell.toViewers));
    ChooseRequest request;
    const double usual = triangularGround(Length::metres(kUsualSpacing)).squareMetres();
    request.count =
        speciesFor(ground_.area() / usual, standing(), request_.wildness, request_.fill.limits);
    request.season = seasonOf(request_.yard.settings);
    request.depth = depth > 0.0 ? depth : 3.0;
    request.width = std::max(0.1, ground_.width());
    request.area = ground_.area();
    request.wildness = request_.wildness;
    request.limits = request_.fill.limits;
    if (inGaps()) request.standing = speciesIn(request_.yard, request_.bed.id);
    return request;
  }

  FillList fromList(const std::vector<ListedSpecies>& wanted) {
    list_.plants = wanted;
    std::vector<FillKind> kinds = kindsFor(wanted);
    const std::size_t known = kinds.size();
    kinds = suitable(std::move(kinds));
    const bool all = kinds.size() == known;
    takeKinds(withMatrixShares(withSharesOf(std::move(kinds), all)));
    list_.notes.insert(list_.notes.end(), later_.begin(), later_.end());
    return std::move(list_);
  }

  std::vector<FillKind> kindsFor(const std::vector<ListedSpecies>& wanted) {
    std::vector<const Species*> species;
    std::vector<ListedSpecies> entries;
    std::vector<std::string> unknown;
    std::set<std::string> twice;
    for (const ListedSpecies& listed : wanted) {
      const Species* known = request_.catalogue.find(listed.species);
      if (known == nullptr) {
        unknown.push_back(listed.species);
        continue;
      }
      const auto same = std::find(species.begin(), species.end(), known);
      if (same == species.end()) {
        species.push_back(known), entries.push_back(listed);
        continue;
      }
      ListedSpecies& entry = entries[static_cast<std::size_t>(same - species.begin())];
      entry.share += listed.share;
      entry.matrix = entry.matrix || listed.matrix;
      twice.insert(request_.catalogue.nameApart(*known));
    }
    if (!twice.empty())
      noteLater(fmt::format("{} {} on the list more than once; the shares were added.",
                            joined({twice.begin(), twice.end()}),
                            twice.size() == 1 ? "is" : "are"));
    if (!unknown.empty())
      note(
          fmt::format("{} {} not in the catalogue and left out. Check the spelling of the "
                      "botanical name.",
                      joined(unknown), unknown.size() == 1 ? "is" : "are"));
    auto kinds = kindsOf(species, request_.yard.settings);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
      kinds[i].share = std::isfinite(entries[i].share) ? std::max(0.0, entries[i].share) : 0.0;
      kinds[i].matrix = entries[i].matrix;
    }
    return kinds;
  }

  // Those that suit some place of the bed; if none does, those that miss the sun by least.
  std::vector<FillKind> suitable(std::vector<FillKind> kinds) {
    constexpr double kNearEnough = 1.5;  // hours
    std::vector<FillKind> good, near;
    std::vector<std::string> out;
    leaveOutTheWide(kinds);
    for (const FillKind& kind : kinds) {
      if (suitableShare(kind, ground_.cells()) > 0.03) {
        good.push_back(kind);
        continue;
      }
      out.push_back(request_.catalogue.nameApart(*kind.species));
      if (leastHoursOff(kind, ground_.cells()) <= kNearEnough) near.push_back(kind);
    }
    if (good.empty() && !near.empty()) {
      note(
          "Nothing on the list suits this bed's sun and moisture; what misses least was planted. "
          "Choose plants that ask for what the bed has.");
      return near;
    }
    if (good.empty() && !kinds.empty())
      note(
          "Nothing on the list suits this bed's sun and moisture. Choose plants that ask for what "
          "the bed has.");
    else if (!out.empty())
      note(fmt::format("{} {} left out: no part of the bed has the sun and moisture {}.",
                       joined(out), out.size() == 1 ? "is" : "are",
                       out.size() == 1 ? "it asks for" : "they ask for"));
    return good;
  }

  void leaveOutTheWide(std::vector<FillKind>& kinds) {
    std::vector<std::string> wide;
    for (const FillKind& kind : kinds)
      if (tooWide(kind)) wide.push_back(request_.catalogue.nameApart(*kind.species));
    std::erase_if(kinds, [&](const FillKind& kind) { return tooWide(kind); });
    if (wide.empty()) return;
    note(fmt::format("{} {} left out: the bed is nowhere as wide as the spacing {}.", joined(wide),
                     wide.size() == 1 ? "is" : "are",
                     wide.size() == 1 ? "it asks for" : "they ask for"));
  }

  // `all`: none of the list was left out.
  std::vector<FillKind> withSharesOf(std::vector<FillKind> kinds, bool all) {
    const Layer main = isLawn(kinds) ? Layer::Ground : Layer::Main;
    std::vector<WrittenShare> written;
    for (const FillKind& kind : kinds) written.push_back({kind.share, layerOf(kind) != main});
    const WholeShares whole = wholeShares(written);
    for (std::size_t i = 0; i < kinds.size(); ++i) kinds[i].share = whole.shares[i];
    if (!whole.proportioned) return kinds;
    const char* remedy = whole.sum > 1.0 ? " Give shares that come to 100 % to have them as given."
                                         : " Give shares that come to 100 %, or leave a species "
                                           "without one to take the rest.";
    noteLater(fmt::format("The shares of {} come to {:.0f} %; they were taken in proportion.{}",
                          all ? "the list" : "what suits the bed", 100.0 * whole.sum,
                          all ? remedy : ""));
    return kinds;
  }

  // A lawn of sedges, say, is the main layer.
  [[nodiscard]] bool isLawn(const std::vector<FillKind>& kinds) const {
    return !list_.proposed && request_.fill.what == FillWhat::WholeBed && areCovers(kinds);
  }
  void takeKinds(const std::vector<FillKind>& kinds) {
    std::vector<FillKind> main;
    for (const FillKind& kind : kinds) list_.suiting.insert(kind.species->botanicalName);
    for (const FillKind& kind : kinds) switch (layerOf(kind)) {
        case Layer::Main:
          main.push_back(kind);
          break;
        case Layer::Ground:
          list_.ground.push_back(kind);
          break;
        case Layer::Bulbs:
          list_.bulbs.push_back(kind);
          break;
      }
    if (isLawn(kinds)) std::swap(main, list_.ground);
    // A list of our own is as long as the bed takes.
    list_.main = list_.proposed ? std::move(main) : asManyAsTheBedHolds(std::move(main));
  }
  // All of the list, unless groups would be of fewer than three; those left out are then the same
  // with any seed.
  std::vector<FillKind> asManyAsTheBedHolds(std::vector<FillKind> kinds) {
    if (request_.fill.what == FillWhat::OneSpecies) return kinds;
    const double plants = plantsOn(ground_.area(), kinds);
    ChooseRequest request = chooseRequest();
    request.count = mostSpeciesIn(plants);
    if (kinds.size() <= request.count) {
      tellIfMany(kinds.size(), plants);
      return kinds;
    }
    Chance chance(5U);
    std::vector<FillKind> chosen;
    std::set<std::size_t> taken;
    for (const std::size_t i : chooseKinds(kinds, ground_.cells(), request, chance))
      chosen.push_back(kinds[i]), taken.insert(i);
    std::vector<std::string> out;
    for (std::size_t i = 0; i < kinds.size(); ++i)
      if (!taken.contains(i)) out.push_back(request_.catalogue.nameApart(*kinds[i].species));
    if (!inGaps())
      note(
          fmt::format("Of the list's {} species of the main layer that suit the bed {} {} left "
                      "out, as it is too small for groups of three of each: {}. For larger drifts "
                      "list about {}.",
                      kinds.size(), out.size(), out.size() == 1 ? "is" : "are", joined(out),
                      speciesAdvised(plants)));
    return chosen;
  }
  [[nodiscard]] std::size_t speciesAdvised(double plants) const {
    return speciesFor(plants, standing(), request_.wildness, request_.fill.limits);
  }
  [[nodiscard]] bool inGaps() const { return request_.fill.what == FillWhat::EmptyPart; }
  // A list as long as a natural bed's may be is not called long.
  void tellIfMany(std::size_t species, double plants) {
    constexpr double kDrift = 5.0;  // plants, the fewest that read as a drift and not as dots
    const double each = plants / static_cast<double>(std::max<std::size_t>(1, species));
    if (inGaps() || each >= kDrift ||
        species <= speciesFor(plants, standing(), 1.0, request_.fill.limits))
      return;
    note(fmt::format(
        "The bed is small for {} species of the main layer: with some {:.0f} plants of each "
        "they come in small groups. For larger drifts list about {}.",
        species, std::max(1.0, each), speciesAdvised(plants)));
  }

  const ListRequest& request_;
  FillGround ground_;
  bool tooNarrow_ = false;
  FillList list_;
  std::vector<std::string> later_;
};

}  // namespace

FillList listFor(const ListRequest& request) {
  return ListMaker(request).run();
}

std::vector<ListedSpecies> proposeList(const Yard& yard, const Catalogue& catalogue,
                                       const SunMap* sun, Id<Bed> id, int seed, double wildness,
                                       const FillLimits& limits) {
  FillRequest request;
  request.bed = id;
  request.seed = seed;
  request.limits = limits;
  // For the bed as a fill of the whole finds it.
  const Yard flat = laidFlat(withoutTakenOut(yard, request));
  const Bed* found = flat.beds.find(id);
  if (found == nullptr) return {};
  Bed bed = *found;
  bed.plantList.clear();
  return listFor({flat, catalogue, sunOn(Slope(yard.settings), sun), bed, wildness, request})
      .plants;
}

}  // namespace tussock
