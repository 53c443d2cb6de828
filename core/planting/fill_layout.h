// SPDX-License-Identifier: MIT
// Where drifts lie to each other and to the people who look, whatever grows in them: the places a
// fill hands out, or the drifts of a bed that is planted.
#pragma once

#include <array>
#include <vector>

#include "core/planting/fill_ground.h"

namespace tussock {

// One place for a drift.
struct Spot {
  std::vector<FillCell> samples;  // points spread over it
  Point middle;
  double area = 0.0;                 // square metres
  double depth = 0.5;                // share of the bed that lies nearer to the viewers
  double hours = -1.0;               // mean of sun; below 0 where not known
  std::array<double, 4> moisture{};  // shares of it by Moisture
  double edge = 0.0;                 // share of it along the edge that people look from
  std::size_t part = 0;              // of the bed, see Layout::parts
};

// The rear spot is seen past the front one.
struct SightLine {
  std::size_t other = 0;
  double share = 0.0;   // of the rear spot's samples that the front one stands before
  double ahead = 0.0;   // metres between them, mean
  double toEyes = 0.0;  // metres from the rear one, mean
};

struct NearSpot {
  std::size_t other = 0;
  double distance = 0.0;  // metres between the middles
};

struct Layout {
  std::vector<Spot> spots;
  std::vector<std::vector<NearSpot>> near;         // the two dozen nearest of each spot
  std::vector<std::vector<std::size_t>> touching;  // for each spot
  std::vector<std::vector<SightLine>> inFront;     // for each rear spot
  std::vector<std::vector<SightLine>> behind;      // for each front spot
  std::size_t parts = 1;                           // lengths of the bed
  bool viewed = false;                             // from where it is looked at is known
};

using TouchingPairs = std::vector<std::pair<std::size_t, std::size_t>>;

// `samples` and `areas` for each spot.
[[nodiscard]] Layout layoutOf(const Bed& bed, std::vector<std::vector<FillCell>> samples,
                              const std::vector<double>& areas, const TouchingPairs& touching,
                              const SightLimits& limits);

}  // namespace tussock
