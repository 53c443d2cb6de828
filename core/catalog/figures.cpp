// SPDX-License-Identifier: MIT
#include "core/catalog/figures.h"

#include <algorithm>
#include <map>

namespace tussock {

namespace {

bool isGrassy(const Species& species) {
  return species.habit == Habit::Grass || species.habit == Habit::Sedge;
}

double sumOf(const std::vector<Portion>& portions) {
  double sum = 0.0;
  for (const Portion& portion : portions) sum += portion.amount;
  return sum;
}

template <class NameOf>
std::vector<NamedShare> sharesBy(const std::vector<Portion>& portions, double sum, NameOf nameOf) {
  std::map<std::string, double> amounts;
  for (const Portion& portion : portions) amounts[std::string(nameOf(portion))] += portion.amount;
  std::vector<NamedShare> shares;
  shares.reserve(amounts.size());
  for (const auto& [name, amount] : amounts) shares.push_back({name, amount, amount / sum});
  std::stable_sort(shares.begin(), shares.end(),
                   [](const NamedShare& a, const NamedShare& b) { return a.amount > b.amount; });
  return shares;
}

// Each species once, its layers together; most first, then by name.
std::vector<Portion> bySpecies(const std::vector<Portion>& portions) {
  std::map<std::string_view, Portion> sums;
  for (const Portion& portion : portions) {
    Portion& sum = sums[portion.species->botanicalName];
    sum.species = portion.species;
    sum.amount += portion.amount;
  }
  std::vector<Portion> result;
  result.reserve(sums.size());
  for (const auto& [name, portion] : sums) result.push_back(portion);
  std::stable_sort(result.begin(), result.end(),
                   [](const Portion& a, const Portion& b) { return a.amount > b.amount; });
  return result;
}

void addBloom(PlantFigures& figures, const Species& species) {
  if (!showsFlowers(species)) return;
  const WeekSet weeks = weeksInFlower(species);
  figures.bloomWeeks |= weeks;
  if (!species.nectarNote.empty()) figures.nectarWeeks |= weeks;
  for (std::size_t week = 0; week < figures.inFlower.size(); ++week)
    if ((weeks >> week & 1U) != 0) figures.inFlower[week].push_back(&species);
}

void addHeights(PlantFigures& figures, const Portion& portion, double sum) {
  const Species& species = *portion.species;
  const double share = portion.amount / sum;
  figures.heightBands[static_cast<std::size_t>(heightBandOf(species))] += share;
  figures.heights.push_back({&species, species.heightLow, species.heightHigh, share});
}

void addAll(PlantFigures& figures, const std::vector<Portion>& portions, double sum) {
  std::vector<double> amounts;
  for (const Portion& portion : portions) {
    amounts.push_back(portion.amount);
    if (isGrassy(*portion.species)) figures.grassShare += portion.amount / sum;
    if (!portion.species->hostNote.empty()) figures.hostPlants.push_back(portion.species);
    addBloom(figures, *portion.species);
    addHeights(figures, portion, sum);
  }
  figures.diversity = diversityOf(amounts);
}

// The share of the first species whose share is left open.
double openShare(const std::vector<ListedSpecies>& list) {
  double given = 0.0;
  double open = 0.0, set = 0.0;
  for (const ListedSpecies& listed : list) {
    given += listed.share;
    (listed.share > 0.0 ? set : open) += 1.0;
  }
  if (open == 0.0) return 0.0;
  return given < 1.0 ? (1.0 - given) / open : given / set;
}

}  // namespace

HeightBand heightBandOf(const Species& species) {
  if (species.height() <= Length::inches(6)) return HeightBand::Ground;
  if (species.height() <= Length::feet(2)) return HeightBand::Front;
  return species.height() <= Length::feet(5) ? HeightBand::Middle : HeightBand::Back;
}

std::vector<Portion> portionsOf(const Yard& yard, const Catalogue& catalogue,
                                std::optional<Id<Bed>> bed) {
  std::map<std::pair<std::string_view, Layer>, Portion> sums;
  for (const Drift& drift : yard.drifts) {
    if ((bed && drift.bed != *bed) || drift.plants.empty()) continue;
    const Species* species = catalogue.find(drift.species);
    if (species == nullptr) continue;
    Portion& sum = sums[{species->botanicalName, drift.layer}];
    sum.species = species;
    sum.layer = drift.layer;
    sum.amount += static_cast<double>(drift.plants.size());
  }
  std::vector<Portion> portions;
  portions.reserve(sums.size());
  for (const auto& [key, portion] : sums) portions.push_back(portion);
  return portions;
}

std::vector<Portion> portionsOf(const std::vector<ListedSpecies>& list,
                                const Catalogue& catalogue) {
  const double open = openShare(list);
  std::vector<Portion> portions;
  for (const ListedSpecies& listed : list)
    if (const Species* species = catalogue.find(listed.species))
      portions.push_back(
          {species, species->usualLayer(), listed.share > 0.0 ? listed.share : open});
  return portions;
}

PlantFigures figuresOf(const std::vector<Portion>& portions) {
  PlantFigures figures;
  const double sum = sumOf(portions);
  if (sum <= 0.0) return figures;
  using Name = std::string_view;
  figures.bySpecies =
      sharesBy(portions, sum, [](const Portion& p) { return Name(p.species->botanicalName); });
  figures.byGenus =
      sharesBy(portions, sum, [](const Portion& p) { return Name(p.species->genus); });
  figures.byFamily =
      sharesBy(portions, sum, [](const Portion& p) { return Name(p.species->family); });
  figures.byLayer = sharesBy(portions, sum, [](const Portion& p) { return wordOf(p.layer); });
  addAll(figures, bySpecies(portions), sum);
  const auto byName = [](const Species* a, const Species* b) {
    return a->botanicalName < b->botanicalName;
  };
  std::sort(figures.hostPlants.begin(), figures.hostPlants.end(), byName);
  std::stable_sort(figures.heights.begin(), figures.heights.end(),
                   [](const HeightStep& a, const HeightStep& b) { return a.high > b.high; });
  return figures;
}

}  // namespace tussock
