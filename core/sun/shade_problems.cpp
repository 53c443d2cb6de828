// SPDX-License-Identifier: MIT
#include "core/sun/shade_problems.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/sun/map.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

constexpr double kCoarse = 1.0;  // metres from one place counted to the next

bool isSome(double value) {
  return std::isfinite(value) && value > 0.0;
}

// Words that follow the subject; none when all is well.
struct Trouble {
  std::string text;
  bool asDrawn = false;
};

std::string outlineProblem(const Polygon& outline) {
  const auto reason = invalidityOf(outline);
  if (!reason) return {};
  return fmt::format(
      " has an outline whose shade cannot be relied on: {}. Move its corners, or draw it again.",
      explain(*reason));
}

// One after the other, about one subject.
Trouble together(const Trouble& first, const Trouble& second) {
  if (first.text.empty()) return second;
  if (second.text.empty()) return first;
  return {first.text + " It" + second.text, first.asDrawn && second.asDrawn};
}

Trouble heightProblem(const Building& building) {
  const double eave = building.eave.metres();
  const double ridge = building.ridge.metres();
  const double top = building.roof == Roof::Flat || !(ridge > eave) ? eave : ridge;
  if (!std::isfinite(eave) || eave < 0.0 || !isSome(top))
    return {" has no height and casts no shade. Give it the height of its eave."};
  if (building.base.metres() > eave || building.base.metres() >= top)
    return {" has its underside at or above its roof and casts no shade. Lower its base."};
  return {};
}

Trouble roofProblem(const Building& building) {
  if (building.roof == Roof::Flat || building.ridge > building.eave) return {};
  return {
      " has its ridge no higher than its eave and is shaded as under a flat roof. Raise its "
      "ridge, or make its roof flat.",
      true};
}

Trouble problemOf(const Building& building) {
  const Trouble height = heightProblem(building);
  return together({outlineProblem(building.footprint)},
                  height.text.empty() ? roofProblem(building) : height);
}

Trouble problemOf(const Barrier& barrier) {
  if (!isSome(barrier.height.metres()))
    return {" has no height and casts no shade. Give it a height."};
  if (!barrier.footprint.empty()) return {outlineProblem(barrier.footprint)};
  for (const Point p : barrier.line)
    if (!(p == barrier.line.front())) return {};
  return {" has no length and casts no shade. Draw it from one place to another."};
}

Trouble crownProblem(const Tree& tree, UnitSystem units) {
  const double width = 2.0 * tree.crownRadius.metres();
  if (!isSome(width)) return {" has no crown, so only its trunk casts shade. Give it a spread."};
  if (tree.crownBase >= tree.height)
    return {
        " has its crown's base at or above its top, so only its trunk casts shade. Lower the "
        "base."};
  if (width > tree.height.metres())
    return {
        fmt::format(" has a crown {} wide on a height of {} and is shaded so. If that is not how "
                    "it stands, see whether its spread was given as its radius.",
                    formatLength(tree.crownRadius * 2.0, units), formatLength(tree.height, units)),
        true};
  return {};
}

Trouble leafProblem(const Tree& tree, Angle latitude) {
  if (tree.evergreen) return {};
  if (!tree.leafOn.ok() || !tree.leafOff.ok())
    return {
        " has leaf dates that are no days of the year. Give the day it comes into leaf and the "
        "day it is bare."};
  if (tree.leafOn == tree.leafOff)
    return {
        " comes into leaf and is bare on one day, and is taken to be in leaf all year. Mark it "
        "evergreen, or give two days."};
  const bool overNewYear = tree.leafOn > tree.leafOff;
  if (overNewYear == (latitude < Angle())) return {};
  return {fmt::format(
              " is in leaf from {} to {}, {}, and is shaded so. If that is not meant, change the "
              "two days round.",
              readableMonthDay(tree.leafOn), readableMonthDay(tree.leafOff),
              overNewYear ? "over the new year" : "in the southern winter"),
          true};
}

