// SPDX-License-Identifier: MIT
// Drifts: groups of one species, with their plants.
#pragma once

#include <string>
#include <vector>

#include "core/model/bed.h"

namespace tussock {

// What grows under and between what: the main drifts, the ground cover, bulbs gone by summer.
enum class Layer { Main, Ground, Bulbs };
template <>
struct EnumWords<Layer> {
  static constexpr WordTable<Layer, 3> values{
      {{Layer::Main, "main"}, {Layer::Ground, "ground"}, {Layer::Bulbs, "bulbs"}}};
};

enum class StockSize { Seed, Plug, Quart, Gallon, Existing };
template <>
struct EnumWords<StockSize> {
  static constexpr WordTable<StockSize, 5> values{{{StockSize::Seed, "seed"},
                                                   {StockSize::Plug, "plug"},
                                                   {StockSize::Quart, "quart"},
                                                   {StockSize::Gallon, "gallon"},
                                                   {StockSize::Existing, "existing"}}};
};

// How the plants of a drift stand to each other.
enum class Pattern { Staggered, Triangular, Square, Single, Matrix };
template <>
struct EnumWords<Pattern> {
  static constexpr WordTable<Pattern, 5> values{{{Pattern::Staggered, "staggered"},
                                                 {Pattern::Triangular, "triangular"},
                                                 {Pattern::Square, "square"},
                                                 {Pattern::Single, "single"},
                                                 {Pattern::Matrix, "matrix"}}};
};

struct Plant {
  Id<Plant> id;
  Point at;

  bool operator==(const Plant&) const = default;
};

struct Drift {
  Id<Drift> id;
  Id<Bed> bed;
  std::string species;  // botanical name, the key into the plant facts
  Layer layer = Layer::Main;
  Length spacing;  // on centre
  StockSize size = StockSize::Plug;
  Pattern pattern = Pattern::Staggered;
  bool locked = false;
  Angle axis;            // of the drift's length, anticlockwise from east
  double stretch = 3.0;  // length over width asked for
  std::vector<Plant> plants;
  std::string foreign;

  bool operator==(const Drift&) const = default;
  [[nodiscard]] bool existing() const { return size == StockSize::Existing; }
};

[[nodiscard]] std::vector<Point> positionsOf(const Drift& drift);

// One drift of an arrangement that is kept, without ids: they are given when it is chosen.
struct KeptDrift {
  std::string species;
  Layer layer = Layer::Main;
  Length spacing;
  StockSize size = StockSize::Plug;
  Pattern pattern = Pattern::Staggered;
  Angle axis;
  double stretch = 3.0;
  std::vector<Point> places;

  bool operator==(const KeptDrift&) const = default;
};

// A way of planting a bed that is kept under a name beside the one on the ground.
struct Arrangement {
  Id<Arrangement> id;
  Id<Bed> bed;
  std::string name;
  int seed = 1;           // the arrangement is made again from seed and wildness
  double wildness = 0.5;  // see Bed
  std::vector<KeptDrift> drifts;

  bool operator==(const Arrangement&) const = default;
};

// The short code that stands for a species on plans. Kept for good, so that a code is never
// given to another species after a plant has left.
struct PlanCode {
  Id<PlanCode> id;
  std::string species;
  std::string code;

  bool operator==(const PlanCode&) const = default;
};

}  // namespace tussock
