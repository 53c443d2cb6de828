// SPDX-License-Identifier: MIT
// Plants spread evenly over the ground that a drift has.
#pragma once

#include <vector>

#include "core/planting/ground.h"
#include "core/planting/own_form.h"

namespace tussock {

// `count` places, or fewer where there is no free ground at all, on as much of the free ground
// nearest the form's places as so many plants take in a triangular pattern: the form itself, or a
// little beyond it on all sides. Even (centroidal Voronoi cells, Du, Faber and Gunzburger 1999) and
// pushed apart, but not yet held to the rules. Measured along the ground.
[[nodiscard]] std::vector<Point> spreadOver(const Ground& ground, const OwnForm& form,
                                            Length spacing, int count);

}  // namespace tussock
