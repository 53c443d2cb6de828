// SPDX-License-Identifier: MIT
#include <map>

#include "core/checks/checks.h"

namespace tussock {

std::vector<Finding> checkUnknownSpecies(const Survey& survey) {
  std::map<std::string, Finding> byName;
  for (const SurveyedBed& bed : survey.beds)
    for (const SurveyedDrift& drift : bed.drifts) {
      if (drift.species != nullptr) continue;
      Finding& finding = byName[drift.drift->species];
      finding.check = CheckId::UnknownSpecies;
      finding.unit = Quantity::Count;
      finding.thresholdId = "unknown_plants";
      finding.measured += static_cast<double>(drift.drift->plants.size());
      finding.about = drift.drift->species;
      // Of the first drift only: a finding accepted stays so when the species is planted again.
      if (finding.subjects.empty()) finding.subjects = {refTo(drift.drift->id)};
      finding.place.push_back(placeAround(drift));
    }
  const double most = survey.limit("unknown_plants");
  std::vector<Finding> findings;
  for (auto& [name, finding] : byName) {
    finding.required = most;
    if (finding.measured > most) findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace tussock
