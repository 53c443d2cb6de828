// SPDX-License-Identifier: MIT
// Fills random beds, plants the same species by two plain ways, and prints the measures of all
// three as a table. Arguments: how many beds (200), the first of them (0), --each for a line a bed
// on standard error, --alone without the two ways, --across for the same beds looked at from
// opposite sides, --threads N beds at a time. Or --yards FOLDER COUNT: writes the beds, unplanted,
// as yard files.
#include <algorithm>
#include <array>
#include <atomic>
#include <cstdlib>
#include <iostream>
#include <mutex>
#include <optional>
#include <string_view>
#include <thread>

#include <fmt/format.h>

#include "core/checks/checked_fill.h"
#include "core/edit/change.h"
#include "core/store/yard_file.h"
#include "tests/bench/fill/measured.h"
#include "tests/bench/fill/planters.h"
#include "tests/support/random_beds.h"

namespace tussock::bench {
namespace {

std::vector<const Species*> mainSpecies(const Catalogue& catalogue, const FillResult& result) {
  std::vector<const Species*> species;
  for (const ListedSpecies& listed : result.plants)
    if (const Species* known = catalogue.find(listed.species))
      if (known->usualLayer() == Layer::Main) species.push_back(known);
  return species;
}

std::string lineOf(unsigned seed, const test::RandomBed& random, const Measured& m,
                   const FillResult& result) {
  std::string line = fmt::format(
      "{:3} {:8} {:6.1f} m2 {:4.1f} wide {:3} kinds {:4} plants {:3} drifts taken {:.3f} nearest "
      "{:.3f} cover {:.4f} touch {:.2f} score {:.3f} rows {:.2f} of {:.2f}{}",
      seed, test::nameOf(random.shape), m.area, m.widthInSpacings, result.plants.size(),
      m.bed.plants, m.bed.drifts, m.bed.groundTaken, m.bed.meanNearest, m.bed.covered,
      m.bed.touchTwo, m.score, m.bed.rows.rowiness, m.rowsShowAbove, m.rowsShow ? " ROWS" : "");
  for (const auto& [check, count] : m.findings) line += fmt::format(" {}:{}", wordOf(check), count);
  for (const std::string& note : result.notes) line += "\n      " + note;
  return line + '\n';
}

int writeYards(const std::string& folder, unsigned count) {
  for (unsigned seed = 0; seed < count; ++seed)
    (void)YardFile::create(fmt::format("{}/bed-{}.yard", folder, seed), test::randomBed(seed).yard);
  return EXIT_SUCCESS;
}

struct Asked {
  unsigned count = 200, first = 0, threads = 1;
  bool each = false, alone = false, across = false;
};

// One bed planted in three ways; the plain two have no say where they are not asked for.
struct Planted {
  std::array<std::optional<Measured>, 3> ways;
  std::string told;
};

Planted planted(unsigned seed, const Catalogue& catalogue, const Asked& asked) {
  const test::RandomBed random =
      asked.across ? test::randomBedSeenAcross(seed) : test::randomBed(seed);
  const auto sun = computeSunMap(random.yard, seasonRequest(random.yard));
  const SunMap* map = sun ? &*sun : nullptr;
  IdSource ids(largestId(random.yard) + 1);
  FillRequest request;
  request.bed = random.bed;
  request.timeLimit = std::chrono::minutes(15);
  const auto result = fillChecked(random.yard, catalogue, map, request, ids);
  Planted done;
  done.ways[0] = measured(apply(random.yard, result->edit), catalogue, map, random.bed);
  done.told = lineOf(seed, random, *done.ways[0], *result);
  const PlantingJob job{random.yard, catalogue, map, random.bed, mainSpecies(catalogue, *result),
                        seed};
  if (job.species.empty() || asked.alone) return done;
  done.ways[1] = measured(plantedByPoissonDisc(job), catalogue, map, random.bed);
  done.ways[2] = measured(plantedByVoronoi(job), catalogue, map, random.bed);
  return done;
}

int run(const Asked& asked) {
  const Catalogue catalogue = readShippedCatalogue().catalogue;
  std::vector<Planted> beds(asked.count);
  std::atomic<unsigned> next = 0;
  std::mutex telling;
  const auto work = [&] {
    for (unsigned i = next++; i < asked.count; i = next++) {
      beds[i] = planted(asked.first + i, catalogue, asked);
      const std::lock_guard lock(telling);
      if (asked.each) std::cerr << beds[i].told;
    }
  };
  {
    std::vector<std::jthread> threads;
    for (unsigned i = 0; i < std::max(1U, asked.threads); ++i) threads.emplace_back(work);
  }
  std::vector<Way> ways{{"Tussock", {}}, {"Poisson disc, dealt", {}}, {"weighted Voronoi", {}}};
  for (const Planted& bed : beds)
    for (std::size_t way = 0; way < ways.size(); ++way)
      if (bed.ways[way]) ways[way].beds.push_back(*bed.ways[way]);
  std::cout << tableOf(ways);
  return EXIT_SUCCESS;
}

}  // namespace
}  // namespace tussock::bench

int main(int count, char** arguments) {
  const auto number = [&](int i, unsigned usual) {
    return count > i ? static_cast<unsigned>(std::strtoul(arguments[i], nullptr, 10)) : usual;
  };
  if (count > 2 && std::string_view(arguments[1]) == "--yards")
    return tussock::bench::writeYards(arguments[2], number(3, 24));
  tussock::bench::Asked asked;
  asked.count = number(1, 200), asked.first = number(2, 0);
  for (int i = 1; i < count; ++i) {
    const std::string_view word = arguments[i];
    if (word == "--each") asked.each = true;
    if (word == "--alone") asked.alone = true;
    if (word == "--across") asked.across = true;
    if (word == "--threads") asked.threads = number(i + 1, 1);
  }
  return tussock::bench::run(asked);
}
