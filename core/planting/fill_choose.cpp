// SPDX-License-Identifier: MIT
#include "core/planting/fill_choose.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace tussock {

namespace {

bool suits(const FillKind& kind, const FillCell& cell) {
  return likes(kind, cell.moisture) && (cell.hours < 0.0F || hoursOff(kind, cell.hours) <= 0.0);
}

// Some hundred cells stand for all.
template <class F>
void forSome(const std::vector<FillCell>& cells, F&& f) {
  const std::size_t step = std::max<std::size_t>(1, cells.size() / 400);
  for (std::size_t i = step / 2; i < cells.size(); i += step) f(cells[i]);
}

constexpr double kBandTaken = 0.96;  // of the ground, that a band should be able to hold

class Choosing {
 public:
  Choosing(const std::vector<FillKind>& kinds, const std::vector<FillCell>& cells,
           const ChooseRequest& request, Chance& chance)
      : kinds_(kinds), request_(request) {
    for (const FillKind& kind : kinds) {
      suits_.push_back(suitableShare(kind, cells));
      luck_.push_back(chance.share());
    }
    taken_.assign(kinds.size(), 0);
  }

  std::vector<std::size_t> run() {
    for (std::size_t i = 0; i < request_.count; ++i) {
      const auto best = bestLeft();
      if (best == kinds_.size()) break;
      take(best);
    }
    std::vector<std::size_t> chosen;
    for (std::size_t i = 0; i < kinds_.size(); ++i)
      if (taken_[i] != 0) chosen.push_back(i);
    return chosen;
  }

 private:
  [[nodiscard]] std::size_t bestLeft() const {
    std::size_t best = kinds_.size();
    double most = -1e9;
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
      if (taken_[i] != 0) continue;
      const double worth = worthOf(i);
      if (worth > most) most = worth, best = i;
    }
    return best;
  }

  // Our own judgement; each part is about 1 where it matters most.
  [[nodiscard]] double worthOf(std::size_t i) const {
    const FillKind& kind = kinds_[i];
    double worth = 1.2 * suits_[i] + 0.9 * luck_[i] + (kind.share > 0.0 ? 5.0 : 0.0);
    worth += bloomWorth(kind) + bandWorth(kind) - crowding(kind);
    // What grows there comes again, rather than one more species.
    if (request_.standing.contains(kind.species->botanicalName)) worth += 3.0;
    if (kind.vigour == Vigour::High) worth -= 0.5;
    if (kind.leans) worth -= 0.2;
    // An odd plant of a giant among small ones takes a whole group's room.
    if (kind.spacing > 0.35 * std::max(request_.depth, 0.5)) worth -= 1.5;
    // Few large plants in a small bed make blobs, not drifts.
    constexpr double kFewest = 60.0;  // plants that make a bed of drifts
    const double wide = std::max(0.35, std::sqrt(request_.area / kFewest));
    worth -= 1.4 * std::clamp(kind.spacing / wide - 1.0, 0.0, 1.5);
    // Half of it stays bare at each edge, and what is left in a narrow bed is one stiff line.
    worth -= 2.5 * std::clamp(kind.spacing / request_.width - 0.38, 0.0, 0.6);
    // In a narrow bed whole rows of some spacings fit, and of others half of one is wasted.
    worth -= 8.0 * std::max(0.0, kBandTaken - takenInBand(request_.width / kind.spacing));
    return worth;
  }
  [[nodiscard]] double bloomWorth(const FillKind& kind) const {
    double worth = 0.0;
    for (std::size_t week = 0; week < flowering_.size(); ++week)
      if ((kind.weeks & request_.season) >> week & 1U)
        worth += flowering_[week] == 0 ? 0.15 : flowering_[week] < 3 ? 0.05 : 0.0;
    return std::min(worth, 1.8) + lackingWorth(kind);
  }
  [[nodiscard]] double lackingWorth(const FillKind& kind) const {
    constexpr double kNothingElse = 2.0, kFewElse = 0.7;
    double worth = 0.0;
    for (std::size_t week = 0; week < flowering_.size(); ++week)
      if ((kind.weeks & request_.lacking) >> week & 1U)
        worth = std::max(worth, flowering_[week] == 0  ? kNothingElse
                                : flowering_[week] < 3 ? kFewElse
                                                       : 0.0);
    return worth;
  }
  // Low, middling and tall kinds in a third each, by what the depth of the bed carries.
  [[nodiscard]] std::size_t bandOf(const FillKind& kind) const {
    const double tallest = std::clamp(0.55 * request_.depth, 0.7, 2.2);
    const double height = kind.seen.height;
    return height < 0.35 * tallest   ? 0
           : height < 0.7 * tallest  ? 1
           : height < 1.15 * tallest ? 2
                                     : 3;
  }
  [[nodiscard]] double bandWorth(const FillKind& kind) const {
    const std::size_t band = bandOf(kind);
    if (band == 3) return -2.0;
    const double fair = (static_cast<double>(count_) + 1.0) / 3.0;
    return 0.8 * (1.0 - bands_[band] / fair);
  }
  [[nodiscard]] double crowding(const FillKind& kind) const {
    const double count = static_cast<double>(request_.count);
    double genus = 1.0, family = 1.0;
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
      if (taken_[i] == 0) continue;
      if (kinds_[i].genus == kind.genus) genus += 1.0;
      if (kinds_[i].family == kind.family) family += 1.0;
    }
    double cost = 0.0;
    if (genus > std::max(1.0, 0.85 * request_.limits.genusShare * count)) cost += 2.0;
    if (genus > 1.0) cost += 0.5;
    if (family > std::max(1.0, 0.85 * request_.limits.familyShare * count)) cost += 2.5;
    const double grasses = kind.grassy ? grasses_ + 1.0 : grasses_;
    if (kind.grassy && grasses > 0.34 * count) cost += 2.0;
    if (!kind.grassy && grasses_ < 0.2 * count && count_ + 1 > request_.count / 2) cost += 0.6;
    return cost;
  }
  void take(std::size_t i) {
    taken_[i] = 1;
    ++count_;
    if (kinds_[i].grassy) grasses_ += 1.0;
    if (bandOf(kinds_[i]) < 3) bands_[bandOf(kinds_[i])] += 1.0;
    for (std::size_t week = 0; week < flowering_.size(); ++week)
      if ((kinds_[i].weeks >> week & 1U) != 0) ++flowering_[week];
  }

  const std::vector<FillKind>& kinds_;
  const ChooseRequest& request_;
  std::vector<double> suits_, luck_;
  std::vector<char> taken_;
  std::array<int, 52> flowering_{};
  std::array<double, 3> bands_{};
  double grasses_ = 0.0;
  std::size_t count_ = 0;
};

}  // namespace

