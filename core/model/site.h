// SPDX-License-Identifier: MIT
// What lies on or under the ground, and the traced photo.
#pragma once

#include <optional>
#include <string>

#include "core/geometry/polygon.h"
#include "core/model/id.h"
#include "core/model/names.h"
#include "core/units/date.h"

namespace tussock {

struct LotLine {
  Id<LotLine> id;
  std::string name;
  Polygon outline;
  std::string foreign;

  bool operator==(const LotLine&) const = default;
};

struct Paving {
  Id<Paving> id;
  std::string name;
  Polygon outline;
  std::string foreign;

  bool operator==(const Paving&) const = default;
};

struct SteppingPlace {
  Id<SteppingPlace> id;
  Point at;
  Length radius = Length::centimetres(20);
  std::string foreign;

  bool operator==(const SteppingPlace&) const = default;
};

struct WaterPoint {
  Id<WaterPoint> id;
  std::string name;
  Point at;
  std::string foreign;

  bool operator==(const WaterPoint&) const = default;
};

struct HeightLimit {
  Id<HeightLimit> id;
  std::string name;
  Polygon outline;
  Length height = Length::inches(30);
  Length datumOffset;  // of the law's datum above the ground here
  std::string reason;
  std::string foreign;

  bool operator==(const HeightLimit&) const = default;
};

struct BuriedLine {
  Id<BuriedLine> id;
  std::string name;
  Polyline line;
  std::string kind;                          // electric, gas, water, ...
  Length handDigWidth = Length::inches(24);  // each side; 18 or 24 in by state
  std::string ticket;
  std::optional<Date> expiry;
  std::string foreign;

  bool operator==(const BuriedLine&) const = default;
};

// A picture laid under the drawing. Its bytes are kept once in the file, by content hash.
struct Photo {
  Id<Photo> id;
  std::string name;
  std::string contentHash;  // SHA-256 in hexadecimal
  int widthPixels = 0;      // as shown, orientation already applied
  int heightPixels = 0;
  Point corner;  // site position of the picture's top left corner
  double metresPerPixel = 0.05;
  Angle turn;  // anticlockwise about the corner
  double opacity = 0.7;
  bool locked = false;

  bool operator==(const Photo&) const = default;
};

// Hours of direct sun that somebody saw at a point on a day.
struct SunReading {
  Id<SunReading> id;
  Point at;
  Date day{};
  double hours = 0.0;
  std::string note;

  bool operator==(const SunReading&) const = default;
};

// A GeoJSON feature of a kind we do not know, kept to be written back.
struct ForeignFeature {
  Id<ForeignFeature> id;
  std::string json;

  bool operator==(const ForeignFeature&) const = default;
};

}  // namespace tussock
