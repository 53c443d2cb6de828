// SPDX-License-Identifier: MIT
#include "core/sun/roof_plan.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/geometry/overlay.h"
#include "core/sun/convex_pieces.h"
#include "core/sun/pitched_roof.h"

namespace tussock {

namespace {

constexpr double kAside = 1e-3;  // metres from a line at which the roof's slope is felt for
constexpr double kBend = 1e-6;   // metres: less is one plane
constexpr double kTiny = 1e-6;   // metres

// What of a convex ring lies left of the line from a through b.
Ring leftOf(const Ring& ring, Point a, Point b) {
  Ring result;
  for (std::size_t i = 0, n = ring.size(); i < n; ++i) {
    const Point p = ring[i], q = ring[(i + 1) % n];
    const double dp = cross(b - a, p - a), dq = cross(b - a, q - a);
    if (dp >= 0.0) result.push_back(p);
    if ((dp > 0.0 && dq < 0.0) || (dp < 0.0 && dq > 0.0))
      result.push_back(p + (q - p) * (dp / (dp - dq)));
  }
  return result;
}

Ring overlapOf(Ring ring, const Ring& other) {
  for (std::size_t i = 0, n = other.size(); i < n && ring.size() > 2; ++i)
    ring = leftOf(ring, other[i], other[(i + 1) % n]);
  return ring.size() > 2 ? ring : Ring();
}

// The ground in cells over which both roofs are planes.
std::vector<Ring> cellsOf(const Ring& ground, const RoofPart& one, const RoofPart& other) {
  std::vector<Ring> cells{ground};
  for (const RoofPart* part : {&one, &other})
    for (const auto& [a, b] : part->roof.creases()) {
      std::vector<Ring> halves;
      for (const Ring& cell : cells)
        for (const Ring& half : {leftOf(cell, a, b), leftOf(cell, b, a)})
          if (half.size() > 2) halves.push_back(half);
      cells = std::move(halves);
    }
  return cells;
}

// Where two planes meet within a cell.
std::optional<RoofLine> meetingIn(const Ring& cell, const RoofPart& one, const RoofPart& other) {
  std::vector<Point> ends;
  const auto above = [&](Point p) { return one.roof.heightAt(p) - other.roof.heightAt(p); };
  for (std::size_t i = 0, n = cell.size(); i < n; ++i) {
    const Point p = cell[i], q = cell[(i + 1) % n];
    const double dp = above(p), dq = above(q);
    if (std::abs(dp) < kTiny)
      ends.push_back(p);
    else if (std::abs(dq) >= kTiny && dp * dq < 0.0)
      ends.push_back(p + (q - p) * (dp / (dp - dq)));
  }
  if (ends.size() != 2) return std::nullopt;
  return RoofLine{ends[0], ends[1]};
}

void addMeetings(const RoofPart& one, const RoofPart& other, std::vector<RoofLine>& lines) {
  for (const Ring& a : one.pieces)
    for (const Ring& b : other.pieces)
      if (const Ring ground = overlapOf(a, b); !ground.empty())
        for (const Ring& cell : cellsOf(ground, one, other))
          if (const auto line = meetingIn(cell, one, other)) lines.push_back(*line);
}

// Every line along which the roof may bend.
std::vector<RoofLine> candidatesOf(const std::vector<RoofPart>& parts) {
  std::vector<RoofLine> lines;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    for (const auto& [a, b] : parts[i].roof.creases())
      for (const Ring& piece : parts[i].pieces)
        if (const auto ends = clippedTo(piece, a, b); ends.size() == 2)
          lines.push_back({ends[0], ends[1]});
    for (std::size_t k = i + 1; k < parts.size(); ++k) addMeetings(parts[i], parts[k], lines);
  }
  return lines;
}

// Of the highest roof over a place; nothing beyond them all.
std::optional<double> heightAt(const std::vector<RoofPart>& parts, Point p) {
  std::optional<double> highest;
  for (const RoofPart& part : parts)
    for (const Ring& piece : part.pieces)
      if (contains(piece, p)) highest = std::max(highest.value_or(0.0), part.roof.heightAt(p));
  return highest;
}

bool bendsAt(const std::vector<RoofPart>& parts, Point p, Point across) {
  const auto here = heightAt(parts, p);
  const auto left = heightAt(parts, p + across * kAside);
  const auto right = heightAt(parts, p - across * kAside);
  return here && left && right && std::abs(*left + *right - 2.0 * *here) > kBend;
}

// Where along a line, from 0 to 1, others cross it.
std::vector<double> cutsOf(const RoofLine& line, const std::vector<RoofLine>& others) {
  std::vector<double> cuts{0.0, 1.0};
  const Point step = line[1] - line[0];
  for (const auto& [a, b] : others) {
    const double turn = cross(step, b - a);
    if (std::abs(turn) < 1e-12) {
      for (const Point p : {a, b}) cuts.push_back(dot(p - line[0], step) / dot(step, step));
      continue;
    }
    cuts.push_back(cross(a - line[0], b - a) / turn);
  }
  std::erase_if(cuts, [](double at) { return !(at >= 0.0 && at <= 1.0); });
  std::sort(cuts.begin(), cuts.end());
  return cuts;
}

bool same(const RoofLine& a, const RoofLine& b) {
  const auto near = [](Point p, Point q) { return distance(p, q) < 1e-4; };
  return (near(a[0], b[0]) && near(a[1], b[1])) || (near(a[0], b[1]) && near(a[1], b[0]));
}

std::vector<RoofLine> seenOf(const std::vector<RoofPart>& parts) {
  const std::vector<RoofLine> lines = candidatesOf(parts);
  std::vector<RoofLine> seen;
  for (const RoofLine& line : lines) {
    const Point step = line[1] - line[0];
    const double length = std::hypot(step.x, step.y);
    if (length < kTiny) continue;
    const Point across = Point{-step.y, step.x} * (1.0 / length);
    const std::vector<double> cuts = cutsOf(line, lines);
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
      if ((cuts[i + 1] - cuts[i]) * length < 4.0 * kAside) continue;
      const RoofLine part{line[0] + step * cuts[i], line[0] + step * cuts[i + 1]};
      const bool known =
          std::ranges::any_of(seen, [&](const RoofLine& other) { return same(part, other); });
      if (!known && bendsAt(parts, (part[0] + part[1]) * 0.5, across)) seen.push_back(part);
    }
  }
  return seen;
}

}  // namespace

RoofPlan roofPlanOf(const Building& building) {
  RoofPlan plan;
  const auto heights = roofHeightsOf(building);
  if (!heights) return plan;
  const double overhang = building.overhang.metres();
  if (std::isfinite(overhang) && overhang > 0.0)
    plan.eaves = mitredOutset(building.footprint, building.overhang);
  const auto add = [&](const Polygon& ground) {
    for (const RoofLine& line : seenOf(roofPartsOver(ground, building, *heights)))
      plan.creases.push_back(line);
  };
  if (plan.eaves.empty()) add(building.footprint);
  for (const Polygon& eaves : plan.eaves) add(eaves);
  return plan;
}

}  // namespace tussock
