// SPDX-License-Identifier: MIT
// Fills random beds, plants the same species by two plain ways, and prints the measures of all
// three as a table. Arguments: how many beds (200), the first of them (0), --each for a line a bed
// on standard error, --alone without the two ways. Or --yards FOLDER COUNT: writes the beds,
// unplanted, as yard files.
#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <string_view>

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

void tell(unsigned seed, const test::RandomBed& random, const Measured& m,
          const FillResult& result) {
  std::cerr << fmt::format(
      "{:3} {:8} {:6.1f} m2 {:4.1f} wide {:3} kinds {:4} plants {:3} drifts taken {:.3f} nearest "
      "{:.3f} cover {:.4f} touch {:.2f} score {:.3f} rows {:.2f} of {:.2f}{}",
      seed, test::nameOf(random.shape), m.area, m.widthInSpacings, result.plants.size(),
      m.bed.plants, m.bed.drifts, m.bed.groundTaken, m.bed.meanNearest, m.bed.covered,
      m.bed.touchTwo, m.score, m.bed.rows.rowiness, m.rowsShowAbove, m.rowsShow ? " ROWS" : "");
  for (const auto& [check, count] : m.findings)
    std::cerr << fmt::format(" {}:{}", wordOf(check), count);
  for (const std::string& note : result.notes) std::cerr << "\n      " << note;
  std::cerr << '\n';
}

int writeYards(const std::string& folder, unsigned count) {
  for (unsigned seed = 0; seed < count; ++seed)
    (void)YardFile::create(fmt::format("{}/bed-{}.yard", folder, seed), test::randomBed(seed).yard);
  return EXIT_SUCCESS;
}

struct Told {
  bool each = false, alone = false;
};

int run(unsigned count, unsigned first, Told told) {
  const Catalogue catalogue = readShippedCatalogue().catalogue;
  std::vector<Way> ways{{"Tussock", {}}, {"Poisson disc, dealt", {}}, {"weighted Voronoi", {}}};
  for (unsigned seed = first; seed < first + count; ++seed) {
    const test::RandomBed random = test::randomBed(seed);
    const auto sun = computeSunMap(random.yard, seasonRequest(random.yard));
    const SunMap* map = sun ? &*sun : nullptr;
    IdSource ids(largestId(random.yard) + 1);
    FillRequest request;
    request.bed = random.bed;
    request.timeLimit = std::chrono::minutes(5);
    const auto result = fillChecked(random.yard, catalogue, map, request, ids);
    ways[0].beds.push_back(measured(apply(random.yard, result->edit), catalogue, map, random.bed));
    if (told.each) tell(seed, random, ways[0].beds.back(), *result);
    const PlantingJob job{random.yard, catalogue, map, random.bed, mainSpecies(catalogue, *result),
                          seed};
    if (job.species.empty() || told.alone) continue;
    ways[1].beds.push_back(measured(plantedByPoissonDisc(job), catalogue, map, random.bed));
    ways[2].beds.push_back(measured(plantedByVoronoi(job), catalogue, map, random.bed));
  }
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
  const auto has = [&](std::string_view word) {
    return std::find(arguments + 1, arguments + count, word) != arguments + count;
  };
  return tussock::bench::run(number(1, 200), number(2, 0), {has("--each"), has("--alone")});
}
