// SPDX-License-Identifier: MIT
#include "core/sheets/labelling.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/overlay.h"
#include "core/sheets/label_slots.h"
#include "core/sheets/matching.h"

namespace tussock {

namespace {

constexpr double kPad = 0.7;         // mm of clear ground around a text
constexpr double kCentreMark = 1.3;  // half the side of a centre mark and its clear ground
constexpr double kStep = 0.8;        // between places tried inside
constexpr int kRounds = 12;

PaperBox grown(PaperBox box, double by) {
  return {box.left - by, box.top - by, box.right + by, box.bottom + by};
}

bool holds(const std::vector<Polygon>& region, const PaperBox& box) {
  const double middle = (box.top + box.bottom) / 2.0, centre = (box.left + box.right) / 2.0;
  for (const Polygon& part : region) {
    bool all = true;
    for (const Point p :
         {Point{box.left, box.top}, Point{centre, box.top}, Point{box.right, box.top},
          Point{box.left, middle}, Point{centre, middle}, Point{box.right, middle},
          Point{box.left, box.bottom}, Point{centre, box.bottom}, Point{box.right, box.bottom}})
      all = all && contains(part, p);
    if (all) return true;
  }
  return false;
}

bool inside(const PaperBox& inner, const PaperBox& outer) {
  return inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top &&
         inner.bottom <= outer.bottom;
}

bool covers(const PaperBox& box, const std::vector<PaperPoint>& marks) {
  const PaperBox near = grown(box, kCentreMark);
  return std::any_of(marks.begin(), marks.end(), [&](PaperPoint p) {
    return p.x > near.left && p.x < near.right && p.y > near.top && p.y < near.bottom;
  });
}

PaperText centredText(const std::string& text, PaperPoint at) {
  PaperText result{at, text, TextSize::Note, Align::Centre};
  result.bold = result.halo = true;
  return result;
}

class Labeller {
 public:
  Labeller(const std::vector<LabelWish>& wishes, const LabelMargin& margin)
      : wishes_(wishes),
        margin_(margin),
        placed_(wishes.size()),
        slots_(slotsAround(margin, widestText(wishes))) {}

  std::vector<std::optional<PlacedLabel>> place() {
    for (std::size_t i = 0; i < wishes_.size(); ++i) {
      placeInside(i);
      if (!placed_[i]) placeBeside(i);
    }
    for (int round = 0; round < kRounds; ++round) {
      placeOnLeaders();
      if (!turnOutCrossed()) return std::move(placed_);
    }
    for (auto& label : placed_)
      if (label && label->leader.empty()) label.reset();
    placeOnLeaders();
    return std::move(placed_);
  }

 private:
  // The free place nearest the anchor.
  void placeInside(std::size_t index) {
    const LabelWish& wish = wishes_[index];
    Box bounds;
    for (const Polygon& part : wish.region) bounds.include(boundsOf(part));
    double best = 1e9;
    for (double y = bounds.low.y; y <= bounds.high.y; y += kStep)
      for (double x = bounds.low.x; x <= bounds.high.x; x += kStep) {
        const double far = std::hypot(x - wish.anchor.x, y - wish.anchor.y);
        if (far >= best) continue;
        const PaperText text = centredText(wish.text, {x, y});
        const PaperBox box = grown(boxOf(text), kPad);
        if (!holds(wish.region, box) || covers(box, wish.avoid) || meetsPlaced(box)) continue;
        best = far;
        placed_[index] = PlacedLabel{text, {}};
      }
  }

  void placeBeside(std::size_t index) {
    const LabelWish& wish = wishes_[index];
    for (const PaperPoint at : wish.beside) {
      const PaperText text = centredText(wish.text, at);
      const PaperBox box = grown(boxOf(text), kPad);
      if (!inside(box, margin_.window) || covers(box, wish.avoid) || meetsPlaced(box)) continue;
      const Polygon ground = rectangle({box.left, box.top}, {box.right, box.bottom});
      if (std::any_of(margin_.keepOff.begin(), margin_.keepOff.end(),
                      [&](const Polygon& other) { return intersects(ground, other); }))
        continue;
      placed_[index] = PlacedLabel{text, {}};
      return;
    }
  }

  [[nodiscard]] bool meetsPlaced(const PaperBox& box) const {
    return std::any_of(placed_.begin(), placed_.end(), [&](const auto& other) {
      return other && overlap(grown(boxOf(other->text), kPad), box);
    });
  }

  void placeOnLeaders() {
    std::vector<std::size_t> outside;
    for (std::size_t i = 0; i < wishes_.size(); ++i)
      if (!placed_[i] || !placed_[i]->leader.empty()) outside.push_back(i);
    for (const std::size_t i : outside) placed_[i].reset();
    if (outside.size() > slots_.size()) outside.resize(slots_.size());
    const auto taken =
        cheapestMatching(outside.size(), slots_.size(), [&](std::size_t row, std::size_t column) {
          const PaperPoint from = slots_[column].bend, to = wishes_[outside[row]].anchor;
          return std::hypot(from.x - to.x, from.y - to.y);
        });
    for (std::size_t row = 0; row < outside.size(); ++row) {
      const LabelSlot& slot = slots_[taken[row]];
      const LabelWish& wish = wishes_[outside[row]];
      PaperText text = centredText(wish.text, slot.text);
      text.align = slot.align, text.halo = false;
      placed_[outside[row]] = PlacedLabel{text, {slot.stub, slot.bend, wish.anchor}};
    }
  }

  // Texts inside that a leader would run through go to the margin too.
  bool turnOutCrossed() {
    bool any = false;
    for (auto& inside : placed_) {
      if (!inside || !inside->leader.empty()) continue;
      const PaperBox box = grown(boxOf(inside->text), 0.4);
      const bool hit = std::any_of(placed_.begin(), placed_.end(), [&](const auto& other) {
        return other && !other->leader.empty() && crosses(other->leader[1], other->leader[2], box);
      });
      if (hit) inside.reset(), any = true;
    }
    return any;
  }

  const std::vector<LabelWish>& wishes_;
  const LabelMargin& margin_;
  std::vector<std::optional<PlacedLabel>> placed_;
  std::vector<LabelSlot> slots_;
};

}  // namespace

double widestText(const std::vector<LabelWish>& wishes) {
  double widest = 0.0;
  for (const LabelWish& wish : wishes)
    widest = std::max(widest, textWidth(wish.text, TextSize::Note, Face::Bold));
  return widest;
}

std::vector<std::optional<PlacedLabel>> placeLabels(const std::vector<LabelWish>& wishes,
                                                    const LabelMargin& margin) {
  return Labeller(wishes, margin).place();
}

bool overlap(const PaperBox& a, const PaperBox& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

// Clips the segment against the box's four sides (Liang and Barsky 1984).
bool crosses(PaperPoint from, PaperPoint to, const PaperBox& box) {
  double low = 0.0, high = 1.0;
  const auto clip = [&](double step, double room) {
    if (step == 0.0) return room >= 0.0;
    const double at = room / step;
    if (step < 0.0) low = std::max(low, at);
    if (step > 0.0) high = std::min(high, at);
    return low <= high;
  };
  const double dx = to.x - from.x, dy = to.y - from.y;
  return clip(-dx, from.x - box.left) && clip(dx, box.right - from.x) &&
         clip(-dy, from.y - box.top) && clip(dy, box.bottom - from.y);
}

}  // namespace tussock
