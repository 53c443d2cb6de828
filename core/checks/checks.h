// SPDX-License-Identifier: MIT
// The checks, one file each; the registry lists them. They are pure: the same survey gives the same
// findings, in no particular order.
#pragma once

#include <vector>

#include "core/checks/survey.h"

namespace tussock {

// Within a layer two plants of spacings a and b stand at least 0.85 (a+b)/2 apart, plants of
// different layers 0.12 m. One finding for a drift or a pair of drifts, with the worst distance.
[[nodiscard]] std::vector<Finding> checkSpacing(const Survey& survey, const SurveyedBed& bed);
// The same between beds that touch.
[[nodiscard]] std::vector<Finding> checkSpacingAcross(const Survey& survey);

// Every centre is inside its bed by the set-back, or by half the plant's spacing if that is more.
[[nodiscard]] std::vector<Finding> checkSetBack(const Survey& survey, const SurveyedBed& bed);

// A new drift of the main layer has an odd number of plants.
[[nodiscard]] std::vector<Finding> checkOddCount(const Survey& survey, const SurveyedBed& bed);

// The plants of a new drift hang together, but for single plants and a matrix: each is reached from
// each over gaps under 1.3 spacings.
[[nodiscard]] std::vector<Finding> checkPieces(const Survey& survey, const SurveyedBed& bed);

// A drift gets, on the mean of its plants, the hours of sun its species asks for.
[[nodiscard]] std::vector<Finding> checkSunNeed(const Survey& survey, const SurveyedBed& bed);

// No taller drift hides more than half of a lower one from the people who look at the bed.
[[nodiscard]] std::vector<Finding> checkHeightOrder(const Survey& survey, const SurveyedBed& bed);

// No species, genus or family is more than its share of the yard's main layer (Santamour 1990).
[[nodiscard]] std::vector<Finding> checkSpeciesShare(const Survey& survey);
[[nodiscard]] std::vector<Finding> checkGenusShare(const Survey& survey);
[[nodiscard]] std::vector<Finding> checkFamilyShare(const Survey& survey);

// Plants of a disease-prone species that touch stay fewer than 15.
[[nodiscard]] std::vector<Finding> checkDiseaseMass(const Survey& survey, const SurveyedBed& bed);

// Something is in flower through the growing season, in each bed and in the yard as a whole.
[[nodiscard]] std::vector<Finding> checkBloomGap(const Survey& survey);

// No plant stands in paving, a trunk, a building, a wall or a stepping place.
[[nodiscard]] std::vector<Finding> checkObstructed(const Survey& survey, const SurveyedBed& bed);

// The plant facts know every species planted: what is not known cannot be checked.
[[nodiscard]] std::vector<Finding> checkUnknownSpecies(const Survey& survey);

// What casts shade is drawn so that its shade is there and can be relied on (shade_problems.h).
[[nodiscard]] std::vector<Finding> checkDoubtfulShade(const Survey& survey);

// No two beds share more than a hundredth of the smaller one's ground.
[[nodiscard]] std::vector<Finding> checkSharedGround(const Survey& survey);

}  // namespace tussock
