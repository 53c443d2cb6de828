// SPDX-License-Identifier: MIT
// A small invented front yard with a planted bed, and rows of drifts of any number, for whatever
// reads planting: sheets, lists, pictures.
#pragma once

#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"

namespace tussock::test {

// Nine species with made-up but likely facts.
[[nodiscard]] Catalogue smallCatalogue();
// House, walk, tree, lot line, hose bib, buried line; a long bed seen from the south with twelve
// drifts, a smaller one with three.
[[nodiscard]] Yard plantedYard();
// One bed of width x depth metres, planted in a grid of drifts of five.
[[nodiscard]] Yard griddedYard(double width, double depth, int columns, int rows);

}  // namespace tussock::test
