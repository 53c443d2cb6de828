// SPDX-License-Identifier: MIT
#include "core/planting/fill_balance.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/planting/fill_caps.h"

namespace tussock {

namespace {

// Adds and takes pairs of plants and single ones until the drifts take the area and no kind is over
// its cap, where a kind is farthest from its quota first.
class Balance {
 public:
  Balance(const DriftsRequest& request, std::vector<PlannedDrift>& drifts)
      : request_(request),
        kinds_(request.kinds),
        quota_(request.quota),
        drifts_(drifts),
        planned_(kinds_.size(), 0.0) {
    takeCaps(quota_.total);
    for (const PlannedDrift& drift : drifts_) add(drift.kind, drift.count);
  }
  void settle() {
    // Fewer plants than thought make each share larger: then once more, for as many as there are.
    constexpr int kTimes = 5;
    for (int i = 0; i < kTimes; ++i) {
      settleOnce();
      if (total_ >= capped_ - 0.5) return;
      takeCaps(total_);
    }
    while (trim()) continue;
    std::erase_if(drifts_, [](const PlannedDrift& drift) { return drift.count <= 0; });
  }

 private:
  void takeCaps(double total) {
    capped_ = total;
    Quota quota = quota_;
    quota.total = total;
    caps_.emplace(kinds_, request_.standing, quota, request_.limits);
    for (std::size_t kind = 0; kind < kinds_.size(); ++kind) caps_->add(kind, planned_[kind]);
  }
  void settleOnce() {
    constexpr int kMost = 4000;
    while (trim()) continue;
    const double area = request_.area;
    for (int i = 0; i < kMost && ground_ < area - 1.2 * narrowest(); ++i)
      if (!grow(area)) break;
    for (int i = 0; i < kMost && ground_ > area + 0.5 * widest(); ++i)
      if (!change(-2)) break;
    for (int i = 0; i < kMost && tune(); ++i) continue;
    std::erase_if(drifts_, [](const PlannedDrift& drift) { return drift.count <= 0; });
  }

  void add(std::size_t kind, int count) {
    planned_[kind] += count;
    total_ += count;
    ground_ += count * kinds_[kind].ground;
    caps_->add(kind, count);
  }
  [[nodiscard]] double widest() const {
    double widest = 0.0;
    for (const FillKind& kind : kinds_) widest = std::max(widest, kind.ground);
    return widest;
  }
  [[nodiscard]] double narrowest() const {
    double narrowest = 1e9;
    for (const FillKind& kind : kinds_) narrowest = std::min(narrowest, kind.ground);
    return narrowest;
  }
  [[nodiscard]] double need(std::size_t kind) const {
    return (quota_.plants[kind] - planned_[kind]) / std::max(1.0, quota_.plants[kind]);
  }
  [[nodiscard]] double need(const PlannedDrift& drift, int step) const {
    return step > 0 ? need(drift.kind) - 0.02 * drift.count : 0.02 * drift.count - need(drift.kind);
  }
  [[nodiscard]] bool may(const PlannedDrift& drift, int step) const {
    const int count = drift.count + step;
    const FillKind& kind = kinds_[drift.kind];
    if (step > caps_->roomForAny() && step > 0) return false;
    return count >= 1 && (step < 0 || !kind.diseaseProne ||
                          static_cast<double>(count) <
                              kind.species->massThatMatters(request_.limits.diseaseMass));
  }
  // Takes from a kind that is over its cap, but not its last plant; false when there is none.
  bool trim() {
    PlannedDrift* best = nullptr;
    for (PlannedDrift& drift : drifts_)
      if (drift.count > 0 && planned_[drift.kind] > 1.0 && caps_->room(drift.kind) < 0.0 &&
          (best == nullptr || planned_[drift.kind] > planned_[best->kind] ||
           (drift.kind == best->kind && drift.count > best->count)))
        best = &drift;
    if (best == nullptr) return false;
    const int step = best->count > 1 ? -2 : -1;
    best->count += step;
    add(best->kind, step);
    return true;
  }
  bool grow(double area) { return pair(area) || single(area) || change(+2); }
  bool pair(double area) {
    PlannedDrift* best = nullptr;
    for (PlannedDrift& drift : drifts_)
      if (drift.count > 0 && may(drift, 2) && caps_->room(drift.kind) >= 2.0 &&
          ground_ + 2.0 * kinds_[drift.kind].ground < area + 0.5 * widest() &&
          (best == nullptr || need(drift, 2) > need(*best, 2)))
        best = &drift;
    if (best == nullptr) return false;
    best->count += 2;
    add(best->kind, 2);
    return true;
  }
  // A plant or three that stand for themselves, where pairs are too many.
  bool single(double area) {
    std::size_t best = kinds_.size();
    for (std::size_t kind = 0; kind < kinds_.size(); ++kind)
      if (caps_->room(kind) >= 1.0 && kinds_[kind].ground + ground_ < area + 0.5 * widest() &&
          (best == kinds_.size() || need(kind) > need(best)))
        best = kind;
    if (best == kinds_.size() || !quota_.limited) return false;
    const int count =
        caps_->room(best) >= 3.0 && ground_ + 3.0 * kinds_[best].ground < area ? 3 : 1;
    drifts_.push_back({best, count});
    add(best, count);
    return true;
  }
  bool change(int step) {
    PlannedDrift* best = nullptr;
    for (PlannedDrift& drift : drifts_)
      if (drift.count > 0 && may(drift, step) &&
          (best == nullptr || need(drift, step) > need(*best, step)))
        best = &drift;
    if (best == nullptr) return false;
    best->count += step;
    add(best->kind, step);
    return true;
  }

  // A pair taken from one drift and one given to another, where the sum comes nearer the area.
  bool tune() {
    constexpr std::size_t kMostDrifts = 80;  // in larger beds a pair more or less is not seen
    const double gap = request_.area - ground_;
    if (drifts_.size() > kMostDrifts || std::abs(gap) < narrowest()) return false;
    double least = std::abs(gap) - 0.5 * narrowest();
    std::pair<PlannedDrift*, PlannedDrift*> best{nullptr, nullptr};
    for (PlannedDrift& less : drifts_)
      for (PlannedDrift& more : drifts_) {
        const double after =
            std::abs(gap + 2.0 * (kinds_[less.kind].ground - kinds_[more.kind].ground));
        if (after >= least || less.count < 3 || more.count < 1 || !may(more, 2)) continue;
        const double room = caps_->room(more.kind) + (less.kind == more.kind ? 2.0 : 0.0);
        if (room < 2.0) continue;
        least = after, best = {&less, &more};
      }
    if (best.first == nullptr) return false;
    best.first->count -= 2, best.second->count += 2;
    add(best.first->kind, -2), add(best.second->kind, 2);
    return true;
  }

  const DriftsRequest& request_;
  const std::vector<FillKind>& kinds_;
  const Quota& quota_;
  std::vector<PlannedDrift>& drifts_;
  std::vector<double> planned_;
  std::optional<ShareCaps> caps_;
  double total_ = 0.0;   // plants planned
  double capped_ = 0.0;  // plants that the caps are for
  double ground_ = 0.0;
};

}  // namespace

void balance(const DriftsRequest& request, std::vector<PlannedDrift>& drifts) {
  Balance(request, drifts).settle();
}

}  // namespace tussock
