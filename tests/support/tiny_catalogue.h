// SPDX-License-Identifier: MIT
// A dozen species with round numbers, so that a test can be worked out by hand.
#pragma once

#include "core/catalog/catalogue.h"

namespace tussock::test {

// Heights are exact (low = high). All grow in medium ground; "Zizia aurea" in moist ground too.
[[nodiscard]] Catalogue tinyCatalogue();

inline constexpr auto kBergamot = "Monarda fistulosa";        // 1.0 m, June-August, mildew
inline constexpr auto kBluestem = "Schizachyrium scoparium";  // 0.8 m, a grass
inline constexpr auto kConeflower = "Rudbeckia fulgida";      // 0.6 m, July-September
inline constexpr auto kJoePye = "Eutrochium purpureum";       // 2.0 m, July-September
inline constexpr auto kAlexanders = "Zizia aurea";            // 0.5 m, April-June
inline constexpr auto kAster = "Symphyotrichum laeve";        // 0.8 m, August-October
inline constexpr auto kGoldenrod = "Solidago caesia";         // 0.7 m, September-October
inline constexpr auto kBlazingStar = "Liatris spicata";       // 1.5 m, a spire
inline constexpr auto kFoamflower = "Tiarella cordifolia";    // 0.3 m, shade, April-May
inline constexpr auto kSedge = "Carex pensylvanica";          // 0.2 m, ground
inline constexpr auto kSpringBeauty = "Claytonia virginica";  // 0.1 m, a bulb, full sun

}  // namespace tussock::test
