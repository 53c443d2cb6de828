// SPDX-License-Identifier: MIT
// Planting beds.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/model/id.h"
#include "core/model/names.h"
#include "core/model/viewing.h"

namespace tussock {

enum class Moisture { Dry, Medium, Moist, Wet };
template <>
struct EnumWords<Moisture> {
  static constexpr WordTable<Moisture, 4> values{{{Moisture::Dry, "dry"},
                                                  {Moisture::Medium, "medium"},
                                                  {Moisture::Moist, "moist"},
                                                  {Moisture::Wet, "wet"}}};
};

enum class SoilTexture { Unknown, Sand, Loam, Silt, Clay };
template <>
struct EnumWords<SoilTexture> {
  static constexpr WordTable<SoilTexture, 5> values{{{SoilTexture::Unknown, "unknown"},
                                                     {SoilTexture::Sand, "sand"},
                                                     {SoilTexture::Loam, "loam"},
                                                     {SoilTexture::Silt, "silt"},
                                                     {SoilTexture::Clay, "clay"}}};
};

// A species chosen for a bed and the share of its plants it should have (0 when left open). A
// matrix plant stands between the drifts of the others instead of in drifts of its own.
struct ListedSpecies {
  std::string species;
  double share = 0.0;
  bool matrix = false;

  bool operator==(const ListedSpecies&) const = default;
};

struct Bed {
  Id<Bed> id;
  std::string name;
  Polygon outline;
  Moisture moisture = Moisture::Medium;
  SoilTexture texture = SoilTexture::Unknown;
  std::optional<Length> setback;  // from the edge to a plant's centre; half its spacing if more
  Viewing viewing;
  std::vector<ListedSpecies> plantList;
  double wildness = 0.5;  // 0 formal: few, large, even groups; 1 natural: many, small, mixed
  std::string foreign;    // GeoJSON properties we do not know, as a JSON object, or empty

  bool operator==(const Bed&) const = default;
};

// A moist or dry part of the ground that differs from the bed around it.
struct Patch {
  Id<Patch> id;
  std::string name;
  Polygon outline;
  Moisture moisture = Moisture::Moist;
  std::string foreign;

  bool operator==(const Patch&) const = default;
};

}  // namespace tussock