Trouble problemOf(const Tree& tree, const Settings& settings) {
  if (!isSome(tree.height.metres()))
    return {" has no height and casts no shade. Give it a height."};
  return together(crownProblem(tree, settings.units), leafProblem(tree, settings.latitude));
}

Trouble coarseProblem(Length cell, UnitSystem units) {
  if (cell.metres() <= kCoarse) return {};
  return {
      fmt::format(" has its hours of sun counted {} apart, which may be wrong where shade is "
                  "narrow: the rectangles around the beds of this yard cover too much ground for "
                  "smaller cells, or lie too far apart. Put some of the beds, or parts of them, in "
                  "yards of their own.",
                  formatLength(cell, units))};
}

Point placeOf(const Polygon& outline) {
  const Box box = boundsOf(outline);
  return box.empty() ? Point{std::nan(""), std::nan("")} : (box.low + box.high) * 0.5;
}

Point placeOf(const Barrier& barrier) {
  if (!barrier.footprint.empty()) return placeOf(barrier.footprint);
  return barrier.line.empty() ? Point{std::nan(""), std::nan("")} : barrier.line.front();
}

template <class T>
void addProblem(const T& object, std::string_view kind, Point at, const Trouble& trouble,
                std::vector<ShadeProblem>& problems) {
  if (trouble.text.empty()) return;
  const std::string name = object.name.empty() ? "" : fmt::format(" “{}”", object.name);
  problems.push_back(
      {refTo(object.id), at, fmt::format("the {}{}", kind, name), trouble.text, trouble.asDrawn});
}

}  // namespace

std::string sentenceOf(const ShadeProblem& problem, UnitSystem units) {
  const auto coordinate = [units](double metres) {
    return (metres < 0.0 ? "−" : "") + formatLength(Length::metres(std::abs(metres)), units);
  };
  std::string who = problem.subject;
  who.front() = 'T';
  const Point at = problem.at;
  return (isFinite(at) ? fmt::format("{} at {}, {}", who, coordinate(at.x), coordinate(at.y))
                       : who + ", which has no place,") +
         problem.trouble;
}

std::vector<std::string> sentencesOf(const std::vector<ShadeProblem>& problems, UnitSystem units) {
  std::vector<std::string> sentences;
  for (auto each = problems.begin(); each != problems.end(); ++each) {
    const auto alike = [&](const ShadeProblem& other) { return other.trouble == each->trouble; };
    if (std::any_of(problems.begin(), each, alike)) continue;
    std::string others;
    for (auto other = std::find_if(each + 1, problems.end(), alike); other != problems.end();
         other = std::find_if(other + 1, problems.end(), alike))
      others += (others.empty() ? " The same holds for " : ", ") + other->subject;
    sentences.push_back(sentenceOf(*each, units) + others + (others.empty() ? "" : "."));
  }
  return sentences;
}

std::vector<ShadeProblem> solidProblems(const Yard& yard) {
  std::vector<ShadeProblem> problems;
  const auto add = [&](const auto& object, std::string_view kind, Point at,
                       const Trouble& trouble) { addProblem(object, kind, at, trouble, problems); };
  for (const Building& building : yard.buildings)
    add(building, "building", placeOf(building.footprint), problemOf(building));
  for (const Barrier& barrier : yard.barriers)
    add(barrier, wordOf(barrier.kind), placeOf(barrier), problemOf(barrier));
  for (const Tree& tree : yard.trees) add(tree, "tree", tree.at, problemOf(tree, yard.settings));
  return problems;
}

std::vector<ShadeProblem> shadeProblems(const Yard& yard) {
  std::vector<ShadeProblem> problems = solidProblems(yard);
  const Trouble coarse = coarseProblem(seasonRequest(yard).cell, yard.settings.units);
  for (const Bed& bed : yard.beds) addProblem(bed, "bed", placeOf(bed.outline), coarse, problems);
  return problems;
}

}  // namespace tussock
