// SPDX-License-Identifier: MIT
// What both plain planters need: where plants may stand, and drifts made of what stands there.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"
#include "core/planting/grow.h"
#include "tests/bench/fill/planters.h"

namespace tussock::bench {

struct Planting {
  Point at;
  std::size_t species = 0;
};

// Takes plants one after the other as long as they keep set-back and least distance.
class BaselineGround {
 public:
  explicit BaselineGround(const PlantingJob& job);

  [[nodiscard]] bool takes(Point p, std::size_t species) const;
  void plant(Point p, std::size_t species) { plantings_.push_back({p, species}); }
  [[nodiscard]] const std::vector<Planting>& plantings() const { return plantings_; }
  [[nodiscard]] const Box& box() const { return box_; }
  [[nodiscard]] double spacing(std::size_t species) const;
  [[nodiscard]] double meanSpacing() const;

  // The yard with the plants in drifts: those of a species that touch are one.
  [[nodiscard]] Yard planted() const;

 private:
  [[nodiscard]] std::vector<std::vector<std::size_t>> groups() const;
  const PlantingJob& job_;
  const Bed& bed_;
  Box box_;
  std::vector<Planting> plantings_;
};

}  // namespace tussock::bench
