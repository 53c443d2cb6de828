// SPDX-License-Identifier: MIT
#include "core/sun/survey_fit.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/edit/draft.h"
#include "core/sun/least_squares.h"
#include "core/sun/solids.h"
#include "core/sun/survey_model.h"

namespace tussock {

namespace {

constexpr double kTellsNothing = 0.05;  // hours of difference that are no sign of shade

struct Wanted {
  std::size_t tree;
  TreeQuantity quantity;
};

double valueOf(const Tree& tree, TreeQuantity quantity) {
  switch (quantity) {
    case TreeQuantity::Height:
      return tree.height.metres();
    case TreeQuantity::OpennessLeaf:
      return tree.opennessLeaf;
    case TreeQuantity::OpennessBare:
      return tree.opennessBare;
  }
  return 0.0;
}

void setValue(TreeQuantity quantity, double value, Tree& tree) {
  switch (quantity) {
    case TreeQuantity::Height:
      tree.height = Length::metres(value);
      break;
    case TreeQuantity::OpennessLeaf:
      tree.opennessLeaf = value;
      break;
    case TreeQuantity::OpennessBare:
      tree.opennessBare = value;
      break;
  }
}

// Openness is held to 0.02 and more away from 0 and 1 nowhere; heights stay heights of that tree.
Unknown unknownOf(const Tree& tree, TreeQuantity quantity) {
  const double start = valueOf(tree, quantity);
  if (quantity != TreeQuantity::Height) return {std::clamp(start, 0.0, 1.0), 0.0, 1.0, 0.02, 0.3};
  const double low = std::max(0.3 * start, tree.crownBase.metres() + 0.2);
  return {std::max(start, low), low, std::max(3.0 * start, 2.0 * low), 0.3, 0.5 * start};
}

std::vector<Tree> treesOf(const Yard& yard) {
  return {yard.trees.begin(), yard.trees.end()};
}

std::vector<ReadingCompared> compared(SurveyModel& model, const std::vector<Tree>& trees) {
  const std::vector<double> hours = model.hours(trees);
  std::vector<ReadingCompared> result;
  for (std::size_t i = 0; i < hours.size(); ++i)
    result.push_back({model.readings()[i].id, model.readings()[i].hours, hours[i]});
  return result;
}

// Whether the readings would differ with the quantity at either end of its range.
bool canBeTold(SurveyModel& model, const std::vector<Tree>& trees, const Wanted& wanted) {
  const Unknown unknown = unknownOf(trees[wanted.tree], wanted.quantity);
  std::vector<Tree> low = trees, high = trees;
  setValue(wanted.quantity, unknown.low, low[wanted.tree]);
  setValue(wanted.quantity, unknown.high, high[wanted.tree]);
  const std::vector<double> a = model.hours(low), b = model.hours(high);
  for (std::size_t i = 0; i < a.size(); ++i)
    if (std::abs(a[i] - b[i]) > kTellsNothing) return true;
  return false;
}

bool canShade(const Tree& tree) {
  return tree.height > Length() && tree.crownRadius > Length() && isFinite(tree.at) &&
         tree.crownBase < tree.height;
}

std::vector<Wanted> wantedOf(SurveyModel& model, const std::vector<Tree>& trees) {
  std::vector<Wanted> result;
  for (std::size_t i = 0; i < trees.size(); ++i) {
    if (!canShade(trees[i])) continue;
    for (const TreeQuantity quantity :
         {TreeQuantity::Height, TreeQuantity::OpennessLeaf, TreeQuantity::OpennessBare})
      if (canBeTold(model, trees, {i, quantity})) result.push_back({i, quantity});
  }
  return result;
}

double rounded(TreeQuantity quantity, double value) {
  const double steps = quantity == TreeQuantity::Height ? 10.0 : 100.0;
  return std::round(value * steps) / steps;
}

// To the last figure that is told.
FittedValue::End endOf(const Unknown& unknown, TreeQuantity quantity, double to) {
  const double figure = quantity == TreeQuantity::Height ? 0.1 : 0.01;
  if (to <= unknown.low + figure) return FittedValue::End::Least;
  if (to >= unknown.high - figure) return FittedValue::End::Most;
  return FittedValue::End::None;
}

void fit(SurveyModel& model, const std::vector<Tree>& trees, const std::vector<Wanted>& wanted,
         std::stop_token stop, SurveyFit& result) {
  std::vector<Unknown> unknowns;
  unknowns.reserve(wanted.size());
  for (const Wanted& each : wanted) unknowns.push_back(unknownOf(trees[each.tree], each.quantity));
  const auto with = [&](const std::vector<double>& values) {
    std::vector<Tree> changed = trees;
    for (std::size_t i = 0; i < wanted.size(); ++i)
      setValue(wanted[i].quantity, values[i], changed[wanted[i].tree]);
    return changed;
  };
  const auto residuals = [&](const std::vector<double>& values) {
    std::vector<double> rest;
    for (const ReadingCompared& each : compared(model, with(values)))
      rest.push_back(each.residual());
    return rest;
  };
  // Held to what is drawn only as much as keeps the unknowns apart, and more with too few readings.
  const double hold = result.verdict == SurveyVerdict::TooFew ? 0.1 : 0.02;
  const std::vector<double> values = leastSquares(unknowns, hold, residuals, stop);
  std::vector<double> offered;
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const double from = valueOf(trees[wanted[i].tree], wanted[i].quantity);
    const double to = rounded(wanted[i].quantity, values[i]);
    const bool changes =
        std::abs(to - from) > (wanted[i].quantity == TreeQuantity::Height ? 0.05 : 0.005);
    offered.push_back(changes ? to : from);
    if (changes)
      result.values.push_back({trees[wanted[i].tree].id, wanted[i].quantity, from, to,
                               endOf(unknowns[i], wanted[i].quantity, to)});
  }
  result.after = compared(model, with(offered));
}

ChangeSet proposalOf(const Yard& yard, const std::vector<FittedValue>& values) {
  Draft draft(yard);
  for (const FittedValue& value : values) {
    Tree tree = *draft.yard().trees.find(value.tree);
    setValue(value.quantity, value.to, tree);
    draft.put(std::move(tree));
  }
  return draft.finish("Fit trees to the sun survey");
}

std::string counted(std::size_t count, const char* one, const char* many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string textOf(const SurveyFit& fit) {
  const std::size_t readings = fit.before.size();
  switch (fit.verdict) {
    case SurveyVerdict::NoReadings:
      return "There are no readings yet. Note hours of sun at a point on a day.";
    case SurveyVerdict::NothingToFit:
      return "No tree can shade these points on those days, so the readings tell nothing of the "
             "trees.";
    case SurveyVerdict::TooFew:
    case SurveyVerdict::Fitted:
      break;
  }
  std::string text =
      fit.values.empty()
          ? fmt::format("What is drawn fits best: {:.1f} h off at a reading.", rmsOf(fit.before))
          : fmt::format("Readings are {:.1f} h off as drawn, {:.1f} h with these trees.",
                        rmsOf(fit.before), rmsOf(fit.after));
  const auto atEnd = std::count_if(fit.values.begin(), fit.values.end(), [](const FittedValue& v) {
    return v.end != FittedValue::End::None;
  });
  if (fit.verdict == SurveyVerdict::TooFew)
    text += fmt::format(
        " {} cannot settle {}{}.", counted(readings, "reading", "readings"),
        counted(static_cast<std::size_t>(fit.unknowns), "unknown", "unknowns"),
        fit.values.empty() || atEnd > 0 ? "" : ": this is the change nearest to what is drawn");
  if (atEnd > 0)
    text += fmt::format(
        " {} to the end of what a tree can be, so that something else is likely to be amiss: a "
        "reading, a place, or a tree that is not drawn.",
        atEnd == 1 ? "One value went" : "Some values went");
  if (fit.verdict == SurveyVerdict::TooFew) text += " Add readings at other points and dates.";
  return text;
}

}  // namespace

std::vector<ReadingCompared> compareReadings(const Yard& yard) {
  SurveyModel model(yard);
  return compared(model, treesOf(yard));
}

double rmsOf(const std::vector<ReadingCompared>& compared) {
  double sum = 0.0;
  for (const ReadingCompared& each : compared) sum += each.residual() * each.residual();
  return compared.empty() ? 0.0 : std::sqrt(sum / static_cast<double>(compared.size()));
}

std::optional<SurveyFit> fitSurvey(const Yard& yard, std::stop_token stop) {
  SurveyModel model(yard);
  const std::vector<Tree> trees = treesOf(yard);
  SurveyFit result;
  result.before = result.after = compared(model, trees);
  if (!result.before.empty()) {
    const std::vector<Wanted> wanted = wantedOf(model, trees);
    result.unknowns = static_cast<int>(wanted.size());
    result.verdict = wanted.empty()                         ? SurveyVerdict::NothingToFit
                     : wanted.size() > result.before.size() ? SurveyVerdict::TooFew
                                                            : SurveyVerdict::Fitted;
    if (!wanted.empty()) fit(model, trees, wanted, stop, result);
  }
  if (stop.stop_requested()) return std::nullopt;
  if (rmsOf(result.after) >= rmsOf(result.before)) {  // rounding took what was gained
    result.values.clear();
    result.after = result.before;
  }
  result.proposal = proposalOf(yard, result.values);
  result.text = textOf(result);
  return result;
}

}  // namespace tussock
