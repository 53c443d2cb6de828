// SPDX-License-Identifier: MIT
// Shapes as GeoJSON geometry and back.
#pragma once

#include <vector>

#include "core/exchange/field_json.h"
#include "core/exchange/geojson.h"

namespace tussock {

// Rings closed, outer ones anticlockwise, holes clockwise (RFC 7946, 3.1.6); degrees rounded to
// 1e-12, about a ten-thousandth of a millimetre.
[[nodiscard]] Json geometryOf(const Polygon& polygon, const LocalFrame& frame);
[[nodiscard]] Json geometryOf(const Polyline& line, const LocalFrame& frame);
[[nodiscard]] Json geometryOf(Point point, const LocalFrame& frame);

// A shape as read, with a note of what had to be mended, if anything.
struct ShapeReader {
  const LocalFrame& frame;
  std::vector<std::string> mended = {};
  std::vector<Polygon> furtherPieces = {};  // of a polygon that fell apart when it was mended

  // These throw FormatError with the reason when the geometry is no such shape, or lies so far from
  // the yard that it cannot belong to it.
  void read(const Json& geometry, Point& point);
  void read(const Json& geometry, Polyline& line);
  void read(const Json& geometry, Polygon& polygon);

 private:
  [[nodiscard]] Point position(const Json& json) const;
  [[nodiscard]] Polyline positions(const Json& json) const;
  [[nodiscard]] Ring ring(const Json& json);
  void takeMended(const Polygon& drawn, Polygon& polygon);
};

// The single shapes of a Multi… geometry or a collection; a single geometry is itself.
[[nodiscard]] std::vector<Json> singleGeometries(const Json& geometry);
[[nodiscard]] std::string geometryType(const Json& geometry);  // empty when it has none

}  // namespace tussock
