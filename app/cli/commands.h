// SPDX-License-Identifier: MIT
// The commands, each in a file of its own, and what they share.
#pragma once

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <stdexcept>
#include <string>

#include <CLI/CLI.hpp>

#include "app/cli/command_line.h"
#include "app/document/plant_facts.h"
#include "core/catalog/catalogue.h"
#include "core/exchange/geojson.h"
#include "core/model/yard.h"

namespace tussock {

// The arguments are well formed but make no sense: exit code 2.
class UsageError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

struct Console {
  std::ostream& out;
  std::ostream& err;
};

// What the arguments ask for, ready to be run; adding a command sets it when its name is met.
using Action = std::function<ExitCode(Console&)>;

void addExample(CLI::App& app, Action& chosen);
void addNew(CLI::App& app, Action& chosen);
void addImport(CLI::App& app, Action& chosen);
void addExport(CLI::App& app, Action& chosen);
void addSun(CLI::App& app, Action& chosen);
void addFill(CLI::App& app, Action& chosen);
void addCheck(CLI::App& app, Action& chosen);
void addPlan(CLI::App& app, Action& chosen);
void addPlants(CLI::App& app, Action& chosen);
void addSubstitute(CLI::App& app, Action& chosen);
void addHistory(CLI::App& app, Action& chosen);
void addVerify(CLI::App& app, Action& chosen);

// The shipped plant facts; what is wrong with them goes to err.
[[nodiscard]] Catalogue shippedFacts(Console& console);
// With the user's own plants before them, those of the yard before the personal ones, as in the
// window; what is wrong with those too.
[[nodiscard]] PlantFacts plantsFor(const Yard& yard, Console& console);
[[nodiscard]] Catalogue factsFor(const Yard& yard, Console& console);
// The bed of that name, or the only one when none is named. Throws UsageError.
[[nodiscard]] const Bed& bedNamed(const std::string& name, const Yard& yard);
// Findings when features were left out: the rest is in.
[[nodiscard]] ExitCode afterImport(const GeoJsonImport& import);
// Writes the whole file or nothing. Throws std::runtime_error naming the path.
void writeWhole(const std::filesystem::path& path, const std::string& bytes);
// Throws UsageError when a yard would be written over (whyNotOver), or the table of the user's own
// plants, before any work is done. What is not asked for has no name and is passed over.
void refuseOutput(const std::string& out);
// ".pdf" of "Plan.PDF".
[[nodiscard]] std::string lowerExtension(const std::filesystem::path& path);
// "1 bed", "2 beds".
[[nodiscard]] std::string counted(std::size_t count, const std::string& one);
// Accepts whole numbers from 1, and says so of any other.
[[nodiscard]] CLI::Validator wholeFromOne();
// Accepts numbers from `least` to `most`, and says so of any other.
[[nodiscard]] CLI::Validator between(double least, double most);

// Painting needs fonts, and so a Qt application: made without a display if there is none yet.
void ensurePainting();

}  // namespace tussock
