// SPDX-License-Identifier: MIT
// All checks of 10,000 plants in 40 beds, and again after one drift has moved. Baseline, in the
// same run: load an R-tree with the 10,000 points at once and ask each for its 6 nearest. All
// checks take at most 3 times the baseline; after one drift moves, at most a tenth of all checks.
#include <map>

#include <benchmark/benchmark.h>

#include "core/checks/kept_findings.h"
#include "core/checks/moved_plant.h"
#include "core/geometry/lattice.h"
#include "core/geometry/point_index.h"
#include "tests/support/triangular_lattice.h"

namespace tussock {
namespace {

constexpr int kBedsAcross = 8, kBedsUp = 5, kPlantsPerBed = 250;
constexpr double kBedWidth = 7.0, kBedDepth = 5.0, kWalk = 1.0;  // metres
constexpr int kSpecies = 24;

Species speciesAt(int i) {
  Species species;
  species.genus = "Genus" + std::to_string(i / 2);
  species.botanicalName = species.genus + " species" + std::to_string(i);
  species.family = "Family" + std::to_string(i / 4);
  species.commonName = species.botanicalName;
  species.heightLow = species.heightHigh = Length::metres(0.3 + 0.07 * i);
  species.spread = species.spacing = Length::centimetres(35);
  species.sun = {SunNeed::Full, SunNeed::Part};
  species.moisture = {Moisture::Medium};
  species.bloomFirstMonth = 4 + i % 6;
  species.bloomLastMonth = 5 + i % 6;
  if (i % 3 == 0) species.diseaseNote = "Powdery mildew";
  return species;
}

Catalogue facts() {
  std::vector<Species> species;
  for (int i = 0; i < kSpecies; ++i) species.push_back(speciesAt(i));
  return Catalogue(std::move(species));
}

// Tiles of about 1.75 x 0.7 m, each a drift, taller ones to the back, with every seventh astray so
// that there is something to find.
int tileOf(Point inBed) {
  return static_cast<int>(inBed.y / 0.7) * 4 + static_cast<int>(inBed.x / 1.75);
}

int speciesOf(int tile, int bed) {
  const int height = (tile / 4) * 3 + (tile + bed) % 3;
  return tile % 7 == 3 ? (height + 9) % kSpecies : height % kSpecies;
}

class YardMaker {
 public:
  Yard make() {
    for (int i = 0; i < kBedsAcross * kBedsUp; ++i) addBed(i);
    Yard yard;
    yard.beds = Collection<Bed>(std::move(beds_));
    yard.drifts = Collection<Drift>(std::move(drifts_));
    return yard;
  }

 private:
  void addBed(int number) {
    Bed bed;
    bed.id = ids_.take<Bed>();
    bed.name = "Bed " + std::to_string(number + 1);
    const Point low{(number % kBedsAcross) * (kBedWidth + kWalk),
                    (number / kBedsAcross) * (kBedDepth + kWalk)};
    bed.outline = rectangle(low, low + Point{kBedWidth, kBedDepth});
    bed.viewing = number % 4 == 0 ? Viewing{true, {}} : Viewing{false, {Angle::degrees(180.0)}};
    addDrifts(bed, number, low);
    beds_.push_back(std::move(bed));
  }

  void addDrifts(const Bed& bed, int number, Point low) {
    const Box inside{low + Point{0.2, 0.2}, low + Point{kBedWidth - 0.2, kBedDepth - 0.2}};
    std::vector<Point> places =
        test::triangularLattice(inside, Length::centimetres(35), inside.low, Angle::degrees(20.0));
    places.resize(std::min<std::size_t>(places.size(), kPlantsPerBed));
    std::map<int, Drift> byTile;
    for (const Point place : places) {
      Drift& drift = byTile[tileOf(place - low)];
      drift.plants.push_back({ids_.take<Plant>(), place});
    }
    makeOdd(byTile);
    for (auto& [tile, drift] : byTile) {
      drift.id = ids_.take<Drift>();
      drift.bed = bed.id;
      drift.species = speciesAt(speciesOf(tile, number)).botanicalName;
      drift.spacing = Length::centimetres(35);
      drifts_.push_back(std::move(drift));
    }
  }

