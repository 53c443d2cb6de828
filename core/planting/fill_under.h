// SPDX-License-Identifier: MIT
// How many ground covers and bulbs go under and between the main layer.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/planting/fill_list.h"

namespace tussock {

// Plants of the layer to so many of the main one: as many of all plants of the bed as the list
// says. What it leaves open is little, as every plant is paid for and the main layer closes by
// itself: carpets where they show, and clumps of bulbs and spring ephemerals, which leave bare
// ground when they go (our own judgement).
[[nodiscard]] double plantsUnder(const FillList& list, Layer layer, double main);

// How `plants` of the layer are dealt to its species: by the shares that are asked for, else alike;
// beside species that ask for one, a group of three of each that does not.
[[nodiscard]] std::map<std::string, double> plantsOfEach(const std::vector<FillKind>& kinds,
                                                         double plants);

}  // namespace tussock
