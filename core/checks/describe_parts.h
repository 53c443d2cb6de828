// SPDX-License-Identifier: MIT
// The words for each check; describe() picks among them. Each gives title and text.
#pragma once

#include "core/checks/describe.h"
#include "core/checks/wording.h"

namespace tussock {

[[nodiscard]] FindingText describeSpacing(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeSetBack(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeObstructed(const Finding& finding, const Wording& words);

[[nodiscard]] FindingText describePieces(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeOddCount(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeSunNeed(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeHeightOrder(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeDiseaseMass(const Finding& finding, const Wording& words);

[[nodiscard]] FindingText describeUnknownSpecies(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeDoubtfulShade(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeSharedGround(const Finding& finding, const Wording& words);

[[nodiscard]] FindingText describeShare(const Finding& finding, const Wording& words);
[[nodiscard]] FindingText describeBloom(const Finding& finding, const Wording& words,
                                        const SunMap* sun);

}  // namespace tussock
