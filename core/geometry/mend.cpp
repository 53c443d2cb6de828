// SPDX-License-Identifier: MIT
#include "core/geometry/mend.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/geometry/overlay.h"
#include "core/geometry/tolerance.h"

namespace tussock {

namespace {

constexpr double kLeastPiece = 1e-4;        // m²; less is no ground
constexpr std::size_t kMostCorners = 5000;  // as each is held against each side

double groundOf(const std::vector<Polygon>& pieces) {
  double sum = 0.0;
  for (const Polygon& piece : pieces) sum += areaOf(piece).squareMetres();
  return sum;
}

double sharedGround(const std::vector<Polygon>& some, const std::vector<Polygon>& others) {
  double sum = 0.0;
  for (const Polygon& one : some)
    for (const Polygon& other : others)
      if (intersects(one, other)) sum += groundOf(intersection(one, other));
  return sum;
}

// Corners that lie as good as in one place are put in one, so that they can be told for the same.
Ring cornersJoined(Ring ring) {
  for (std::size_t i = 1; i < ring.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (distance(ring[i], ring[j]) <= kTolerance.metres()) {
        ring[i] = ring[j];
        break;
      }
  ring.erase(std::unique(ring.begin(), ring.end()), ring.end());
  while (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
  return ring;
}

// With a corner on each side wherever another corner of the ring touches it.
Ring touchesMarked(const Ring& ring) {
  Ring result;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point from = ring[i], to = ring[(i + 1) % ring.size()];
    std::vector<std::pair<double, Point>> between;
    for (const Point p : ring)
      if (p != from && p != to && distanceToSegment(p, from, to) <= kTolerance.metres())
        between.emplace_back(distance(from, p), p);
    std::sort(between.begin(), between.end(),
              [](const auto& a, const auto& b) { return a.first < b.first; });
    result.push_back(from);
    for (const auto& [unused, p] : between)
      if (result.back() != p) result.push_back(p);
  }
  return result;
}

// Parted wherever it comes back to a corner.
std::vector<Ring> loopsOf(const Ring& ring) {
  std::vector<Ring> loops;
  Ring open;
  for (const Point p : ring) {
    const auto before = std::find(open.begin(), open.end(), p);
    if (before == open.end()) {
      open.push_back(p);
      continue;
    }
    loops.emplace_back(before, open.end());
    open.erase(before + 1, open.end());
  }
  loops.push_back(std::move(open));
  return loops;
}

class Mender {
 public:
  std::optional<MendedPolygon> mend(const Polygon& polygon) {
    auto outline = groundWithin(polygon.outer);
    if (!outline || outline->empty()) return std::nullopt;
    std::vector<std::vector<Polygon>> holes;
    for (const Ring& ring : polygon.holes) {
      auto hole = groundWithin(ring);
      if (!hole) return std::nullopt;
      if (!hole->empty()) holes.push_back(std::move(*hole));
    }
    if (!readInOneWay(*outline, holes)) return std::nullopt;
    std::vector<Polygon> pieces = without(std::move(*outline), holes);
    const bool sound = std::all_of(pieces.begin(), pieces.end(),
                                   [](const Polygon& piece) { return !invalidityOf(piece); });
    if (pieces.empty() || !sound) return std::nullopt;
    if (done_.empty()) done_.insert(Mend::FlawEvened);
    return MendedPolygon{std::move(pieces), {done_.begin(), done_.end()}};
  }

 private:
  // None where the ring crosses itself. Loops that run the other way round are holes.
  std::optional<std::vector<Polygon>> groundWithin(const Ring& ring) {
    if (ring.size() > kMostCorners) return std::nullopt;
    std::vector<Polygon> solid, hollow;
    const Ring turned = normalised({ring, {}}).outer;
    for (const Ring& loop : loopsOf(touchesMarked(cornersJoined(turned)))) {
      const double ground = signedArea(loop);
      if (loop.size() < 3 || std::abs(ground) < kLeastPiece) {
        done_.insert(Mend::SpikeTakenOff);
        continue;
      }
      if (invalidityOf(normalised({loop, {}}))) return std::nullopt;
      (ground > 0.0 ? solid : hollow).push_back(normalised({loop, {}}));
    }
    if (solid.size() + hollow.size() > 1) done_.insert(Mend::TouchParted);
    if (!standApart(solid) || !standApart(hollow)) return std::nullopt;
    for (const Polygon& hole : hollow)
      if (sharedGround({hole}, solid) < groundOf({hole}) - kLeastPiece) return std::nullopt;
    return takenFrom(std::move(solid), hollow);
  }

  static bool standApart(const std::vector<Polygon>& loops) {
    for (std::size_t i = 1; i < loops.size(); ++i)
      for (std::size_t j = 0; j < i; ++j)
        if (sharedGround({loops[i]}, {loops[j]}) > kLeastPiece) return false;
    return true;
  }

  // A hole within a hole may be meant as an island, and one outside may belong elsewhere.
  static bool readInOneWay(const std::vector<Polygon>& outline,
                           const std::vector<std::vector<Polygon>>& holes) {
    for (std::size_t i = 0; i < holes.size(); ++i) {
      if (sharedGround(holes[i], outline) <= kLeastPiece) return false;
      for (std::size_t j = 0; j < i; ++j) {
        const double a = groundOf(holes[i]), b = groundOf(holes[j]);
        const bool nested = sharedGround(holes[i], holes[j]) > std::min(a, b) - kLeastPiece;
        if (nested && std::abs(a - b) > kLeastPiece) return false;
      }
    }
    return true;
  }

  std::vector<Polygon> without(std::vector<Polygon> outline,
                               const std::vector<std::vector<Polygon>>& holes) {
    std::vector<Polygon> parts;
    for (const auto& hole : holes) parts.insert(parts.end(), hole.begin(), hole.end());
    const std::vector<Polygon> joined = unionOf(parts);
    if (joined.size() < parts.size()) done_.insert(Mend::HolesJoined);
    std::vector<Polygon> pieces = takenFrom(std::move(outline), joined);
    double within = 0.0;
    for (const Polygon& piece : pieces)
      for (const Ring& hole : piece.holes) within += std::abs(signedArea(hole));
    if (within < groundOf(joined) - kLeastPiece) done_.insert(Mend::HoleCutOut);
    return pieces;
  }

  static std::vector<Polygon> takenFrom(std::vector<Polygon> ground,
                                        const std::vector<Polygon>& holes) {
    for (const Polygon& hole : holes) {
      std::vector<Polygon> left;
      for (const Polygon& piece : ground)
        for (Polygon& part : difference(piece, hole))
          if (areaOf(part).squareMetres() >= kLeastPiece) left.push_back(std::move(part));
      ground = std::move(left);
    }
    return ground;
  }

  std::set<Mend> done_;
};

}  // namespace

std::string_view explain(Mend mend) {
  switch (mend) {
    case Mend::SpikeTakenOff:
      return "a spike that holds no ground was taken off its outline";
    case Mend::TouchParted:
      return "its outline touched itself and was parted there";
    case Mend::HolesJoined:
      return "holes that met were joined";
    case Mend::HoleCutOut:
      return "a hole at its edge was cut out of the outline";
    case Mend::FlawEvened:
      return "a flaw in its outline too small to be drawn was evened";
  }
  return {};
}

std::optional<MendedPolygon> mended(const Polygon& polygon) {
  return Mender().mend(polygon);
}

}  // namespace tussock
