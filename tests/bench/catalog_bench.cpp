// SPDX-License-Identifier: MIT
// Searching 5,000 species as one types, against looking for the words in one plain text of each
// species with std::string::find, which finds less and puts nothing in order. Budget: 10 ms.
#include <benchmark/benchmark.h>

#include "core/catalog/catalogue.h"
#include "core/catalog/choose.h"
#include "core/catalog/search.h"

namespace tussock {
namespace {

constexpr std::size_t kSpecies = 5000;

// The shipped species over and over, with other epithets.
const Catalogue& manySpecies() {
  static const Catalogue all = [] {
    const Catalogue shipped = readShippedCatalogue().catalogue;
    std::vector<Species> species;
    for (std::size_t i = 0; species.size() < kSpecies; ++i) {
      Species one = shipped.species()[i % shipped.species().size()];
      const std::string number = std::to_string(i / shipped.species().size());
      one.botanicalName += number;
      for (std::string& synonym : one.synonyms) synonym += number;
      species.push_back(std::move(one));
    }
    Catalogue made(std::move(species));
    (void)made.search("tall");  // makes the index
    return made;
  }();
  return all;
}

void search(benchmark::State& state, const char* words) {
  const Catalogue& all = manySpecies();
  for (auto _ : state) benchmark::DoNotOptimize(all.search(words));
}

void plainText(benchmark::State& state, const char* text) {
  std::vector<std::string> texts;
  for (const Species& one : manySpecies().species())
    texts.push_back(one.botanicalName + " " + one.commonName + " " + one.family + " " +
                    one.flowerColourWord + " " + one.notes);
  const std::vector<std::string> words = searchWords(text);
  for (auto _ : state) {
    std::size_t found = 0;
    for (const std::string& one : texts) {
      bool all = true;
      for (const std::string& word : words) all = all && one.find(word) != std::string::npos;
      found += all ? 1 : 0;
    }
    benchmark::DoNotOptimize(found);
  }
}

void rank(benchmark::State& state) {
  RankRequest request;
  request.place.sunHours = 7.0;
  request.place.moisture = Moisture::Dry;
  for (auto _ : state) benchmark::DoNotOptimize(rankFor(manySpecies(), request));
}

// All that the bench of the window does at a key press with a bed selected: search, rank, filter.
void atAKeyPress(benchmark::State& state) {
  Choice choice;
  choice.filter.words = "tall dry fall";
  choice.filter.traits = {Trait::Nectar};
  choice.of = ChoiceOf::Suiting;
  choice.place.emplace();
  choice.place->place.sunHours = 7.0;
  choice.place->place.moisture = Moisture::Dry;
  for (auto _ : state) benchmark::DoNotOptimize(choose(manySpecies(), choice));
}

BENCHMARK_CAPTURE(plainText, tall_dry_fall, "tall dry fall")->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(search, tall_dry_fall, "tall dry fall")->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(search, one_letter, "s")->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(search, inside_words, "aster purple")->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(search, nothing, "")->Unit(benchmark::kMicrosecond);
BENCHMARK(atAKeyPress)->Unit(benchmark::kMicrosecond);
BENCHMARK(rank)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace tussock