// Rows along the band, staggered, the nearest plants 0.9 spacings apart: 0.9 along a row where the
// next row is far enough, else so much that plants of both rows are. Rows but one may not stand
// nearer than that either.
double takenInBand(double width) {
  constexpr double kNearest = 0.9, kRow = 0.779, kGround = 0.866, kBroad = 5.0;
  if (width >= kBroad) return 1.0;
  double most = width > 0.0 ? kGround / (kNearest * std::max(1.0, width)) : 0.0;
  for (int rows = 2; rows <= 6; ++rows) {
    const double apart = (width - 1.0) / (rows - 1);
    if (apart <= 0.0 || (rows > 2 && apart < 0.5 * kNearest)) break;
    const double along =
        apart >= kRow ? kNearest : 2.0 * std::sqrt(kNearest * kNearest - apart * apart);
    most = std::max(most, rows * kGround / (along * width));
  }
  return most;
}

double suitableShare(const FillKind& kind, const std::vector<FillCell>& cells) {
  double good = 0.0, all = 0.0;
  forSome(cells, [&](const FillCell& cell) {
    all += 1.0;
    if (suits(kind, cell)) good += 1.0;
  });
  return all > 0.0 ? good / all : 0.0;
}

double leastHoursOff(const FillKind& kind, const std::vector<FillCell>& cells) {
  double least = 1e9;
  forSome(cells, [&](const FillCell& cell) {
    least = std::min(least, cell.hours < 0.0F ? 0.0 : hoursOff(kind, cell.hours));
  });
  return least > 1e8 ? 0.0 : least;
}

std::vector<std::size_t> chooseKinds(const std::vector<FillKind>& kinds,
                                     const std::vector<FillCell>& cells,
                                     const ChooseRequest& request, Chance& chance) {
  return Choosing(kinds, cells, request, chance).run();
}

}  // namespace tussock
