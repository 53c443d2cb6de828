// SPDX-License-Identifier: MIT
#include "core/sun/survey_model.h"

#include <algorithm>
#include <cmath>

#include "core/sun/shade.h"
#include "core/sun/survey_reading.h"

namespace tussock {

namespace {

constexpr int kStepMinutes = 2;
constexpr std::size_t kMostVersions = 4;

std::vector<double> sharesAt(Point p, MonthDay day, const std::vector<SunStep>& steps,
                             const Solids& solids) {
  std::vector<double> result;
  std::vector<Shadow> shadows;
  for (const SunStep& step : steps) {
    castShadows(solids, step.sun, day, shadows);
    result.push_back(directShare(shadows, p));
  }
  return result;
}

}  // namespace

SurveyModel::SurveyModel(const Yard& yard) : settings_(yard.settings) {
  versions_.resize(yard.trees.size());
  Yard treeless = yard;
  treeless.trees = {};
  const Solids solids = solidsOf(treeless);
  for (const SunReading& reading : yard.sunReadings) {
    if (readingProblem(reading, settings_)) continue;
    readings_.push_back(reading);
    Sight sight;
    sight.at = reading.at;
    sight.day = MonthDay(reading.day.month(), reading.day.day());
    sight.steps =
        stepsOf(reading.day, settings_.latitude, settings_.longitude, kStepMinutes, solids.horizon);
    sight.share = sharesAt(sight.at, sight.day, sight.steps, solids);
    sights_.push_back(std::move(sight));
  }
}

const SurveyModel::Version& SurveyModel::versionOf(std::size_t index, const Tree& tree) {
  std::vector<Version>& versions = versions_[index];
  const auto known = std::find_if(versions.begin(), versions.end(),
                                  [&](const Version& version) { return version.tree == tree; });
  if (known != versions.end()) return *known;
  Yard alone;
  alone.settings = settings_;
  alone.trees = alone.trees.with(tree);
  const Solids solids = solidsOf(alone);
  Version version{tree, {}};
  for (const Sight& sight : sights_)
    version.share.push_back(sharesAt(sight.at, sight.day, sight.steps, solids));
  if (versions.size() == kMostVersions) versions.erase(versions.begin());
  versions.push_back(std::move(version));
  return versions.back();
}

std::vector<double> SurveyModel::hours(const std::vector<Tree>& trees) {
  std::vector<std::vector<double>> share;
  for (const Sight& sight : sights_) share.push_back(sight.share);
  for (std::size_t i = 0; i < trees.size(); ++i) {
    const Version& version = versionOf(i, trees[i]);
    for (std::size_t k = 0; k < share.size(); ++k)
      for (std::size_t s = 0; s < share[k].size(); ++s) share[k][s] *= version.share[k][s];
  }
  std::vector<double> result;
  for (std::size_t k = 0; k < share.size(); ++k) {
    double sum = 0.0;
    for (std::size_t s = 0; s < share[k].size(); ++s)
      sum += share[k][s] * sights_[k].steps[s].hours;
    result.push_back(sum);
  }
  return result;
}

}  // namespace tussock
