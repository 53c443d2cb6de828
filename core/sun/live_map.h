// SPDX-License-Identifier: MIT
// A sun map that follows a yard from edit to edit, for dragging: when a solid is moved, raised or
// widened, only the rows of cells that its shadow left or entered are counted again, step by step.
#pragma once

#include <memory>
#include <optional>
#include <stop_token>

#include "core/sun/map.h"

namespace tussock {

// Coarse enough to follow the pointer: the season, without its months, over the same ground as
// seasonRequest, cells of 0.25 m or more, 15 minutes.
[[nodiscard]] SunMapRequest previewRequest(const Yard& yard);

class LiveSunMap {
 public:
  explicit LiveSunMap(SunMapRequest request);
  ~LiveSunMap();
  LiveSunMap(LiveSunMap&&) noexcept;
  LiveSunMap& operator=(LiveSunMap&&) noexcept;

  // The map of the yard, equal to what computeSunMap gives. The first is computed whole, on
  // two threads where there are two cores; so is one after a change of place, season, slope,
  // skyline or leaf dates, or of how many things cast shade. Throws as computeSunMap does. Returns
  // nothing when stopped.
  [[nodiscard]] std::optional<SunMap> update(const Yard& yard, std::stop_token stop = {});
  // What the last update counted again: solids, or all of them when it was computed whole.
  enum class Work { Whole, ChangedSolids };
  [[nodiscard]] Work lastWork() const;

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace tussock
