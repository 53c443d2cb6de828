// SPDX-License-Identifier: MIT
#include "app/cli/fact_sheet.h"

#include <ostream>

#include <fmt/format.h>

#include "app/cli/plant_list_file.h"
#include "core/catalog/own_plants.h"

namespace tussock {

namespace {

std::string lineOf(const PlantValue& one) {
  std::string line = fmt::format("{:<32}{}", one.column, one.value);
  if (one.origin != Origin::Published)
    line += one.origin == Origin::Yard ? "  (your own, in the yard)" : "  (your own)";
  if (one.origin != Origin::Published && !one.published.empty())
    line += "; published: " + one.published;
  if (!one.sources.empty()) line += "  [" + one.sources + "]";
  return line;
}

}  // namespace

ExitCode printFactSheet(const std::string& name, const PlantFacts& plants, const Yard& yard,
                        Console& console) {
  const auto [species, trouble] = speciesNamed(name, plants.catalogue());
  if (species == nullptr) throw UsageError("--facts is '" + name + "', " + trouble);
  for (const PlantValue& one : valuesOf(plants.layers(yard), species->botanicalName))
    console.out << lineOf(one) << '\n';
  return ExitCode::Done;
}

}  // namespace tussock
