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
constexpr double kNear = 14.0;       // a mark is rather covered than a number put farther off
constexpr double kAnywhere = 1e6;
constexpr int kLabelRounds = 12;
constexpr double kLeaderClear = 1.1;  // between a leader and a centre mark
constexpr double kDetour = 9.0;       // mm of leader that are worth a mark run over

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

bool covers(const PaperBox& box, const std::vector<PaperPoint>& marks) {
  const PaperBox near = grown(box, kCentreMark);
  return std::any_of(marks.begin(), marks.end(), [&](PaperPoint p) {
    return p.x > near.left && p.x < near.right && p.y > near.top && p.y < near.bottom;
  });
}

PaperText centredText(const LabelWish& wish, PaperPoint at) {
  PaperText result{at, wish.text, TextSize::Note, Align::Centre};
  result.bold = wish.face == Face::Bold, result.halo = true;
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
      if (wishes_[i].text.empty()) continue;
      placeInside(i);
      if (!placed_[i]) placeBeside(i);
    }
    placeRest();
    clearMarks();
    for (std::size_t i = 0; i < wishes_.size(); ++i) {
      if (placed_[i] || wishes_[i].instead.empty()) continue;
      placeInstead(i, kNear, Marks::KeepClear);
      if (!placed_[i]) placeInstead(i, kAnywhere, Marks::Cover);
      if (placed_[i]) placed_[i]->instead = true;
    }
    return std::move(placed_);
  }

 private:
  void placeRest() {
    for (int round = 0; round < kLabelRounds; ++round) {
      placeOnLeaders();
      if (!turnOutCrossed()) return;
    }
    for (auto& label : placed_)
      if (label && label->leader.empty()) label.reset();
    placeOnLeaders();
  }

  // The free place nearest the anchor.
  void placeInside(std::size_t index) {
    const LabelWish& wish = wishes_[index];
    Box bounds;
    for (const Polygon& part : wish.region) bounds.include(boundsOf(part));
    std::optional<PlacedLabel> found;
    double best = 1e9;
    for (double y = bounds.low.y; y <= bounds.high.y; y += kStep)
      for (double x = bounds.low.x; x <= bounds.high.x; x += kStep) {
        const double far = std::hypot(x - wish.anchor.x, y - wish.anchor.y);
        if (far >= best) continue;
        const PaperText text = centredText(wish, {x, y});
        const PaperBox box = grown(boxOf(text), kPad);
        if (!holds(wish.region, box) || covers(box, wish.avoid) || meetsPlaced(box)) continue;
        best = far;
        found = PlacedLabel{text, {}};
      }
    placed_[index] = std::move(found);
  }

  void placeBeside(std::size_t index) {
    const LabelWish& wish = wishes_[index];
    for (const PaperPoint at : wish.beside) {
      const PaperText text = centredText(wish, at);
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
      if (wishes_[i].effort != Effort::Beside && !wishes_[i].text.empty() &&
          (!placed_[i] || !placed_[i]->leader.empty()))
        outside.push_back(i);
    for (const std::size_t i : outside) placed_[i].reset();
    if (outside.size() > slots_.size()) outside.resize(slots_.size());
    slotOf_.assign(wishes_.size(), slots_.size());
    const auto taken =
        cheapestMatching(outside.size(), slots_.size(), [&](std::size_t row, std::size_t column) {
          const PaperPoint from = slots_[column].bend, to = wishes_[outside[row]].anchor;
          return std::hypot(from.x - to.x, from.y - to.y);
        });
    for (std::size_t row = 0; row < outside.size(); ++row)
      putOnLeader(outside[row], taken[row], wishes_[outside[row]].anchor);
  }

  void putOnLeader(std::size_t index, std::size_t slotIndex, PaperPoint anchor) {
    const LabelSlot& slot = slots_[slotIndex];
    PaperText text = centredText(wishes_[index], slot.text);
    text.align = slot.align, text.halo = false;
    slotOf_[index] = slotIndex;
    placed_[index] = PlacedLabel{text, {slot.stub, slot.bend, anchor}};
  }

  void clearMarks() {
    if (margin_.marks.empty()) return;
    for (std::size_t i = 0; i < wishes_.size(); ++i)
      if (placed_[i] && !placed_[i]->leader.empty() && cost(slotOf_[i], end(i)) > length(i))
        moveLeader(i);
  }

  [[nodiscard]] PaperPoint end(std::size_t index) const { return placed_[index]->leader.back(); }
  [[nodiscard]] double length(std::size_t index) const {
    const PaperPoint from = slots_[slotOf_[index]].bend, to = end(index);
    return std::hypot(from.x - to.x, from.y - to.y) + 1e-9;
  }

  // Millimetres, with a detour's worth for every mark run over.
  [[nodiscard]] double cost(std::size_t slot, PaperPoint to) const {
    const PaperPoint from = slots_[slot].bend;
    const auto over = std::count_if(margin_.marks.begin(), margin_.marks.end(), [&](PaperPoint p) {
      return distanceToSegment(p, from, to) < kLeaderClear;
    });
    return std::hypot(from.x - to.x, from.y - to.y) + kDetour * static_cast<double>(over);
  }

  // To the cheapest free place and end from which it meets no other label.
  void moveLeader(std::size_t index) {
    std::vector<PaperPoint> ends = wishes_[index].anchors;
    ends.push_back(end(index));
    double best = cost(slotOf_[index], end(index));
    std::size_t bestSlot = slotOf_[index];
    PaperPoint bestEnd = end(index);
    for (std::size_t slot = 0; slot < slots_.size(); ++slot) {
      if (slot != slotOf_[index] && isTaken(slot)) continue;
      for (const PaperPoint to : ends) {
        const PaperPoint from = slots_[slot].bend;
        if (std::hypot(from.x - to.x, from.y - to.y) >= best) continue;
        const double price = cost(slot, to);
        if (price < best - 1e-9 && isFree(index, from, to))
          best = price, bestSlot = slot, bestEnd = to;
      }
    }
    putOnLeader(index, bestSlot, bestEnd);
  }

  [[nodiscard]] bool isTaken(std::size_t slot) const {
    return std::find(slotOf_.begin(), slotOf_.end(), slot) != slotOf_.end();
  }

  [[nodiscard]] bool isFree(std::size_t index, PaperPoint from, PaperPoint to) const {
    for (std::size_t i = 0; i < placed_.size(); ++i) {
      if (i == index || !placed_[i]) continue;
      const std::vector<PaperPoint>& leader = placed_[i]->leader;
      if (leader.empty() && crosses(from, to, grown(boxOf(placed_[i]->text), 0.4))) return false;
      if (!leader.empty() && meet(from, to, leader[1], leader[2])) return false;
    }
    return true;
  }

  enum class Marks { KeepClear, Cover };

  // The place nearest the anchor that is clear of other labels, whatever else is drawn there.
  void placeInstead(std::size_t index, double farthest, Marks marks) {
    LabelWish wish = wishes_[index];
    wish.text = wish.instead;
    const PaperBox& w = margin_.window;
    std::optional<PlacedLabel> found;
    double best = farthest;
    const PaperPoint low{std::max(w.left, wish.anchor.x - farthest),
                         std::max(w.top, wish.anchor.y - farthest)};
    const PaperPoint high{std::min(w.right, wish.anchor.x + farthest),
                          std::min(w.bottom, wish.anchor.y + farthest)};
    for (double y = low.y; y <= high.y; y += kStep)
      for (double x = low.x; x <= high.x; x += kStep) {
        const double far = std::hypot(x - wish.anchor.x, y - wish.anchor.y);
        if (far >= best) continue;
        const PaperText text = centredText(wish, {x, y});
        const PaperBox box = grown(boxOf(text), kPad);
        if (!inside(box, margin_.zone) || meetsPlaced(box) || meetsLeader(box)) continue;
        if (marks == Marks::KeepClear && covers(box, wish.avoid)) continue;
        best = far;
        found = PlacedLabel{text, {}};
      }
    placed_[index] = std::move(found);
  }

  [[nodiscard]] bool meetsLeader(const PaperBox& box) const {
    return std::any_of(placed_.begin(), placed_.end(), [&](const auto& other) {
      if (!other || other->leader.empty()) return false;
      return crosses(other->leader[0], other->leader[1], box) ||
             crosses(other->leader[1], other->leader[2], box);
    });
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
  std::vector<std::size_t> slotOf_;  // of each wish on a leader
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

}  // namespace tussock
