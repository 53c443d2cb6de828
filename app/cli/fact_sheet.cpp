// SPDX-License-Identifier: MIT
#include "app/cli/fact_sheet.h"

#include <algorithm>
#include <iterator>
#include <ostream>
#include <set>
#include <sstream>

#include <fmt/format.h>

#include "app/cli/plant_list_file.h"
#include "core/catalog/entry_checks.h"
#include "core/catalog/own_plants.h"
#include "core/catalog/source_names.h"
#include "core/catalog/tolerances.h"
#include "core/catalog/usual_flowers.h"
#include "core/catalog/week_range.h"

namespace tussock {

namespace {

// Chosen within a tolerance of its source: not said to have been read there.
bool isAfter(const PlantValue& one) {
  return !one.sources.empty() && one.sources != "memory" && !toleranceOf(one.column).empty();
}

std::string lineOf(const PlantValue& one) {
  std::string line = fmt::format("{:<32}{}", one.column, one.value);
  if (one.origin != Origin::Published)
    line += fmt::format("  ({}{})", one.heldToHeight ? "held to your height" : "your own",
                        one.origin == Origin::Yard ? ", in the yard" : "");
  if (!one.ownSources.empty()) line += "  [" + one.ownSources + "]";
  if (one.origin != Origin::Published && !one.published.empty())
    line += "; published: " + one.published;
  if (!one.sources.empty())
    line += fmt::format("  [{}{}]", isAfter(one) ? "after " : "", one.sources);
  return line;
}

void tellBloom(const Species& species, Hemisphere where, Console& console) {
  const auto weeks = species.bloomWeeks();
  if (!weeks) return;
  const bool own = species.bloomFirstWeek && species.bloomLastWeek;
  console.out << fmt::format("\nIn flower in {} of the year{}.\n", formatWeeks(*weeks),
                             own ? ""
                                 : ", from the first week of the first month to the last week "
                                   "of the last where no week is given");
  if (where == Hemisphere::South)
    console.out << "The yard lies south of the equator: half a year after the values above.\n";
}

// What is drawn where no value is given.
void tellStandIns(const Species& species, Console& console) {
  for (const char* column : {"flower_hex", "flower_form"})
    if (const std::string words = standInWords(species, column); !words.empty())
      console.out << fmt::format("No {} is given: drawn and compared as {}.\n", column, words);
}

// What the keys in brackets stand for.
void tellSources(const std::vector<PlantValue>& values, Console& console) {
  std::set<std::string> keys;
  for (const PlantValue& one : values) {
    std::istringstream words(one.sources + ' ' + one.ownSources);
    keys.insert(std::istream_iterator<std::string>(words), {});
  }
  if (!keys.empty()) console.out << "\nSources\n";
  if (std::any_of(values.begin(), values.end(), isAfter))
    console.out << "after     chosen within a tolerance of what the source gives, not always its "
                   "very figure:\n";
  std::set<std::string_view> tolerances;
  for (const PlantValue& one : values)
    if (isAfter(one) && tolerances.insert(toleranceOf(one.column)).second)
      console.out << fmt::format("{:<10}{}\n", "", toleranceOf(one.column));
  for (const std::string& key : keys) {
    const auto known = shippedSourceNames().find(key);
    console.out << fmt::format("{:<10}{}\n", key,
                               key == "memory" ? "general knowledge, not read in a source"
                               : known == shippedSourceNames().end() ? "a key of your own table"
                                                                     : known->second);
  }
}

// "purple coneflower" is one plant's common name and part of that of another.
void tellOthersCalledSo(const std::string& name, const Species& shown, const Catalogue& facts,
                        Console& console) {
  if (facts.resolve(name) != nullptr) return;
  std::string others;
  for (const Species* one : facts.calledAlike(name))
    if (one != &shown)
      others +=
          fmt::format("{}{} ({})", others.empty() ? "" : ", ", one->botanicalName, one->commonName);
  if (!others.empty())
    console.err << "Others that '" << name << "' may mean: " << others
                << ". Write the botanical name for one of them.\n";
}

}  // namespace

ExitCode printFactSheet(const std::string& name, const PlantFacts& plants, const Yard& yard,
                        Console& console) {
  const auto [species, trouble] = speciesNamed(name, plants.catalogue());
  if (species == nullptr) throw UsageError("--facts is '" + name + "', " + trouble);
  const auto values = valuesOf(plants.layers(yard), species->botanicalName);
  const bool known = isGenusOf(plants.layers(yard).published, species->genus);
  for (const PlantValue& one : values)
    console.out << lineOf(one)
                << (one.column == "family" && !known ? "; not checked: the genus is not known here"
                                                     : "")
                << '\n';
  tellBloom(*species, plants.catalogue().hemisphere(), console);
  tellStandIns(*species, console);
  tellSources(values, console);
  tellOthersCalledSo(name, *species, plants.catalogue(), console);
  return ExitCode::Done;
}

}  // namespace tussock
