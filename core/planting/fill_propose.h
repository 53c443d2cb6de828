// SPDX-License-Identifier: MIT
// Which species of those that suit a bed a proposed list names: as many as the bed takes in drifts
// worth the name, in flower one after another, and none bound to be more than its share.
#pragma once

#include <vector>

#include "core/planting/fill_choose.h"

namespace tussock {

struct ProposeRequest {
  const std::vector<FillCell>& cells;
  ChooseRequest choose;           // its count is found here
  std::vector<FillKind> beneath;  // that flower under and between the main layer
  std::vector<WeekSet> thirds;    // of the season
  double standing = 0.0;          // plants of the main layer that the yard keeps
  unsigned seed = 0;
};
[[nodiscard]] std::vector<FillKind> proposeKinds(const std::vector<FillKind>& kinds,
                                                 const ProposeRequest& request);

// Plants that so much ground takes of these, as many of each.
[[nodiscard]] double plantsOn(double squareMetres, const std::vector<FillKind>& kinds);

}  // namespace tussock