  // Hands a plant of each even drift on to the next one.
  static void makeOdd(std::map<int, Drift>& byTile) {
    for (auto at = byTile.begin(); std::next(at) != byTile.end(); ++at) {
      std::vector<Plant>& plants = at->second.plants;
      if (plants.size() % 2 == 1) continue;
      std::next(at)->second.plants.push_back(plants.back());
      plants.pop_back();
    }
  }

  IdSource ids_{2};
  std::vector<Bed> beds_;
  std::vector<Drift> drifts_;
};

SunMap sunOver(const Yard& yard) {
  const Box area = boundsOf(yard);
  constexpr double kCell = 0.25;
  const int columns = static_cast<int>(area.width() / kCell) + 1;
  const int rows = static_cast<int>(area.height() / kCell) + 1;
  SunMap map(area, Length::metres(kCell), columns, rows);
  for (int r = 0; r < rows; ++r)
    for (int c = 0; c < columns; ++c) map.set(c, r, {c * 5.0 / columns, 4.0});
  return map;
}

struct Scene {
  Yard yard = YardMaker().make();
  Catalogue catalogue = facts();
  std::shared_ptr<const SunMap> sun = std::make_shared<const SunMap>(sunOver(yard));
  [[nodiscard]] CheckInput input() const { return {yard, catalogue, sun.get()}; }
};

Yard withOneMoved(const Yard& yard) {
  Drift drift =
      *std::next(yard.drifts.begin(), static_cast<std::ptrdiff_t>(yard.drifts.size()) / 2);
  for (Plant& plant : drift.plants) plant.at += {0.05, 0.02};
  Yard next = yard;
  next.drifts = yard.drifts.with(std::move(drift));
  return next;
}

void baselineSixNearest(benchmark::State& state) {
  std::vector<Point> points;
  for (const Drift& drift : Scene().yard.drifts)
    for (const Plant& plant : drift.plants) points.push_back(plant.at);
  for (auto _ : state) {
    const PointIndex index(points);
    std::size_t sum = 0;
    for (const Point p : points) sum += index.nearest(p, 6).back();
    benchmark::DoNotOptimize(sum);
  }
  state.counters["plants"] = static_cast<double>(points.size());
}
BENCHMARK(baselineSixNearest)->Unit(benchmark::kMillisecond);

void allChecksOfTheYard(benchmark::State& state) {
  const Scene scene;
  std::size_t count = 0;
  for (auto _ : state) {
    const auto findings = runChecks(scene.input());
    count = findings->size();
  }
  state.counters["findings"] = static_cast<double>(count);
}
BENCHMARK(allChecksOfTheYard)->Unit(benchmark::kMillisecond);

void oneCheckOfTheYard(benchmark::State& state) {
  const Scene scene;
  const CheckId check = allChecks()[static_cast<std::size_t>(state.range(0))].id;
  for (auto _ : state) benchmark::DoNotOptimize(runCheck(check, scene.input()));
  state.SetLabel(std::string(wordOf(check)));
}
BENCHMARK(oneCheckOfTheYard)->DenseRange(0, 10)->Unit(benchmark::kMillisecond);

void checksAfterOneDriftMoved(benchmark::State& state) {
  Scene scene;
  const Yard before = scene.yard, after = withOneMoved(before);
  KeptFindings kept;
  benchmark::DoNotOptimize(kept.run(scene.yard, scene.catalogue, scene.sun));
  bool moved = false;
  for (auto _ : state) {
    moved = !moved;
    scene.yard = moved ? after : before;
    benchmark::DoNotOptimize(kept.run(scene.yard, scene.catalogue, scene.sun));
  }
}
BENCHMARK(checksAfterOneDriftMoved)->Unit(benchmark::kMillisecond);

// What a drift in hand would break, told at each move of the pointer: within a frame of 16 ms.
void driftInHandJudged(benchmark::State& state) {
  const Scene scene;
  Drift moved = *scene.yard.drifts.begin();
  for (Plant& plant : moved.plants) plant.at += Point{0.9, 0.8};
  for (auto _ : state) benchmark::DoNotOptimize(findingsAt(surveyOf(scene.input()), moved));
}
BENCHMARK(driftInHandJudged)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tussock
