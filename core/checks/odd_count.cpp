// SPDX-License-Identifier: MIT
#include "core/checks/checks.h"
#include "core/planting/plant_count.h"

namespace tussock {

std::vector<Finding> checkOddCount(const Survey& survey, const SurveyedBed& bed) {
  const double shows = survey.limit("odd_up_to");
  std::vector<Finding> findings;
  for (const SurveyedDrift& surveyed : bed.drifts) {
    const std::size_t count = surveyed.drift->plants.size();
    if (!isCounted(*surveyed.drift) || count % 2 == 1) continue;
    Finding finding;
    finding.check = CheckId::OddCount;
    finding.measured = static_cast<double>(count);
    finding.required = finding.measured + 1.0;
    finding.severity = finding.measured <= shows ? Severity::Caution : Severity::Hint;
    finding.subjects = {refTo(surveyed.drift->id)};
    finding.place = {placeAround(surveyed)};
    finding.unit = Quantity::Count;
    finding.thresholdId = "odd_up_to";
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace tussock
