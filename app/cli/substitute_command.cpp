// SPDX-License-Identifier: MIT
// Another species for one that cannot be had, as in the window: told, or put in its place.
#include <memory>
#include <ostream>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "app/cli/plant_list_file.h"
#include "core/catalog/edit_plants.h"
#include "core/checks/substitute.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

using Json = nlohmann::json;

struct SubstituteOptions {
  std::string file, species, with;
  std::size_t count = 5;
  bool json = false;
};

const Species& speciesAsked(const char* option, const std::string& name, const Catalogue& facts) {
  const auto [species, trouble] = speciesNamed(name, facts);
  if (species == nullptr) throw UsageError(fmt::format("{} is '{}', {}", option, name, trouble));
  return *species;
}

void expectPlanted(const Species& species, const Yard& yard) {
  for (const Drift& drift : yard.drifts)
    if (drift.species == species.botanicalName) return;
  throw UsageError("No drift in this yard is of " + species.botanicalName + ".");
}

void tellGround(const Substitution& done, UnitSystem units, std::ostream& out) {
  const std::string words = groundWords(done, units);
  if (!words.empty()) out << "  " << words << '\n';
}

void printJson(const std::vector<Substitute>& found, std::ostream& out) {
  Json list = Json::array();
  for (const Substitute& one : found)
    list.push_back({{"botanical_name", one.species->botanicalName},
                    {"common_name", one.species->commonName},
                    {"likeness", one.likeness},
                    {"points", one.points},
                    {"plants_before", plantsBefore(one.done)},
                    {"plants_after", plantsAfter(one.done)},
                    {"plants_without_place", one.done.noPlace},
                    {"drifts_without_place", one.done.withoutPlace},
                    {"ground_before_m2", one.done.groundBefore.squareMetres()},
                    {"ground_after_m2", one.done.groundAfter.squareMetres()},
                    {"ground_bare_share", bareShare(one.done)},
                    {"differences", one.differences},
                    {"findings_caused", one.causedTexts},
                    {"findings_worsened", one.worsenedTexts}});
  out << Json{{"substitutes", list}}.dump(2) << '\n';
}

void tellFindings(const Substitute& one, std::ostream& out) {
  for (const std::string& text : one.causedTexts) out << "  finding: " << text << '\n';
  for (const std::string& text : one.worsenedTexts)
    out << "  finding, worse than now: " << text << '\n';
}

void printText(const std::vector<Substitute>& found, UnitSystem units, std::ostream& out) {
  if (!found.empty())
    out << "In order of points: likeness in height, weeks in flower, form, colour, sun, moisture "
           "and "
           "spacing, 0 to 100, less 40 times the share of the ground left bare.\n";
  for (const Substitute& one : found) {
    out << fmt::format(
        "{} ({}): {:.0f} points, {:.0f} alike; {} in place of {}\n", one.species->botanicalName,
        one.species->commonName, one.points, one.likeness,
        counted(static_cast<std::size_t>(plantsAfter(one.done)), "plant"), plantsBefore(one.done));
    tellGround(one.done, units, out);
    if (!one.differences.empty())
      out << fmt::format("  other: {}\n", fmt::join(one.differences, "; "));
    tellFindings(one, out);
  }
}

ExitCode tell(const YardFile& file, const Species& species, const Catalogue& facts,
              const SubstituteOptions& options, Console& console) {
  const auto sun = computeSunMap(file.yard(), seasonRequest(file.yard()));
  const auto found = substitutesFor({file.yard(), facts, sun ? &*sun : nullptr},
                                    species.botanicalName, options.count);
  options.json ? printJson(found, console.out)
               : printText(found, file.yard().settings.units, console.out);
  if (found.empty())
    console.err
        << "No species suits the beds and finds a place in them, or its drifts are locked or stand "
           "there already.\n";
  return ExitCode::Done;
}

ExitCode put(YardFile& file, const Species& species, const Species& with, const PlantFacts& plants,
             Console& console) {
  const auto sun = computeSunMap(file.yard(), seasonRequest(file.yard()));
  const Substitute told =
      substituteBy({file.yard(), plants.catalogue(), sun ? &*sun : nullptr}, species, with);
  const Substitution done = substitute(file.yard(), species.botanicalName, with, file.ids());
  if (done.edit.empty()) {
    console.err << "Nothing was changed: the drifts of " << species.botanicalName
                << (done.withoutPlace > 0
                        ? " have no place for even one plant of it by the rules, are locked, or "
                          "stand there already.\n"
                        : " are locked, stand there already, or have no plants.\n");
    return ExitCode::File;
  }
  file.commit(carrying(plants.layers(file.yard()), done.edit, file.ids()));
  console.out << fmt::format("{}: {} in place of {}, in {}\n", done.edit.label,
                             counted(static_cast<std::size_t>(plantsAfter(done)), "plant"),
                             plantsBefore(done), counted(done.drifts.size(), "drift"));
  tellGround(done, file.yard().settings.units, console.out);
  tellFindings(told, console.out);
  if (done.keptAsTheyAre > 0)
    console.out << "Left as they are, locked or standing there already: "
                << counted(static_cast<std::size_t>(done.keptAsTheyAre), "drift") << '\n';
  return ExitCode::Done;
}

ExitCode runSubstitute(const SubstituteOptions& options, Console& console) {
  const bool writes = !options.with.empty();
  YardFile file = YardFile::open(options.file,
                                 writes ? YardFile::Access::ReadWrite : YardFile::Access::ReadOnly);
  const PlantFacts plants = plantsFor(file.yard(), console);
  const Catalogue& facts = plants.catalogue();
  const Species& species = speciesAsked("--species", options.species, facts);
  expectPlanted(species, file.yard());
  if (!writes) return tell(file, species, facts, options, console);
  const Species& with = speciesAsked("--with", options.with, facts);
  if (&with == &species) throw UsageError("--with is the species itself. Name another.");
  return put(file, species, with, plants, console);
}

}  // namespace

void addSubstitute(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand(
      "substitute", "Find another species for one that cannot be had, and put it in its place");
  auto options = std::make_shared<SubstituteOptions>();
  command->add_option("FILE", options->file, "Yard file")->required();
  command->add_option("--species", options->species, "The one that cannot be had")->required();
  auto* with = command->add_option("--with", options->with,
                                   "Put this one in the place of its drifts, in one edit");
  command
      ->add_option(
          "--count", options->count,
          "So many at most, those with the most points first: likeness, less what they would "
          "leave bare")
      ->check(wholeFromOne())
      ->excludes(with);
  command->add_flag("--json", options->json, "One JSON document")->excludes(with);
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runSubstitute(*options, console); };
  });
}

}  // namespace tussock
