// SPDX-License-Identifier: MIT
// From the start of the program with the example yard to its first painted frame. Baseline, in the
// same run: an empty QMainWindow of the same size in a program of the same libraries. At most 2
// times the baseline. Both are processes of their own, until the frame is painted.
#include <QCoreApplication>
#include <QProcess>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

#include "core/catalog/catalogue.h"
#include "core/store/example_file.h"

namespace tussock {
namespace {

void runUntilPainted(benchmark::State& state, const QStringList& arguments) {
  if (QProcess::execute(QCoreApplication::applicationFilePath(), arguments) != 0)
    state.SkipWithError("the program did not end well");
}

void baselineEmptyWindow(benchmark::State& state) {
  for (auto _ : state) runUntilPainted(state, {QStringLiteral("--first-paint")});
}
BENCHMARK(baselineEmptyWindow)->UseRealTime()->Unit(benchmark::kMillisecond)->Iterations(20);

void startToFirstPaint(benchmark::State& state) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("example.yard"));
  writeExample(path.toStdString(), readShippedCatalogue().catalogue);
  for (auto _ : state) runUntilPainted(state, {QStringLiteral("--first-paint"), path});
}
BENCHMARK(startToFirstPaint)->UseRealTime()->Unit(benchmark::kMillisecond)->Iterations(20);

}  // namespace
}  // namespace tussock
