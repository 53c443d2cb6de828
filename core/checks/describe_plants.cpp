// SPDX-License-Identifier: MIT
// Words for drifts that do not suit their place, their number or their neighbours.
#include <algorithm>

#include <fmt/format.h>

#include "core/catalog/fit.h"
#include "core/checks/describe_parts.h"

namespace tussock {

namespace {

double distanceBetween(const Drift* a, const Drift* b) {
  double nearest = 1e300;
  if (a == nullptr || b == nullptr) return 0.0;
  for (const Plant& p : a->plants)
    for (const Plant& q : b->plants) nearest = std::min(nearest, squaredDistance(p.at, q.at));
  return std::sqrt(nearest);
}

// "from the south", or "from the nearest edge" of a bed seen all round.
std::string fromWhere(const std::string& side) {
  const auto viewing = parseViewing(side);
  if (!viewing || viewing->allRound) return "from the nearest edge";
  return "from " + describeViewing(*viewing);
}

}  // namespace

FindingText describeOddCount(const Finding& finding, const Wording& words) {
  const ObjectRef drift = finding.subjects.front();
  const double count = finding.measured;
  return {"Even number",
          sentence(fmt::format("{}{} has {:.0f} plants. Take one away or add one: {:.0f} or {:.0f} "
                               "look less set.",
                               words.plant(drift), words.inBed(drift), count, count - 1.0,
                               count + 1.0)),
          {}};
}

FindingText describePieces(const Finding& finding, const Wording& words) {
  const ObjectRef drift = finding.subjects.front();
  const bool one = finding.measured < 1.5;
  return {
      "In pieces",
      fmt::format("{:.0f} plant{} of {}{} stand{} apart from the rest of {} drift. Move {} back, "
                  "settle the drift, or split it in two.",
                  finding.measured, one ? "" : "s", words.plant(drift), words.inBed(drift),
                  one ? "s" : "", one ? "its" : "their", one ? "it" : "them"),
      {}};
}

FindingText describeSunNeed(const Finding& finding, const Wording& words) {
  const ObjectRef drift = finding.subjects.front();
  const bool little = finding.measured < finding.required;
  const std::string fact =
      fmt::format("{}{} gets {} of sun a day and asks for {} {:g} hours.", words.plant(drift),
                  words.inBed(drift), hours(finding.measured), little ? "at least" : "at most",
                  finding.required);
  return {
      little ? "Too little sun" : "Too much sun",
      sentence(fact) + (little ? " Move it where the sun reaches longer, or choose a plant that "
                                 "grows in more shade."
                               : " Move it into more shade, or keep its ground moist."),
      {}};
}

FindingText describeHeightOrder(const Finding& finding, const Wording& words) {
  const ObjectRef rear = finding.subjects.front(), front = finding.subjects.back();
  const std::string side = fromWhere(finding.about);
  const double apart = distanceBetween(words.drift(rear), words.drift(front));
  return {
      "Hidden " + side,
      sentence(fmt::format("{}{} stands {} in front of {} and hides {} of its height {}. Move it "
                           "back or swap the two.",
                           words.plant(front), words.inBed(front), words.length(apart),
                           words.plant(rear), percent(finding.measured), side)),
      {}};
}

FindingText describeDiseaseMass(const Finding& finding, const Wording& words) {
  const ObjectRef drift = finding.subjects.front();
  const Species* species = words.facts().find(finding.about);
  const std::string note = species != nullptr && species->diseaseProne()
                               ? fmt::format(" (recorded: {})", species->diseaseNote)
                               : "";
  return {
      "One large mass",
      sentence(fmt::format("{:.0f} plants of {}{} touch one another, and disease passes along a "
                           "mass{}. Part them with other plants, or keep fewer than "
                           "{:.0f} together.",
                           finding.measured, words.species(finding.about), words.inBed(drift), note,
                           finding.required)),
      {}};
}

FindingText describeUnknownSpecies(const Finding& finding, const Wording& words) {
  const ObjectRef drift = finding.subjects.front();
  return {"Species without facts",
          fmt::format("The plant facts do not know “{}”{}, so the sun, height, bloom and family of "
                      "{} are not checked. Check the spelling, or plant a species that is known.",
                      finding.about, words.inBed(drift),
                      plants(static_cast<std::size_t>(finding.measured))),
          {}};
}

}  // namespace tussock
