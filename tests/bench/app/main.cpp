// SPDX-License-Identifier: MIT
// Benchmarks of the window, on a screen in memory. Called with "--first-paint [FILE]" it is the
// program under measurement instead: it ends when its window has been painted once.
#include <cstdlib>
#include <QStandardPaths>
#include <string_view>

#include <benchmark/benchmark.h>

#include "app/window/application.h"
#include "tests/bench/app/first_paint.h"

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);  // never the settings of whoever measures
  tussock::Application application(argc, argv);
  if (argc > 1 && std::string_view(argv[1]) == "--first-paint")
    return tussock::bench::endAtFirstPaint(application, QApplication::arguments().value(2));
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return EXIT_FAILURE;
  benchmark::RunSpecifiedBenchmarks();
  return EXIT_SUCCESS;
}
