// SPDX-License-Identifier: MIT
// Searching the plant facts, and choosing from them for a bed or a point, as on the bench.
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <memory>
#include <ostream>
#include <set>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "app/cli/fact_sheet.h"
#include "app/cli/plant_filters.h"
#include "app/document/personal_plants.h"
#include "core/catalog/bed_request.h"
#include "core/catalog/choose.h"
#include "core/catalog/edit_plants.h"
#include "core/catalog/resources.h"
#include "core/exchange/plant_csv.h"
#include "core/store/yard_file.h"
#include "core/sun/map.h"

namespace tussock {

namespace {

using Json = nlohmann::json;

struct PlantsOptions {
  std::string file, search, bed, facts, bringIn, ownOut, allOut;
  PlantFilterOptions filters;
  std::vector<double> at;
  bool leftOut = false, all = false, json = false;
  std::size_t count = 0;
};

std::optional<RankRequest> placeAsked(const PlantsOptions& options, const Yard& yard,
                                      const Catalogue& facts, Console& console) {
  if (options.bed.empty() && options.at.empty()) return std::nullopt;
  const auto sun = computeSunMap(yard, seasonRequest(yard));
  if (options.at.empty()) {
    const Bed& bed = bedNamed(options.bed, yard);
    return requestFor(yard, facts, bed, sun ? sun->meanHours(bed.outline) : std::nullopt);
  }
  const Point at{options.at.front(), options.at.back()};
  const auto hours = sun ? sun->hoursAt(at) : std::nullopt;
  if (!hours)
    console.err << fmt::format(
        "The point {:g}, {:g} lies outside of what the sun map knows: plants are ranked there "
        "without regard to sun. Give a point in the yard.\n",
        at.x, at.y);
  return requestAt(yard, facts, at, hours ? std::optional(hours->total()) : std::nullopt);
}

Choice choiceFrom(const PlantsOptions& options, const Yard& yard, const Catalogue& facts,
                  Console& console) {
  Choice choice;
  choice.filter = filterFrom(options.filters, facts, yard.settings.units);
  choice.filter.words = options.search;
  choice.order = orderFrom(options.filters);
  choice.place = placeAsked(options, yard, facts, console);
  const char* needing = options.leftOut                               ? "--left-out"
                        : options.all                                 ? "--all"
                        : choice.filter.traits.contains(Trait::Suits) ? "--trait suits-the-place"
                        : choice.order == RankOrder::Fit              ? "--order fit"
                                                                      : nullptr;
  if (!choice.place && needing != nullptr)
    throw UsageError(std::string(needing) + " needs a place: give --bed or --at.");
  if (!choice.place) return choice;
  if (!choice.order) choice.order = RankOrder::Fit;
  if (!options.all) choice.of = options.leftOut ? ChoiceOf::LeftOut : ChoiceOf::Suiting;
  return choice;
}

void printJson(const std::vector<Ranked>& plants, bool placed, std::ostream& out) {
  Json list = Json::array();
  for (const Ranked& one : plants) {
    Json entry{{"botanical_name", one.species->botanicalName},
               {"common_name", one.species->commonName}};
    if (placed)
      entry.update({{"suits", one.suits()},
                    {"points", one.points},
                    {"reasons", one.reasons},
                    {"costs", one.costs},
                    {"over_equals", one.overEquals},
                    {"why_not", one.whyNot}});
    list.push_back(std::move(entry));
  }
  out << Json{{"plants", list}}.dump(2) << '\n';
}

void printText(const std::vector<Ranked>& plants, bool placed, std::ostream& out) {
  for (const Ranked& one : plants) {
    if (placed && one.suits()) out << fmt::format("{:3.0f}  ", one.points);
    if (placed && !one.suits()) out << "not  ";
    out << one.species->botanicalName;
    if (!one.species->commonName.empty()) out << " (" << one.species->commonName << ")";
    const std::vector<std::string> reasons = toldReasons(one);
    if (!reasons.empty()) out << fmt::format(": {}", fmt::join(reasons, "; "));
    out << '\n';
  }
}

// The table of before is kept beside where anything of it would be lost.
void tellWhatGivesWay(const BroughtIn& read, const Catalogue& published, Console& console) {
  const std::set<std::size_t> replaced = rowsReplacedBy(read.taken, published);
  if (read.gaveWay.empty() && replaced.empty()) return;
  const std::string kept = keepPersonalPlants().toStdString();
  if (!read.gaveWay.empty())
    console.err << fmt::format("Values of yours give way for {}; they are kept in {}\n",
                               fmt::join(read.gaveWay, ", "), kept);
  if (!replaced.empty())
    console.err << fmt::format(
        "{} of your table that could not be used {} way to what is brought in, and {} kept in {}: "
        "line {}\n",
        counted(replaced.size(), "row"), replaced.size() == 1 ? "gives" : "give",
        replaced.size() == 1 ? "is" : "are", kept, fmt::join(replaced, ", "));
}

// 1 when some of it could not be used, as the findings of a check are told; 3 when it gave nothing.
ExitCode bringIn(const std::string& path, Console& console) {
  const Catalogue published = shippedFacts(console);
  const OwnPlantsReading mine = readPersonalPlants(published);
  expectRewritable(mine);
  const std::vector<OwnSpecies>& before = mine.plants;
  const BroughtIn read = bringInPlants(readFile(path), path, published, before);
  for (const CatalogueError& error : read.errors) console.err << error.text() << '\n';
  for (const std::string& note : toldTogether(read.notes, read.notes.size()))
    console.err << note << '\n';
  tellWhatGivesWay(read, published, console);
  const std::vector<OwnSpecies> after = withTaken(before, read.taken);
  if (!read.taken.empty()) savePersonalPlants(after, published, read.taken);
  console.err << "Brought in for all your yards: " << counted(read.taken.size(), "plant")
              << "; rows left out: " << read.rowsLeft.size()
              << "; rows that say nothing new: " << read.rowsWithoutNews << ".\n";
  if (const std::string many = manyPlantsWords(after.size()); !many.empty())
    console.err << many << '\n';
  if (read.taken.empty() && read.errors.empty())
    console.err << path << " has no rows, or says only what is published already.\n";
  if (read.taken.empty()) return ExitCode::File;
  return read.errors.empty() ? ExitCode::Done : ExitCode::Findings;
}

// The yard's own before the personal ones.
std::vector<OwnSpecies> ownPlants(const Yard& yard, const PlantLayers& layers) {
  return withTaken(layers.personal, {yard.ownSpecies.begin(), yard.ownSpecies.end()});
}

void expectSensible(const PlantsOptions& options) {
  for (const double metres : options.at)
    if (!std::isfinite(metres)) throw UsageError("--at takes two numbers of metres.");
  if (!options.file.empty()) return;
  if (!options.bed.empty() || !options.at.empty())
    throw UsageError("--bed and --at need the yard file that they are in.");
}

ExitCode writeOut(const std::string& path, const std::string& csv, Console& console) {
  writeWhole(path, csv);
  console.err << "Wrote " << path << '\n';
  return ExitCode::Done;
}

// What is listed, of how many.
void tellCount(const std::vector<Ranked>& shown, std::size_t found, const Choice& choice,
               const Catalogue& facts, Console& console) {
  const std::string of = fmt::format("{} of {} species", found, facts.species().size());
  if (!choice.place)
    console.err << of;
  else if (choice.of == ChoiceOf::LeftOut)
    console.err << of << " do not suit the place; each is listed with what speaks against it";
  else if (choice.of == ChoiceOf::Suiting)
    console.err << of << " suit the place";
  else
    console.err << of << ": those that suit the place, then, after \"not\", those that do not";
  if (shown.size() < found) console.err << fmt::format(" (the first {} are shown)", shown.size());
  console.err << ".\n";
}

ExitCode runPlants(const PlantsOptions& options, Console& console) {
  expectSensible(options);
  for (const std::string& out : {options.ownOut, options.allOut}) refuseOutput(out);
  if (!options.bringIn.empty()) return bringIn(options.bringIn, console);
  const Yard yard = options.file.empty()
                        ? Yard{}
                        : YardFile::open(options.file, YardFile::Access::ReadOnly).yard();
  const PlantFacts plantFacts = plantsFor(yard, console);
  const Catalogue& facts = plantFacts.catalogue();
  if (!options.allOut.empty()) return writeOut(options.allOut, plantsCsv(facts), console);
  if (!options.ownOut.empty())
    return writeOut(options.ownOut, ownPlantsCsv(ownPlants(yard, plantFacts.layers(yard))),
                    console);
  if (!options.facts.empty()) return printFactSheet(options.facts, plantFacts, yard, console);
  const Choice choice = choiceFrom(options, yard, facts, console);
  std::vector<Ranked> plants = choose(facts, choice);
  const std::size_t found = plants.size();
  if (options.count > 0) plants.resize(std::min(plants.size(), options.count));
  const bool placed = choice.place.has_value();
  options.json ? printJson(plants, placed, console.out) : printText(plants, placed, console.out);
  tellCount(plants, found, choice, facts, console);
  return ExitCode::Done;
}

// Words without an option are most likely a search.
void expectNoMore(std::vector<std::string> words, const std::string& file) {
  if (words.empty()) return;
  if (std::any_of(words.begin(), words.end(), [](const auto& one) { return one.starts_with('-'); }))
    throw CLI::ExtrasError("plants", words);
  if (!std::filesystem::exists(file)) words.insert(words.begin(), file);
  throw CLI::ParseError(fmt::format("Not expected: {0}. To search for these words write --search "
                                    "'{0}'.",
                                    fmt::join(words, " ")),
                        CLI::ExitCodes::ExtrasError);
}

}  // namespace

void addPlants(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand(
      "plants", "Search the plants, yours among them; rank them for a bed or a point");
  auto options = std::make_shared<PlantsOptions>();
  command->add_option("FILE", options->file, "Yard file, whose own plants count too");
  command->add_option("--search", options->search,
                      "Words that must all be met, such as 'tall dry fall'");
  addPlantFilters(*command, options->filters);
  auto* bed = command->add_option(
      "--bed", options->bed,
      "List the species that suit this bed, best first, with points and reasons");
  auto* at = command
                 ->add_option("--at", options->at,
                              "The same for this point: metres east and north of the yard's origin")
                 ->expected(2)
                 ->excludes(bed);
  bed->excludes(at);
  auto* leftOut = command->add_flag("--left-out", options->leftOut,
                                    "With --bed or --at: list only the species that do not suit "
                                    "the place, each with what speaks against it");
  command
      ->add_flag("--all", options->all,
                 "With --bed or --at: list the species that suit the place, then those that do not")
      ->excludes(leftOut);
  command->add_option("--count", options->count, "So many at most")->check(wholeFromOne());
  auto* json = command->add_flag("--json", options->json, "One JSON document");
  command
      ->add_option("--facts", options->facts,
                   "All that is known of this plant, with the source of each value")
      ->excludes(json);
  command->add_option("--bring-in", options->bringIn,
                      "Take the plants of a CSV file into those that hold in all your yards");
  command->add_option("--write-own", options->ownOut, "Write your own plants to a CSV file");
  command->add_option("--write-all", options->allOut, "Write every plant to a CSV file");
  command->allow_extras();
  command->callback([command, options, &chosen] {
    expectNoMore(command->remaining(), options->file);
    chosen = [options](Console& console) { return runPlants(*options, console); };
  });
}

}  // namespace tussock
