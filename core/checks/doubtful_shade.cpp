// SPDX-License-Identifier: MIT
#include "core/checks/checks.h"
#include "core/sun/shade_problems.h"

namespace tussock {

std::vector<Finding> checkDoubtfulShade(const Survey& survey) {
  std::vector<Finding> findings;
  if (survey.limit("doubtful_shade") >= 1.0) return findings;
  for (const ShadeProblem& problem : shadeProblems(survey.yard)) {
    Finding finding;
    finding.check = CheckId::DoubtfulShade;
    finding.severity = problem.asDrawn ? Severity::Hint : Severity::Caution;
    finding.subjects = {problem.about};
    finding.unit = Quantity::Count;
    finding.measured = 1.0;
    finding.thresholdId = "doubtful_shade";
    if (isFinite(problem.at))
      finding.place = {placeAround(Box{problem.at, problem.at}, Length::metres(1.0))};
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace tussock
