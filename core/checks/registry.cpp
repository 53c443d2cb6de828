// SPDX-License-Identifier: MIT
#include "core/checks/registry.h"

#include <algorithm>
#include <array>

#include "core/checks/checks.h"
#include "core/checks/kept_findings.h"

namespace tussock {

namespace {

constexpr std::array<CheckEntry, EnumWords<CheckId>::values.size()> kChecks{{
    {CheckId::Spacing, "Spacing between plants", checkSpacing, checkSpacingAcross},
    {CheckId::SetBack, "Set-back from the edge", checkSetBack, nullptr},
    {CheckId::OddCount, "Odd number in a drift", checkOddCount, nullptr},
    {CheckId::SunNeed, "Hours of sun", checkSunNeed, nullptr},
    {CheckId::HeightOrder, "Height order", checkHeightOrder, nullptr},
    {CheckId::SpeciesShare, "Share of one species", nullptr, checkSpeciesShare},
    {CheckId::GenusShare, "Share of one genus", nullptr, checkGenusShare},
    {CheckId::FamilyShare, "Share of one family", nullptr, checkFamilyShare},
    {CheckId::DiseaseMass, "Mass of a disease-prone species", checkDiseaseMass, nullptr},
    {CheckId::BloomGap, "Flowers through the season", nullptr, checkBloomGap},
    {CheckId::Obstructed, "Room to stand", checkObstructed, nullptr},
    {CheckId::UnknownSpecies, "Species with facts", nullptr, checkUnknownSpecies},
    {CheckId::DoubtfulShade, "Shade that can be relied on", nullptr, checkDoubtfulShade},
    {CheckId::SharedGround, "Beds apart", nullptr, checkSharedGround},
    {CheckId::Pieces, "Drift in one piece", checkPieces, nullptr},
}};

void addAll(std::vector<Finding>& all, std::vector<Finding> more) {
  std::move(more.begin(), more.end(), std::back_inserter(all));
}

}  // namespace

std::span<const CheckEntry> allChecks() {
  return kChecks;
}

std::vector<Finding> runCheck(CheckId id, const CheckInput& input) {
  const Survey survey = surveyOf(input);
  std::vector<Finding> findings;
  for (const CheckEntry& check : kChecks) {
    if (check.id != id) continue;
    if (check.ofYard != nullptr) addAll(findings, check.ofYard(survey));
    if (check.ofBed != nullptr)
      for (const SurveyedBed& bed : survey.beds) addAll(findings, check.ofBed(survey, bed));
  }
  return findings;
}

std::optional<std::vector<Finding>> runChecks(const CheckInput& input, std::stop_token stop) {
  const std::shared_ptr<const SunMap> sun(std::shared_ptr<void>(), input.sun);  // owns nothing
  return KeptFindings().run(input.yard, input.facts, sun, stop);
}

const Acceptance* acceptanceOf(const Yard& yard, const Finding& finding) {
  if (yard.acceptances.empty()) return nullptr;
  const std::string key = keyOf(finding);
  for (const Acceptance& acceptance : yard.acceptances)
    if (acceptance.findingKey == key) return &acceptance;
  return nullptr;
}

}  // namespace tussock
