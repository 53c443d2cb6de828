// SPDX-License-Identifier: MIT
// What stands on the site and casts shade.
#pragma once

#include <optional>
#include <string>

#include "core/geometry/polygon.h"
#include "core/model/id.h"
#include "core/model/names.h"
#include "core/units/date.h"

namespace tussock {

enum class Roof { Flat, Gable, Hip };
template <>
struct EnumWords<Roof> {
  static constexpr WordTable<Roof, 3> values{
      {{Roof::Flat, "flat"}, {Roof::Gable, "gable"}, {Roof::Hip, "hip"}}};
};

struct Building {
  Id<Building> id;
  std::string name;
  Polygon footprint;
  Roof roof = Roof::Flat;
  Length eave = Length::metres(3.0);   // top of a flat roof
  Length ridge = Length::metres(3.0);  // equal to the eave on a flat roof
  std::optional<Angle> ridgeAzimuth;   // of the ridge line; the long side when not given
  Length base;                         // of its underside above the ground; 0 when it stands on it
  Length overhang;                     // of the roof beyond the footprint
  std::string foreign;

  bool operator==(const Building&) const = default;
};

enum class BarrierKind { Wall, Fence, Hedge };
template <>
struct EnumWords<BarrierKind> {
  static constexpr WordTable<BarrierKind, 3> values{
      {{BarrierKind::Wall, "wall"}, {BarrierKind::Fence, "fence"}, {BarrierKind::Hedge, "hedge"}}};
};

// A wall, fence or hedge: a line with a thickness, or a footprint where it is broad or uneven.
struct Barrier {
  Id<Barrier> id;
  std::string name;
  BarrierKind kind = BarrierKind::Wall;
  Polyline line;
  Length thickness = Length::centimetres(20);
  Polygon footprint;  // empty when `line` says it all
  Length height = Length::metres(1.5);
  double openness = 0.0;  // share of direct sun let through, 0 to 1
  std::string foreign;

  bool operator==(const Barrier&) const = default;
};

enum class CrownShape { Ellipsoid, Cone, Column };
template <>
struct EnumWords<CrownShape> {
  static constexpr WordTable<CrownShape, 3> values{{{CrownShape::Ellipsoid, "ellipsoid"},
                                                    {CrownShape::Cone, "cone"},
                                                    {CrownShape::Column, "column"}}};
};

struct Tree {
  Id<Tree> id;
  std::string name;
  Point at;
  Length height = Length::metres(8.0);
  Length crownRadius = Length::metres(3.0);
  Length crownBase = Length::metres(2.0);
  Length trunkDiameter = Length::centimetres(25);
  CrownShape crown = CrownShape::Ellipsoid;
  double opennessLeaf = 0.15;  // share of direct sun let through in leaf
  double opennessBare = 0.6;   // and when bare
  MonthDay leafOn{std::chrono::April, std::chrono::day{20}};
  MonthDay leafOff{std::chrono::November, std::chrono::day{1}};
  bool evergreen = false;
  Length growth;                       // of its height in a year; 0 when not told
  std::optional<Length> matureHeight;  // at which it stops
  std::string foreign;

  bool operator==(const Tree&) const = default;
};

}  // namespace tussock
