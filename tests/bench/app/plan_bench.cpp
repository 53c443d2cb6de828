// SPDX-License-Identifier: MIT
// The planting plan as a PDF, of 10 and of 40 beds of 250 plants. Baseline: the plan of 10 beds; 40
// beds take at most 4 times as long, give or take a tenth.
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

#include "app/print/plan_output.h"
#include "tests/bench/app/many_plants.h"

namespace tussock {
namespace {

void planPdf(benchmark::State& state) {
  const QTemporaryDir folder;
  const Catalogue facts = readShippedCatalogue().catalogue;
  const Yard yard = bench::bedsOfPlants(int(state.range(0)), facts);
  std::size_t sheets = 0;
  for (auto _ : state) {
    const Plan plan = makePlan(yard, facts, {});
    writePlanPdf(plan, folder.filePath(QStringLiteral("plan.pdf")));
    sheets = plan.sheets.size();
  }
  state.counters["sheets"] = double(sheets);
}
BENCHMARK(planPdf)->Arg(10)->Arg(40)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tussock
