// SPDX-License-Identifier: MIT
#include "core/planting/fill_mend.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace tussock {

namespace {

class Mending {
 public:
  Mending(Settling& settling, const std::vector<DriftToPlant>& drifts, ShareCaps caps,
          const WorkWatch& watch)
      : settling_(settling),
        drifts_(drifts),
        caps_(std::move(caps)),
        watch_(watch),
        members_(drifts.size()) {
    for (std::size_t i = 0; i < settling.size(); ++i) members_[settling.item(i).drift].push_back(i);
    for (std::size_t drift = 0; drift < drifts.size(); ++drift)
      caps_.add(drifts[drift].kind, static_cast<double>(members_[drift].size()) -
                                        static_cast<double>(drifts[drift].count));
  }

  // The worst first; a plant that goes makes its neighbours' places better.
  void takeBreaches() {
    std::vector<int> breaches(settling_.size());
    for (std::size_t i = 0; i < breaches.size(); ++i) breaches[i] = settling_.breaches(i);
    for (int worst = 100; worst > 0; worst = worst > 8 ? 8 : worst - 1)
      for (std::size_t i = 0; i < breaches.size(); ++i) {
        if (!settling_.item(i).stands || breaches[i] < worst) continue;
        take(i);
        settling_.grid().near(settling_.at(i), settling_.widest(), [&](std::size_t other) {
          if (settling_.item(other).stands && breaches[other] > 0)
            breaches[other] = settling_.breaches(other);
          return true;
        });
      }
  }
  void joinPieces() {
    for (std::size_t drift = 0; drift < members_.size(); ++drift)
      for (const std::size_t i : apart(drift)) take(i);
  }
  void makeOdd() {
    for (std::size_t drift = 0; drift < members_.size(); ++drift) {
      if (members_[drift].size() % 2 == 1 || members_[drift].empty()) continue;
      const auto pocket = pocketOf(drift);
      if (pocket && caps_.room(drifts_[drift].kind) >= 1.0) {
        add(drift, *pocket);
      } else {
        take(leastMissed(drift));
      }
    }
  }
  // Where others found less room, one kind may have come to more than its share: it gives up pairs.
  // Not many: fewer plants make the shares of all others larger, and where too few kinds have found
  // room that would end with a bare bed.
  void trimShares() {
    constexpr double kMostTrimmed = 0.06;  // of the plants
    const auto pairs = static_cast<int>(std::ceil(kMostTrimmed * planted() / 2.0));
    for (int i = 0; i < pairs; ++i) {
      caps_.limitBy(planted());
      std::size_t over = members_.size();
      for (std::size_t drift = 0; drift < members_.size(); ++drift)
        if (members_[drift].size() > 2 && caps_.room(drifts_[drift].kind) < 0.0 &&
            (over == members_.size() || members_[drift].size() > members_[over].size()))
          over = drift;
      if (over == members_.size()) return;
      for (int each = 0; each < 2; ++each) take(leastMissed(over));
    }
  }
  // A pair of the drift whose plants stand nearest to others; false when there is none to take.
  bool thin() {
    std::size_t most = members_.size();
    double least = 1.0;
    for (std::size_t drift = 0; drift < members_.size(); ++drift) {
      const auto& own = members_[drift];
      if (own.size() < 5) continue;
      double room = 0.0;
      for (const std::size_t i : own)
        room += settling_.roomFor(i, settling_.at(i)) / static_cast<double>(own.size());
      if (room < least) least = room, most = drift;
    }
    if (most == members_.size()) return false;
    for (int each = 0; each < 2; ++each) take(leastMissed(most));
    return true;
  }
  // Pairs of plants for drifts that have two holes beside them.
  void fillHoles(const FillGround& ground) {
    if (watch_.halt()) return;
    std::vector<std::vector<Point>> holes(members_.size());
    for (const FillCell& cell : ground.cells())
      for (const std::size_t drift : driftsBeside(cell.at)) {
        if (caps_.room(drifts_[drift].kind) < 2.0) continue;
        auto& own = holes[drift];
        const double least = 0.86 * settling_.freeFor(drift).spacing();
        const bool fresh = std::all_of(own.begin(), own.end(),
                                       [&](Point p) { return distance(p, cell.at) >= least; });
        if (!fresh || !settling_.fits(drift, cell.at)) continue;
        own.push_back(cell.at);
        break;
      }
    for (std::size_t drift = 0; drift < holes.size(); ++drift)
      for (std::size_t i = 0; i + 1 < holes[drift].size(); i += 2) {
        if (caps_.room(drifts_[drift].kind) < 2.0) break;
        if (!settling_.fits(drift, holes[drift][i])) continue;
        add(drift, holes[drift][i]);
        if (settling_.fits(drift, holes[drift][i + 1])) add(drift, holes[drift][i + 1]);
      }
  }
  [[nodiscard]] DriftPlaces places() const {
    DriftPlaces result(members_.size());
    for (std::size_t drift = 0; drift < members_.size(); ++drift)
      for (const std::size_t i : members_[drift]) result[drift].push_back(settling_.at(i));
    return result;
  }

 private:
  [[nodiscard]] double planted() const {
    double sum = 0.0;
    for (const auto& own : members_) sum += static_cast<double>(own.size());
    return sum;
  }
  void take(std::size_t i) {
    settling_.setStands(i, false);
    std::erase(members_[settling_.item(i).drift], i);
    caps_.add(drifts_[settling_.item(i).drift].kind, -1.0);
  }
  void add(std::size_t drift, Point p) {
    settling_.add(drift, p);
    caps_.add(drifts_[drift].kind, 1.0);
    members_[drift].push_back(settling_.size() - 1);
  }

