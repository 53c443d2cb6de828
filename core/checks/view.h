// SPDX-License-Identifier: MIT
// What people beside a bed see of its plants. Eyes are at standing height, a step outside the edge;
// a plant in front hides what lies under the line from the eyes over its top. Plants are taken at
// their design height, the middle of the range in flower, and half their spread to each side.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/checks/survey.h"

namespace tussock {

struct SightLimits {
  double eyeHeight, viewingDistance, tallerBy, hidesWithin;  // metres
  double seeThrough;                                         // share
};
[[nodiscard]] SightLimits sightLimits(const Survey& survey);

// One plant of the main layer.
struct Standing {
  Point at;
  double height = 0.0;      // metres
  double halfSpread = 0.0;  // metres
  bool seeThrough = false;  // grasses, plumes and spires: one looks between their stems
  const SurveyedDrift* drift = nullptr;
};

// From one plant towards the people who look at it.
struct Sight {
  Point towards;        // unit vector
  double toEdge = 0.0;  // metres to the edge of the bed
  double toEyes = 0.0;  // metres to the eyes
};

// A side from which a bed is looked at, or its nearest edge when it is seen all round.
class Viewpoint {
 public:
  Viewpoint(const Bed& bed, std::optional<Angle> side) : bed_(bed), side_(side) {}

  [[nodiscard]] Sight sightOf(Point plant, const SightLimits& limits) const;
  // Across the lines of sight where they are parallel, else east.
  [[nodiscard]] Point axis() const;
  [[nodiscard]] std::string name() const;  // as parseViewing reads it

 private:
  [[nodiscard]] double distanceOut(Point plant, Point towards) const;
  const Bed& bed_;
  std::optional<Angle> side_;
};
[[nodiscard]] std::vector<Viewpoint> viewpointsOf(const Bed& bed);

// The plants of a bed in order along the viewpoint's axis, so that those near a line of sight are
// found quickly.
class Lineup {
 public:
  Lineup(const SurveyedBed& bed, const Viewpoint& viewpoint);

  [[nodiscard]] const std::vector<Standing>& plants() const { return plants_; }
  [[nodiscard]] double tallest() const { return tallest_; }
  // All that may stand in the line of sight, and some that do not.
  [[nodiscard]] std::span<const Standing> between(const Standing& rear, const Sight& sight) const;

 private:
  Point axis_;
  std::vector<Standing> plants_;
  std::vector<double> along_;
  double tallest_ = 0.0;
  double widest_ = 0.0;
};

// The share of the rear plant's height that the front one hides, 0 to 1; 0 unless it is taller.
[[nodiscard]] double hiddenShare(const Standing& rear, const Standing& front, const Sight& sight,
                                 const SightLimits& limits);

}  // namespace tussock
