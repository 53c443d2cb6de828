// SPDX-License-Identifier: MIT
// Words for plants that stand where they should not.
#include <fmt/format.h>

#include "core/checks/describe_parts.h"
#include "core/sun/shade_problems.h"

namespace tussock {

FindingText describeSpacing(const Finding& finding, const Wording& words) {
  const ObjectRef a = finding.subjects.front(), b = finding.subjects.back();
  const std::string measured = words.length(finding.measured);
  const std::string asked = words.length(finding.required);
  if (a == b)
    return {"Too close together",
            sentence(fmt::format(
                "plants of {}{} stand {} apart at the closest; their spacing asks for {}. "
                "Spread the drift or take out the plants that crowd.",
                words.plant(a), words.inBed(a), measured, asked)),
            {}};
  const bool layers = finding.thresholdId == "between_layers";
  return {
      "Too close together",
      sentence(fmt::format("{} and {}{} stand {} apart at the closest; {} {}. "
                           "Move one of the drifts or take out the plants that crowd.",
                           words.plant(a), words.plant(b), words.inBed(a), measured,
                           layers ? "plants of two layers need" : "their spacings ask for", asked)),
      {}};
}

FindingText describeSetBack(const Finding& finding, const Wording& words) {
  const ObjectRef drift = finding.subjects.front(), bed = finding.subjects.back();
  const bool one = finding.plants.size() == 1;
  if (finding.measured < 0.0)
    return {"Outside the bed",
            sentence(fmt::format(
                "{} of {} {} outside {}, up to {} beyond its edge. Move {} in or draw "
                "the bed larger.",
                plants(finding.plants.size()), words.plant(drift), one ? "stands" : "stand",
                words.bedName(bed), words.length(-finding.measured), one ? "it" : "them")),
            {}};
  return {"Too near the edge",
          sentence(fmt::format("{}{} stands {} from the edge at the nearest; {} are asked, so that "
                               "it does not hang over. Move it in.",
                               words.plant(drift), words.inBed(drift),
                               words.length(finding.measured), words.length(finding.required))),
          {}};
}

FindingText describeObstructed(const Finding& finding, const Wording& words) {
  const ObjectRef drift = finding.subjects.front(), obstacle = finding.subjects.back();
  const bool inside = finding.measured < 0.0;
  const bool one = finding.plants.size() == 1;
  return {
      inside ? "No ground to plant in" : "Too near something solid",
      sentence(fmt::format("{} of {}{} {} {} {}. Move {}, or draw the place anew if it is not "
                           "there.",
                           plants(finding.plants.size()), words.plant(drift), words.inBed(drift),
                           one ? "stands" : "stand", inside ? "in" : "too near",
                           words.obstacle(obstacle), one ? "it" : "them")),
      {}};
}

FindingText describeSharedGround(const Finding& finding, const Wording& words) {
  return {"Ground in two beds",
          sentence(fmt::format("{} and {} share ground, {} of the smaller: it would be planted and "
                               "counted twice. Draw their edges apart, or make them one bed.",
                               words.bedName(finding.subjects.front()),
                               words.bedName(finding.subjects.back()), percent(finding.measured))),
          {}};
}

FindingText describeDoubtfulShade(const Finding& finding, const Wording& words) {
  const ObjectRef about = finding.subjects.front();
  for (const ShadeProblem& problem : shadeProblems(words.yard()))
    if (problem.about == about)
      return {problem.asDrawn ? "Unusual shade" : "Shade missing or in doubt",
              sentence(problem.subject) + problem.trouble,
              {}};
  return {"Shade in doubt", "What was found here is drawn otherwise by now.", {}};
}

}  // namespace tussock
