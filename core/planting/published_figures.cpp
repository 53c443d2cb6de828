// SPDX-License-Identifier: MIT
#include "core/planting/published_figures.h"

#include <algorithm>
#include <cmath>
#include <map>

#include <fmt/format.h>

#include "core/catalog/bloom.h"
#include "core/geometry/lattice.h"
#include "core/planting/measures.h"

namespace tussock {

namespace {

constexpr std::string_view kKingsbury =
    "Kingsbury in The Plantsman, plants a square metre: 4 to 5 in conventional perennial planting, "
    "7 "
    "to 8 with Oudolf, up to 9 in German mixed planting";
constexpr std::string_view kCarpet =
    "Hansen and Stahl, Perennials and their Garden Habitats, carpets, by a second-hand summary";
constexpr std::string_view kOdd = "garden press: groups of 3, 5, 7; seen up to about 9 plants";
constexpr std::string_view kClump =
    "clumps of four feet and more for pollinators, US Forest Service, from memory";
constexpr std::string_view kEight = "eight of a species for pollinators, after the Xerces Society";

double medianOf(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

// Across a drift: the diameter of a circle as large as its rectangle.
double across(const Drift& drift) {
  if (const auto box = rectangleOf(drift))
    return std::sqrt(box->length * box->width * 4.0 / 3.14159265358979);
  return drift.spacing.metres() * std::sqrt(static_cast<double>(drift.plants.size()));
}

struct FigureTally {
  double main = 0.0, ground = 0.0;  // plants
  double apart = 0.0;               // metres, of all plants of the main layer together
  double carpet = 0.0;              // square metres that plants of the ground layer take
  double small = 0.0, odd = 0.0;    // drifts
  std::vector<double> widths;       // metres, of drifts that show flowers
  std::map<std::string, double> flowering;
};

FigureTally tallyOf(const Yard& yard, const Catalogue& catalogue, Id<Bed> bed) {
  constexpr std::size_t kSmall = 9;
  FigureTally tally;
  for (const Drift* drift : driftsIn(yard, bed)) {
    const double count = static_cast<double>(drift->plants.size());
    if (drift->plants.empty() || drift->layer == Layer::Bulbs) continue;
    if (drift->layer == Layer::Ground) {
      tally.ground += count;
      tally.carpet += count * triangularGround(drift->spacing).squareMetres();
      continue;
    }
    tally.main += count;
    tally.apart += count * drift->spacing.metres();
    if (drift->plants.size() <= kSmall + 1)
      tally.small += 1.0, tally.odd += drift->plants.size() % 2 == 1 ? 1.0 : 0.0;
    const Species* species = catalogue.find(drift->species);
    if (species == nullptr || !showsFlowers(*species)) continue;
    tally.widths.push_back(across(*drift));
    tally.flowering[drift->species] += count;
  }
  return tally;
}

PublishedFigure densityOf(std::string_view title, double plants, const Bed& bed, Area unit,
                          const PublishedFigure& perSquareMetre) {
  PublishedFigure figure = perSquareMetre;
  figure.title = title;
  figure.measured = plants / (areaOf(bed.outline) / unit);
  figure.low *= unit.squareMetres(), figure.high *= unit.squareMetres();
  return figure;
}

// Four feet, as it was published, or as near in metres.
PublishedFigure widthOf(double metres, UnitSystem units) {
  if (units == UnitSystem::Metres)
    return {"Metres across a flowering drift", metres, 1.2, 1.2, kClump};
  return {"Feet across a flowering drift", Length::metres(metres).feet(), 4.0, 4.0, kClump};
}

// Only where plants so far apart cannot come to the figure, or must pass it.
std::string whyDensity(const PublishedFigure& figure, const FigureTally& tally, Area unit,
                       UnitSystem units) {
  const Length apart = Length::metres(tally.apart / tally.main);
  const double full = unit / triangularGround(apart);
  const bool explains =
      (figure.below() && full < figure.low) || (figure.above() && full > figure.high);
  return explains
             ? fmt::format("its plants stand {} apart on average", formatPlantSize(apart, units))
             : "";
}

std::string whyCarpet(const PublishedFigure& figure, const FigureTally& tally, double area) {
  constexpr double kCovered = 0.9;
  const double covered = tally.carpet / area;
  return figure.below() && covered < kCovered
             ? fmt::format("its plants cover {:.0f} % of the bed", 100.0 * covered)
             : "";
}

std::string whyFew(const PublishedFigure& figure, const FigureTally& tally) {
  double plants = 0.0;
  for (const auto& [name, count] : tally.flowering) plants += count;
  const auto species = static_cast<double>(tally.flowering.size());
  return figure.below() && plants < figure.low * species
             ? fmt::format("{:.0f} plants that flower are of {:.0f} species", plants, species)
             : "";
}

}  // namespace

std::string_view PublishedFigure::outside() const {
  return below() ? "below" : above() ? "above" : "";
}

std::string PublishedFigure::range() const {
  return high > low ? fmt::format("{:.3g} to {:.3g}", low, high)
                    : fmt::format("{:.3g} and more", low);
}

std::string besidePublished(const PublishedFigure& figure) {
  return fmt::format("{:.1f}, {} the published {}{}{}", figure.measured,
                     figure.within() ? "within" : figure.outside(), figure.range(),
                     figure.reason.empty() ? "" : "; here ", figure.reason);
}

std::vector<PublishedFigure> publishedFigures(const Yard& yard, const Catalogue& catalogue,
                                              Id<Bed> id) {
  std::vector<PublishedFigure> figures;
  const Bed* bed = yard.beds.find(id);
  if (bed == nullptr) return figures;
  const UnitSystem units = yard.settings.units;
  const bool feet = units == UnitSystem::FeetInches;
  const Area unit = feet ? Area::squareYards(1.0) : Area::squareMetres(1.0);
  const FigureTally tally = tallyOf(yard, catalogue, id);
  if (tally.main > 0.0) {
    figures.push_back(
        densityOf(feet ? "Plants a square yard, main layer" : "Plants a square metre, main layer",
                  tally.main, *bed, unit, {{}, 0.0, 4.0, 9.0, kKingsbury}));
    figures.back().reason = whyDensity(figures.back(), tally, unit, units);
  }
  if (tally.ground > 0.0) {
    figures.push_back(densityOf(
        feet ? "Plants a square yard, ground layer" : "Plants a square metre, ground layer",
        tally.ground, *bed, unit, {{}, 0.0, 15.0, 20.0, kCarpet}));
    figures.back().reason = whyCarpet(figures.back(), tally, areaOf(bed->outline).squareMetres());
  }
  if (tally.small > 0.0)
    figures.push_back(
        {"Share of odd drifts, of those up to 10", tally.odd / tally.small, 1.0, 1.0, kOdd});
  if (!tally.widths.empty()) figures.push_back(widthOf(medianOf(tally.widths), units));
  if (!tally.flowering.empty()) {
    std::vector<double> counts;
    for (const auto& [name, count] : tally.flowering) counts.push_back(count);
    figures.push_back({"Plants of a flowering species", medianOf(counts), 8.0, 8.0, kEight});
    figures.back().reason = whyFew(figures.back(), tally);
  }
  return figures;
}

}  // namespace tussock
