// SPDX-License-Identifier: MIT
#include "core/geometry/wkt.h"

#include <array>
#include <cctype>
#include <charconv>

namespace tussock {

namespace {

void appendNumber(std::string& out, double value) {
  std::array<char, 32> buffer{};
  const auto result = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
  out.append(buffer.data(), result.ptr);
}

void appendPoints(std::string& out, const std::vector<Point>& points, bool close) {
  out += '(';
  auto append = [&](Point p) {
    appendNumber(out, p.x);
    out += ' ';
    appendNumber(out, p.y);
  };
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (i > 0) out += ", ";
    append(points[i]);
  }
  if (close && !points.empty()) {
    out += ", ";
    append(points.front());
  }
  out += ')';
}

class Reader {
 public:
  explicit Reader(std::string_view text) : rest_(text) {}

  bool take(std::string_view token) {
    skipSpace();
    if (!rest_.starts_with(token)) return false;
    rest_.remove_prefix(token.size());
    return true;
  }
  bool done() {
    skipSpace();
    return rest_.empty();
  }
  std::optional<std::vector<Point>> points() {
    if (!take("(")) return std::nullopt;
    std::vector<Point> result;
    do {
      const auto x = number();
      const auto y = number();
      if (!x || !y) return std::nullopt;
      result.push_back({*x, *y});
    } while (take(","));
    if (!take(")")) return std::nullopt;
    return result;
  }

 private:
  std::optional<double> number() {
    skipSpace();
    double value = 0.0;
    const auto [end, error] = std::from_chars(rest_.data(), rest_.data() + rest_.size(), value);
    if (error != std::errc{} || !std::isfinite(value)) return std::nullopt;
    rest_.remove_prefix(static_cast<std::size_t>(end - rest_.data()));
    return value;
  }
  void skipSpace() {
    while (!rest_.empty() && std::isspace(static_cast<unsigned char>(rest_.front())) != 0)
      rest_.remove_prefix(1);
  }
  std::string_view rest_;
};

std::optional<Ring> takeRing(Reader& reader) {
  auto points = reader.points();
  if (!points || points->size() < 4 || points->front() != points->back()) return std::nullopt;
  points->pop_back();
  return points;
}

}  // namespace

std::string toWkt(const Polygon& polygon) {
  if (polygon.empty()) return "POLYGON EMPTY";
  std::string out = "POLYGON (";
  appendPoints(out, polygon.outer, true);
  for (const Ring& hole : polygon.holes) {
    out += ", ";
    appendPoints(out, hole, true);
  }
  return out + ")";
}

std::string toWkt(const Polyline& line) {
  if (line.empty()) return "LINESTRING EMPTY";
  std::string out = "LINESTRING ";
  appendPoints(out, line, false);
  return out;
}

std::optional<Polygon> polygonFromWkt(std::string_view text) {
  Reader reader(text);
  if (!reader.take("POLYGON")) return std::nullopt;
  if (reader.take("EMPTY")) return reader.done() ? std::optional(Polygon{}) : std::nullopt;
  if (!reader.take("(")) return std::nullopt;
  auto outer = takeRing(reader);
  if (!outer) return std::nullopt;
  Polygon result{std::move(*outer), {}};
  while (reader.take(",")) {
    auto hole = takeRing(reader);
    if (!hole) return std::nullopt;
    result.holes.push_back(std::move(*hole));
  }
  if (!reader.take(")") || !reader.done()) return std::nullopt;
  return result;
}

std::optional<Polyline> polylineFromWkt(std::string_view text) {
  Reader reader(text);
  if (!reader.take("LINESTRING")) return std::nullopt;
  if (reader.take("EMPTY")) return reader.done() ? std::optional(Polyline{}) : std::nullopt;
  auto points = reader.points();
  if (!points || !reader.done()) return std::nullopt;
  return points;
}

}  // namespace tussock
