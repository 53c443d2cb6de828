// SPDX-License-Identifier: MIT
// The families of vascular plants: those of APG IV (2016) and PPG I (2016), the conifers and their
// kin, and older or narrower ones still met in books and catalogues. From memory.
#pragma once

#include <string_view>

namespace tussock {

// As botanists write it: "Asteraceae", or one of the eight old names such as "Compositae".
[[nodiscard]] bool isPlantFamily(std::string_view name);
// Whether a genus of `family` may also be met under `name`: the same, its other name (International
// Code of Nomenclature, article 18.5), or one that older or wider systems put some of it in.
[[nodiscard]] bool isFamilyNameFor(std::string_view family, std::string_view name);

}  // namespace tussock
