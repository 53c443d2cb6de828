// SPDX-License-Identifier: MIT
// How the canvas shows the yard: colours, the week and year of the plants, what is switched on.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "app/look/theme.h"
#include "core/catalog/catalogue.h"
#include "core/catalog/growth.h"
#include "core/sun/survey_fit.h"
#include "core/units/date.h"
#include "core/units/measure_text.h"

namespace tussock {

class PhotoPyramid;

struct CanvasLook {
  Theme theme = currentTheme();
  Catalogue facts;
  UnitSystem units = UnitSystem::FeetInches;
  std::optional<int> week;        // 0 to 51; none: summer, with everything in flower
  std::optional<MonthDay> day{};  // of the shadows, while they are shown: decides the leaves
  GrowthYear year = GrowthYear::Mature;
  double dpr = 1.0;
  bool tracing = false;                     // over a photo: what covers ground lets it through
  std::vector<ReadingCompared> readings{};  // what is computed where the sun was seen
  bool allNames = false;                    // names in full, and every label
  // The picture of a content hash, or null.
  std::function<const PhotoPyramid*(const std::string&)> picture;
};

// How strongly ground of a kind covers what lies under it: lightly over a photo being traced.
[[nodiscard]] double cover(const CanvasLook& look, double overPhoto);

// Share of the season's size that leaves have reached in a week: a drawing aid, no measure.
[[nodiscard]] double seasonShare(const Species& species, const CanvasLook& look);

}  // namespace tussock
