// SPDX-License-Identifier: MIT
#include <algorithm>
#include <iostream>
#include <memory>

#include <fmt/format.h>
#include <unistd.h>

#include "app/cli/commands.h"
#include "app/cli/plant_list_file.h"
#include "core/catalog/edit_plants.h"
#include "core/checks/checked_fill.h"
#include "core/planting/planted_lines.h"
#include "core/planting/published_figures.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

struct FillOptions {
  std::string file, bed, plants, species;
  int seed = 1;
  std::optional<double> wildness;
  bool onlyEmpty = false;
  std::optional<int> seconds;
};

FillRequest requestFrom(const FillOptions& options, const Bed& bed, const PlantListFile& list,
                        const Catalogue& facts) {
  FillRequest request;
  request.bed = bed.id;
  request.seed = options.seed;
  request.wildness = options.wildness;
  if (options.seconds) request.timeLimit = std::chrono::seconds(*options.seconds);
  if (options.onlyEmpty) request.what = FillWhat::EmptyPart;
  request.plants = list.plants;
  if (options.species.empty()) return request;
  const auto [species, trouble] = speciesNamed(options.species, facts);
  if (species == nullptr) throw UsageError("--species is '" + options.species + "', " + trouble);
  request.what = FillWhat::OneSpecies;
  request.species = species->botanicalName;
  return request;
}

// A line that tells how far it is, on a terminal only.
FillProgressCall progressOn(const Console& console, const Bed& bed) {
  if (&console.err != &std::cerr || isatty(STDERR_FILENO) == 0) return {};
  return [&err = console.err, name = bed.name](const FillProgress& progress) {
    err << fmt::format("\rFilling {} {:3.0f} %", name, 100.0 * progress.share)
        << (progress.share >= 1.0 ? "\r\033[K" : "") << std::flush;
  };
}

void printScore(const FillScore& score, std::ostream& out) {
  out << fmt::format("{:<28}{:>6}{:>8}\n", "Rule", "score", "weight");
  for (const TermScore& term : score.terms)
    out << fmt::format("{:<28}{:>6.2f}{:>8.1f}\n", factsOf(term.term).title, term.score,
                       term.weight);
  out << fmt::format("{:<28}{:>6.2f}\n", "All, by weight", score.total);
}

void printPublished(const Yard& yard, const Catalogue& facts, Id<Bed> bed, std::ostream& out) {
  out << "\nBeside published figures\n";
  for (const PublishedFigure& figure : publishedFigures(yard, facts, bed))
    out << fmt::format("{}: {} ({})\n", figure.title, besidePublished(figure), figure.source);
}

void print(const std::vector<std::string>& notes, std::ostream& out) {
  for (const std::string& note : notes) out << note << '\n';
}

std::string_view titleOf(Layer layer) {
  switch (layer) {
    case Layer::Main:
      return "Main layer";
    case Layer::Ground:
      return "Ground layer";
    case Layer::Bulbs:
      return "Bulbs";
  }
  return {};
}

void printPlanted(const std::vector<PlantedLine>& lines, std::ostream& out) {
  std::size_t common = 26, botanical = 26;  // as wide as the score below, or as the names are
  for (const PlantedLine& line : lines) {
    common = std::max(common, line.commonName.size());
    botanical = std::max(botanical, line.botanicalName.size());
  }
  std::optional<Layer> layer;
  for (const PlantedLine& line : lines) {
    if (layer != line.layer)
      out << fmt::format("{:<{}}  {:<{}}{:>8}{:>8}\n", titleOf(line.layer), common, "", botanical,
                         "plants", "drifts");
    layer = line.layer;
    out << fmt::format("{:<{}}  {:<{}}{:>8}{:>8}\n", line.commonName, common, line.botanicalName,
                       botanical, line.plants, line.drifts);
  }
}

void print(const FillResult& result, const std::vector<PlantedLine>& planted, std::ostream& out) {
  out << result.edit.label << ": " << counted(static_cast<std::size_t>(result.planted), "plant")
      << " in " << counted(result.drifts, "drift") << " of " << result.species << " species"
      << (result.proposed ? ", proposed from the plant facts" : "") << '\n';
  print(result.notes, out);
  out << '\n';
  printPlanted(planted, out);
  out << '\n';
  printScore(result.score, out);
}

ExitCode runFill(const FillOptions& options, Console& console) {
  YardFile file = YardFile::open(options.file);
  const PlantFacts plants = plantsFor(file.yard(), console);
  const Catalogue& facts = plants.catalogue();
  const Bed& bed = bedNamed(options.bed, file.yard());
  const PlantListFile list =
      options.plants.empty() ? PlantListFile{} : readPlantList(options.plants, facts);
  const FillRequest request = requestFrom(options, bed, list, facts);
  if (const std::string why = whyNoRefill(file.yard(), facts, request); !why.empty())
    throw UsageError(why + " Give the list with --plants; --only-empty keeps what stands there.");
  const auto sun = computeSunMap(file.yard(), seasonRequest(file.yard()));
  auto result = fillChecked(file.yard(), facts, sun ? &*sun : nullptr, request, file.ids(), {},
                            progressOn(console, bed));
  if (!result || (result->edit.empty() && !result->unchanged)) {
    console.err << "Nothing was planted.\n";
    if (result) print(result->notes, console.err);
    return ExitCode::File;
  }
  if (!result->unchanged)
    file.commit(carrying(plants.layers(file.yard()), result->edit, file.ids()));
  print(*result, plantedLines(file.yard(), facts, request, *result), console.out);
  printPublished(file.yard(), facts, request.bed, console.out);
  return ExitCode::Done;
}

}  // namespace

void addFill(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand("fill", "Fill a bed with drifts");
  auto options = std::make_shared<FillOptions>();
  command->add_option("FILE", options->file, "Yard file")->required();
  command->add_option("--bed", options->bed, "Name of the bed; not needed when there is but one");
  command->add_option(
      "--plants", options->plants,
      "File with the species to plant, one a line, if wanted with a comma and its share "
      "('Monarda fistulosa, 20 %'), or as a spreadsheet saves that; what follows a # is a comment. "
      "Else the bed's plant list, else one proposed for the bed");
  command->add_option("--seed", options->seed, "Another number gives another arrangement")
      ->check(between(0, 1'000'000'000));
  command->add_option("--wildness", options->wildness, "From 0, formal, to 1, natural")
      ->check(between(0.0, 1.0));
  auto* empty = command->add_flag("--only-empty", options->onlyEmpty,
                                  "Fill the gaps: plant only where nothing stands");
  command->add_option("--species", options->species, "Plant only this species anew")
      ->excludes(empty);
  command
      ->add_option("--time", options->seconds,
                   "Most seconds to take; else 20, and more above 1,500 square metres")
      ->check(between(1, 3600));
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runFill(*options, console); };
  });
}

}  // namespace tussock
