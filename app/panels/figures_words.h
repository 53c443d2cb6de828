// SPDX-License-Identifier: MIT
// The figures of a mix in words. Species that share a common name are told apart.
#pragma once

#include <QString>
#include <vector>

#include "core/planting/bed_mix.h"

namespace tussock {

// "15 %", to the whole percent, on one line.
[[nodiscard]] QString percentWords(double share);
// "Asteraceae 48 %, Poaceae 30 %, 5 more"
[[nodiscard]] QString sharesWords(const std::vector<NamedShare>& shares, std::size_t most);
// "12 species; Shannon 2.31, Simpson 0.88, evenness 0.93"
[[nodiscard]] QString diversityWords(const Diversity& diversity);
// "ground 10 %, front 40 %, middle 50 %"
[[nodiscard]] QString bandsWords(const PlantFigures& figures);
[[nodiscard]] QString hostWords(const PlantFigures& figures, const Catalogue& facts);
// Weeks of the season with nectar: "24 of 30 weeks of the season".
[[nodiscard]] QString nectarWords(const PlantFigures& figures, WeekSet season);
// "Complementary for 5 weeks: wild bergamot, black-eyed Susan"; up to `most`, one to a line.
[[nodiscard]] QString colourWords(const std::vector<ColourPair>& pairs, const Catalogue& facts,
                                  std::size_t most);

}  // namespace tussock
