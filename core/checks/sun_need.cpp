// SPDX-License-Identifier: MIT
#include "core/catalog/fit.h"
#include "core/checks/checks.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

// Hours are compared to a hundredth, so that a mean just at the limit passes.
constexpr double kHoursTolerance = 0.01;

struct Limits {
  double margin, alert;
};

// Too much sun can be made good by moist ground, so it is never an alert; bulbs have done their
// work before the trees are in leaf.
Severity severityOf(const Drift& drift, double lacking, double beyond, const Limits& limits) {
  if (drift.layer == Layer::Bulbs || std::max(lacking, beyond) <= limits.margin)
    return Severity::Hint;
  return lacking > limits.alert && !drift.existing() ? Severity::Alert : Severity::Caution;
}

void checkDrift(const SunMap& map, const SunProfile& profile, const Limits& limits,
                const SurveyedDrift& surveyed, std::vector<Finding>& findings) {
  if (surveyed.species == nullptr) return;
  const auto sun = sunOn(*surveyed.drift, map);
  if (!sun) return;
  const double hours = sun->total();
  const HoursRange wanted = hoursWanted(*surveyed.species, profile);
  const double lacking = wanted.least - hours, beyond = hours - wanted.most;
  if (std::max(lacking, beyond) <= kHoursTolerance) return;
  Finding finding;
  finding.check = CheckId::SunNeed;
  finding.severity = severityOf(*surveyed.drift, lacking, beyond, limits);
  finding.subjects = {refTo(surveyed.drift->id)};
  finding.place = {placeAround(surveyed)};
  finding.measured = hours;
  finding.required = lacking > 0.0 ? wanted.least : wanted.most;
  finding.unit = Quantity::Hours;
  finding.thresholdId = "sun_margin";
  finding.about = lacking > 0.0 ? "too little" : "too much";
  findings.push_back(std::move(finding));
}

}  // namespace

std::vector<Finding> checkSunNeed(const Survey& survey, const SurveyedBed& bed) {
  std::vector<Finding> findings;
  if (survey.sun == nullptr || survey.sun->empty()) return findings;
  const SunProfile& profile = sunProfile(survey.yard.settings.sunProfile);
  const Limits limits{survey.limit("sun_margin"), survey.limit("sun_alert")};
  for (const SurveyedDrift& drift : bed.drifts)
    checkDrift(*survey.sun, profile, limits, drift, findings);
  return findings;
}

}  // namespace tussock
