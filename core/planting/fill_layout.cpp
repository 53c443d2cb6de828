// SPDX-License-Identifier: MIT
#include "core/planting/fill_layout.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/geometry/overlay.h"
#include "core/planting/disc_grid.h"

namespace tussock {

namespace {

constexpr double kEdgeStrip = 0.6;   // metres, what reads as the edge; common practice
constexpr double kHalfSpread = 0.3;  // metres to each side that a plant usually hides

void describe(Spot& spot) {
  double hours = 0.0, known = 0.0;
  const double each = 1.0 / static_cast<double>(std::max<std::size_t>(1, spot.samples.size()));
  for (const FillCell& cell : spot.samples) {
    spot.middle += cell.at * each;
    spot.moisture[static_cast<std::size_t>(cell.moisture)] += each;
    if (cell.toViewers < kEdgeStrip) spot.edge += each;
    if (cell.hours >= 0.0F) hours += cell.hours, known += 1.0;
  }
  if (known > 0.0) spot.hours = hours / known;
}

void rankDepths(Layout& layout) {
  std::vector<float> all;
  for (const Spot& spot : layout.spots)
    for (const FillCell& cell : spot.samples) all.push_back(cell.toViewers);
  std::sort(all.begin(), all.end());
  for (Spot& spot : layout.spots) {
    double sum = 0.0;
    for (const FillCell& cell : spot.samples) {
      const auto below = std::lower_bound(all.begin(), all.end(), cell.toViewers) - all.begin();
      const auto above = std::upper_bound(all.begin(), all.end(), cell.toViewers) - all.begin();
      sum += 0.5 * static_cast<double>(below + above) / static_cast<double>(all.size());
    }
    spot.depth = sum / static_cast<double>(std::max<std::size_t>(1, spot.samples.size()));
  }
}

void findNear(Layout& layout) {
  constexpr std::size_t kNear = 24;
  layout.near.resize(layout.spots.size());
  for (std::size_t i = 0; i < layout.spots.size(); ++i) {
    auto& near = layout.near[i];
    for (std::size_t j = 0; j < layout.spots.size(); ++j)
      if (j != i) near.push_back({j, distance(layout.spots[i].middle, layout.spots[j].middle)});
    const std::size_t kept = std::min(kNear, near.size());
    std::partial_sort(near.begin(), near.begin() + static_cast<std::ptrdiff_t>(kept), near.end(),
                      [](const NearSpot& a, const NearSpot& b) {
                        return a.distance != b.distance ? a.distance < b.distance
                                                        : a.other < b.other;
                      });
    near.resize(kept);
  }
}

// Lengths of some three metres along the bed, at most six: as far as one sees at a glance.
void cutIntoParts(Layout& layout, const Bed& bed) {
  constexpr double kPart = 3.0;
  const OrientedRectangle box = smallestRectangle(bed.outline.outer, Length());
  layout.parts = static_cast<std::size_t>(std::clamp(std::lround(box.length / kPart), 1L, 6L));
  const Point along{std::cos(box.axis.radians()), std::sin(box.axis.radians())};
  for (Spot& spot : layout.spots) {
    const double share = dot(spot.middle - box.centre, along) / std::max(box.length, 1e-6) + 0.5;
    const double part = std::floor(share * static_cast<double>(layout.parts));
    spot.part =
        static_cast<std::size_t>(std::clamp(part, 0.0, static_cast<double>(layout.parts - 1)));
  }
}

// Which samples stand in the line of sight of which.
class Sights {
 public:
  Sights(const Layout& layout, const SightLimits& limits)
      : layout_(layout), limits_(limits), grid_(boxOf(layout), 0.75) {
    for (std::size_t spot = 0; spot < layout.spots.size(); ++spot)
      for (const FillCell& cell : layout.spots[spot].samples) {
        grid_.add(cell.at);
        owner_.push_back(spot);
      }
  }

  void addLines(const Viewpoint& viewpoint, std::size_t rear, Layout& out) const {
    std::map<std::size_t, SightLine> lines;
    const auto& samples = layout_.spots[rear].samples;
    for (const FillCell& cell : samples) addSample(viewpoint, rear, cell.at, lines);
    for (auto& [front, line] : lines) {
      line.ahead /= line.share;
      line.toEyes /= line.share;
      line.share /= static_cast<double>(samples.size());
      line.other = front;
      out.inFront[rear].push_back(line);
      line.other = rear;
      out.behind[front].push_back(line);
    }
  }

 private:
  static Box boxOf(const Layout& layout) {
    Box box;
    for (const Spot& spot : layout.spots)
      for (const FillCell& cell : spot.samples) box.include(cell.at);
    return box.empty() ? Box{{0, 0}, {1, 1}} : box;
  }
  void addSample(const Viewpoint& viewpoint, std::size_t rear, Point at,
                 std::map<std::size_t, SightLine>& lines) const {
    const auto sight = viewpoint.sightOf(at, limits_);
    if (!sight) return;
    std::map<std::size_t, double> nearest;
    grid_.near(at, limits_.hidesWithin, [&](std::size_t i) {
      if (owner_[i] == rear) return true;
      const Point step = grid_.at(i) - at;
      const double ahead = dot(step, sight->towards);
      if (ahead <= 0.0 || std::abs(cross(step, sight->towards)) > kHalfSpread) return true;
      const auto [known, isNew] = nearest.try_emplace(owner_[i], ahead);
      if (!isNew) known->second = std::min(known->second, ahead);
      return true;
    });
    for (const auto& [front, ahead] : nearest) {
      SightLine& line = lines[front];
      line.share += 1.0;
      line.ahead += ahead;
      line.toEyes += sight->toEyes;
    }
  }

  const Layout& layout_;
  const SightLimits& limits_;
  DiscGrid grid_;
  std::vector<std::size_t> owner_;
};

}  // namespace

Layout layoutOf(const Bed& bed, std::vector<std::vector<FillCell>> samples,
                const std::vector<double>& areas, const TouchingPairs& touching,
                const SightLimits& limits) {
  Layout layout;
  const std::size_t count = samples.size();
  for (std::size_t i = 0; i < count; ++i) {
    Spot spot;
    spot.samples = std::move(samples[i]);
    spot.area = areas[i];
    describe(spot);
    layout.spots.push_back(std::move(spot));
  }
  layout.touching.resize(count), layout.inFront.resize(count), layout.behind.resize(count);
  for (const auto& [a, b] : touching) {
    layout.touching[a].push_back(b);
    layout.touching[b].push_back(a);
  }
  findNear(layout);
  cutIntoParts(layout, bed);
  const auto viewpoints = viewpointsOf(bed);
  layout.viewed = !viewpoints.empty();
  if (!layout.viewed) return layout;
  rankDepths(layout);
  const Sights sights(layout, limits);
  for (const Viewpoint& viewpoint : viewpoints)
    for (std::size_t rear = 0; rear < count; ++rear) sights.addLines(viewpoint, rear, layout);
  return layout;
}

}  // namespace tussock
