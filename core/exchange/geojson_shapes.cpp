// SPDX-License-Identifier: MIT
#include "core/exchange/geojson_shapes.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include <fmt/format.h>

#include "core/geometry/mend.h"

namespace tussock {

namespace {

constexpr double kFarthest = 20000.0;  // metres; the tangent plane is off by centimetres there

double rounded(double degrees) {
  return std::round(degrees * 1e12) / 1e12;
}

Json positionOf(Point p, const LocalFrame& frame) {
  const auto at = frame.toGeographic(p);
  return Json::array({rounded(at.longitude), rounded(at.latitude)});
}

Json positionsOf(const Polyline& points, const LocalFrame& frame) {
  Json result = Json::array();
  for (const Point p : points) result.push_back(positionOf(p, frame));
  return result;
}

Json ringOf(const Ring& ring, const LocalFrame& frame) {
  Json result = positionsOf(ring, frame);
  if (!ring.empty()) result.push_back(result.front());
  return result;
}

Json geometry(std::string_view type, Json coordinates) {
  return {{"type", type}, {"coordinates", std::move(coordinates)}};
}

const Json& coordinatesOf(const Json& shape, std::string_view type) {
  const std::string found = geometryType(shape);
  if (found != type)
    throw FormatError(found.empty() ? fmt::format("it has no place; a {} is expected", type)
                                    : fmt::format("it is a {}; a {} is expected", found, type));
  const auto at = shape.find("coordinates");
  if (at == shape.end() || !at->is_array()) throw FormatError("its coordinates are missing");
  return *at;
}

double degreesOf(const Json& json, std::string_view what, double limit) {
  if (!json.is_number()) throw FormatError(fmt::format("its {} is not a number", what));
  const double value = json.get<double>();
  if (!(std::abs(value) <= limit))
    throw FormatError(
        fmt::format("its {} {:g} is not between -{:g} and {:g}", what, value, limit, limit));
  return value;
}

void collect(const Json& shape, std::vector<Json>& result) {
  const std::string type = geometryType(shape);
  const auto parts = shape.find(type == "GeometryCollection" ? "geometries" : "coordinates");
  if (type == "GeometryCollection" && parts != shape.end() && parts->is_array()) {
    for (const Json& part : *parts) collect(part, result);
  } else if (type.starts_with("Multi") && parts != shape.end() && parts->is_array()) {
    for (const Json& part : *parts) result.push_back(geometry(type.substr(5), part));
  } else {
    result.push_back(shape);
  }
}

}  // namespace

Json geometryOf(const Polygon& polygon, const LocalFrame& frame) {
  const Polygon turned = normalised(polygon);
  Json rings = Json::array({ringOf(turned.outer, frame)});
  for (const Ring& hole : turned.holes) rings.push_back(ringOf(hole, frame));
  return geometry("Polygon", std::move(rings));
}

Json geometryOf(const Polyline& line, const LocalFrame& frame) {
  return geometry("LineString", positionsOf(line, frame));
}

Json geometryOf(Point point, const LocalFrame& frame) {
  return geometry("Point", positionOf(point, frame));
}

Point ShapeReader::position(const Json& json) const {
  if (!json.is_array() || json.size() < 2)
    throw FormatError("a position is not [longitude, latitude]");
  const double longitude = degreesOf(json[0], "longitude", 180.0);
  const double latitude = degreesOf(json[1], "latitude", 90.0);
  const Point p = frame.toSite(longitude, latitude);
  const double away = std::hypot(p.x, p.y);
  if (away > kFarthest)
    throw FormatError(
        fmt::format("it lies {:.0f} km from the yard; check the latitude and "
                    "longitude of the yard",
                    away / 1000.0));
  return p;
}

Polyline ShapeReader::positions(const Json& json) const {
  if (!json.is_array()) throw FormatError("its coordinates are not a list of positions");
  Polyline points;
  points.reserve(json.size());
  for (const Json& one : json) points.push_back(position(one));
  return points;
}

Ring ShapeReader::ring(const Json& json) {
  Ring points = positions(json);
  if (points.size() > 1 && distance(points.front(), points.back()) < 1e-6)
    points.pop_back();
  else
    mended.emplace_back("the outline was not closed; the last corner is joined to the first");
  return points;
}

void ShapeReader::read(const Json& shape, Point& point) {
  point = position(coordinatesOf(shape, "Point"));
}

void ShapeReader::read(const Json& shape, Polyline& line) {
  Polyline points = positions(coordinatesOf(shape, "LineString"));
  points.erase(std::unique(points.begin(), points.end()), points.end());
  if (points.size() < 2) throw FormatError("a line needs two different points");
  line = std::move(points);
}

void ShapeReader::read(const Json& shape, Polygon& polygon) {
  const Json& rings = coordinatesOf(shape, "Polygon");
  Polygon result;
  for (std::size_t i = 0; i < rings.size(); ++i)
    (i == 0 ? result.outer : result.holes.emplace_back()) = ring(rings[i]);
  result = normalised(std::move(result));
  if (invalidityOf(result)) return takeMended(result, polygon);
  polygon = std::move(result);
}

void ShapeReader::takeMended(const Polygon& drawn, Polygon& polygon) {
  auto result = tussock::mended(drawn);
  if (!result)
    throw FormatError(std::string(explain(invalidityOf(drawn).value())) +
                      "; mend it where it was drawn, and import that one again");
  for (const Mend mend : result->done) mended.emplace_back(explain(mend));
  polygon = std::move(result->pieces.front());
  furtherPieces.assign(std::make_move_iterator(result->pieces.begin() + 1),
                       std::make_move_iterator(result->pieces.end()));
}

std::vector<Json> singleGeometries(const Json& shape) {
  std::vector<Json> result;
  collect(shape, result);
  return result;
}

std::string geometryType(const Json& shape) {
  if (!shape.is_object()) return {};
  const auto at = shape.find("type");
  return at != shape.end() && at->is_string() ? at->get<std::string>() : std::string{};
}

}  // namespace tussock