  // Members that do not hang together with the most of the drift.
  [[nodiscard]] std::vector<std::size_t> apart(std::size_t drift) {
    ++stamp_;
    seen_.resize(settling_.size(), 0);
    std::vector<std::vector<std::size_t>> pieces;
    for (const std::size_t i : members_[drift])
      if (seen_[i] != stamp_) pieces.push_back(pieceFrom(drift, i));
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const auto& a, const auto& b) { return a.size() > b.size(); });
    std::vector<std::size_t> result;
    for (std::size_t i = 1; i < pieces.size(); ++i)
      result.insert(result.end(), pieces[i].begin(), pieces[i].end());
    return result;
  }
  [[nodiscard]] std::vector<std::size_t> pieceFrom(std::size_t drift, std::size_t from) {
    const double reach = kTouch * settling_.freeFor(drift).spacing();
    std::vector<std::size_t> piece{from};
    seen_[from] = stamp_;
    for (std::size_t i = 0; i < piece.size(); ++i)
      settling_.grid().near(settling_.at(piece[i]), reach, [&](std::size_t other) {
        const Settling::Item& item = settling_.item(other);
        if (item.stands && item.drift == drift && seen_[other] != stamp_)
          seen_[other] = stamp_, piece.push_back(other);
        return true;
      });
    return piece;
  }

  // A free place beside the drift's plants, where it is emptiest.
  [[nodiscard]] std::optional<Point> pocketOf(std::size_t drift) const {
    constexpr int kTurns = 24;
    if (watch_.halt()) return std::nullopt;
    const double s = settling_.freeFor(drift).spacing();
    std::optional<Point> best;
    double widest = 0.0;
    for (const std::size_t i : members_[drift])
      for (int turn = 0; turn < kTurns; ++turn)
        for (const double away : {0.9, 1.05, 1.2}) {
          const double angle = 2.0 * std::numbers::pi * turn / kTurns;
          const Point p = settling_.at(i) + Point{std::cos(angle), std::sin(angle)} * (away * s);
          if (!settling_.fits(drift, p)) continue;
          const double room = nearestTo(p).second;
          if (room > widest) widest = room, best = p;
        }
    return best;
  }
  [[nodiscard]] bool wholeWithout(std::size_t drift, std::size_t i) {
    auto& own = members_[drift];
    const auto kept = own;
    std::erase(own, i);
    settling_.setStands(i, false);
    const bool whole = apart(drift).empty();
    settling_.setStands(i, true);
    own = kept;
    return whole;
  }
  // The one that stands most crowded among those whose leaving does not part the drift.
  [[nodiscard]] std::size_t leastMissed(std::size_t drift) {
    std::vector<std::pair<double, std::size_t>> crowding;
    for (const std::size_t i : members_[drift])
      crowding.emplace_back(nearestTo(settling_.at(i), i).second, i);
    std::stable_sort(crowding.begin(), crowding.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    for (const auto& [unused, i] : crowding)
      if (wholeWithout(drift, i)) return i;
    return crowding.front().second;
  }
  // Who stands nearest, and how far in its spacings.
  [[nodiscard]] std::pair<std::size_t, double> nearestTo(
      Point p, std::size_t without = Settling::kNobody) const {
    std::pair<std::size_t, double> best{Settling::kNobody, 2.0};
    settling_.grid().near(p, 2.0 * settling_.widest(), [&](std::size_t i) {
      if (i == without || !settling_.item(i).stands) return true;
      const double away = distance(p, settling_.at(i)) / settling_.spacing(i);
      if (away < best.second) best = {i, away};
      return true;
    });
    return best;
  }

  // Drifts that a plant there would belong to, the nearest first; none where there is no hole.
  [[nodiscard]] std::vector<std::size_t> driftsBeside(Point p) const {
    constexpr double kHole = 0.86;  // spacings from the nearest plant
    std::vector<std::pair<double, std::size_t>> near;
    const bool hole = settling_.grid().near(p, 1.25 * settling_.widest(), [&](std::size_t i) {
      if (!settling_.item(i).stands) return true;
      const double away = distance(p, settling_.at(i)) / settling_.spacing(i);
      if (away < 1.25) near.emplace_back(away, settling_.item(i).drift);
      return away >= kHole;
    });
    std::vector<std::size_t> drifts;
    if (!hole) return drifts;
    std::sort(near.begin(), near.end());
    for (const auto& [away, drift] : near)
      if (std::find(drifts.begin(), drifts.end(), drift) == drifts.end()) drifts.push_back(drift);
    return drifts;
  }

  Settling& settling_;
  const std::vector<DriftToPlant>& drifts_;
  ShareCaps caps_;
  const WorkWatch& watch_;
  std::vector<std::vector<std::size_t>> members_;
  std::vector<int> seen_;  // by plant, the last walk that came by
  int stamp_ = 0;
};

}  // namespace

DriftPlaces mended(Settling& settling, const std::vector<DriftToPlant>& drifts, ShareCaps caps,
                   const FillGround& ground, const WorkWatch& watch) {
  Mending mending(settling, drifts, std::move(caps), watch);
  mending.takeBreaches();
  mending.joinPieces();
  mending.makeOdd();
  mending.fillHoles(ground);
  mending.joinPieces();
  mending.makeOdd();
  mending.trimShares();
  return mending.places();
}

DriftPlaces thinned(Settling& settling, const std::vector<DriftToPlant>& drifts,
                    const ShareCaps& caps, int pairs, const WorkWatch& watch) {
  Mending mending(settling, drifts, caps, watch);
  for (int i = 0; i < pairs && mending.thin(); ++i) continue;
  mending.trimShares();
  return mending.places();
}

}  // namespace tussock
