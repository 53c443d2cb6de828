// SPDX-License-Identifier: MIT
#include "core/planting/fill_costs.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <numeric>

#include "core/planting/fill_choose.h"
#include "core/units/date.h"

namespace tussock {

namespace {

// Costs of one breach, against each other; found by filling beds and looking at them.
constexpr double kHeight = 5.0, kHidden = 14.0, kEdge = 2.5, kSun = 9.0, kMoisture = 5.0;
constexpr double kApart = 9.0, kMass = 24.0, kRepetition = 2.5, kSpreaders = 1.2, kSupport = 0.8;
constexpr double kColour = 1.0, kBloom = 0.12, kThirst = 0.7, kRoom = 10.0;

constexpr double kLowEdge = 0.6;     // metres, what still reads as low; common practice
constexpr double kForward = 0.35;    // of the depth that see-through plants may come forward
constexpr double kBeside = 0.5;      // of a place that does not fit: neighbours of other needs
constexpr double kMostHoursOff = 3;  // beyond this it is simply wrong

// The part of a place that plants so far apart leave bare for it is narrow: they do not fit in, or
// only half a row more would.
double noRoom(const Spot& spot, double spacing) {
  constexpr double kUsual = 0.93;  // of the ground, that is taken where there is room
  double bare = 0.0;
  for (const FillCell& cell : spot.samples) {
    if (cell.across <= 0.0F) continue;
    const double wide = static_cast<double>(cell.across) / spacing;
    bare += wide < 1.0 ? 1.0 : std::max(0.0, kUsual - takenInBand(wide));
  }
  return bare / static_cast<double>(std::max<std::size_t>(1, spot.samples.size()));
}

double share(double sum, double most) {
  return most > 0.0 ? std::clamp(sum / most, 0.0, 1.0) : -1.0;
}

}  // namespace

FillCosts::FillCosts(const Layout& layout, const std::vector<FillKind>& kinds, WeekSet season,
                     const FillLimits& limits, double wildness)
    : layout_(layout),
      kinds_(kinds),
      season_(season),
      limits_(limits),
      rhythm_(kRepetition * std::exp2(1.0 - 2.0 * wildness)) {
  for (const Spot& spot : layout.spots) area_ += spot.area;
  const std::size_t count = kinds.size();
  for (auto* pairs : {&clash_, &overrun_, &apart_}) pairs->resize(count * count);
  for (std::size_t a = 0; a < count; ++a)
    for (std::size_t b = 0; b < count; ++b) {
      clash_[a * count + b] = a == b ? 0.0 : colourClash(kinds[a], kinds[b]);
      overrun_[a * count + b] = overrun(kinds[a], kinds[b]);
      apart_[a * count + b] = moistureApart(kinds[a], kinds[b]);
    }
}

void FillCosts::rankHeights(const Assignment& kinds) {
  const std::size_t count = kinds_.size();
  std::vector<double> ground(count, 0.0), drifts(count, 0.0);
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    ground[kinds[i]] += layout_.spots[i].area;
    drifts[kinds[i]] += 1.0;
  }
  std::vector<std::size_t> order(count);
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return kinds_[a].seen.height < kinds_[b].seen.height;
  });
  heightRank_.assign(count, 0.0), ideal_.assign(count, 0.0);
  double below = 0.0;
  for (const std::size_t kind : order) {
    heightRank_[kind] = area_ > 0.0 ? (below + ground[kind] / 2.0) / area_ : 0.5;
    below += ground[kind];
    if (drifts[kind] > 0.0) ideal_[kind] = 0.85 * std::sqrt(area_ / drifts[kind]);
  }
  alone_.resize(layout_.spots.size() * count);
  for (std::size_t spot = 0; spot < layout_.spots.size(); ++spot)
    for (std::size_t kind = 0; kind < count; ++kind) {
      const Terms t = alone(spot, kind);
      alone_[spot * count + kind] = kHeight * t.height + kEdge * t.edge + kSun * t.sun +
                                    kMoisture * t.moisture +
                                    kRoom * noRoom(layout_.spots[spot], kinds_[kind].spacing);
    }
}

FillCosts::Terms FillCosts::alone(std::size_t number, std::size_t kindNumber) const {
  const Spot& spot = layout_.spots[number];
  const FillKind& kind = kinds_[kindNumber];
  Terms terms;
  if (layout_.viewed) {
    const double off = heightRank_[kindNumber] - spot.depth;
    const double allowed = kind.seen.seeThrough ? kForward : 0.0;
    terms.height = off > 0.0 ? std::max(0.0, off - allowed) : -off;
    terms.height = std::min(1.0, terms.height * terms.height * 2.0 + 0.3 * terms.height);
    const double above = (kind.seen.height - kLowEdge) / 1.0;
    terms.edge = spot.edge * std::clamp(above, 0.0, 1.0) * (kind.seen.seeThrough ? 0.5 : 1.0);
  }
  if (spot.hours >= 0.0) {
    const double off = hoursOff(kind, spot.hours);
    terms.sun = off > 0.0 ? std::min(1.0, 0.4 + 0.6 * off / kMostHoursOff) : 0.0;
  }
  for (std::size_t m = 0; m < spot.moisture.size(); ++m)
    if (!likes(kind, static_cast<Moisture>(m))) terms.moisture += spot.moisture[m];
  return terms;
}

double FillCosts::hidden(const SightLine& line, std::size_t rear, std::size_t front) const {
  Sight sight;
  sight.towards = {1.0, 0.0};
  sight.toEyes = line.toEyes;
  const double share =
      hiddenShare(kinds_[rear].seen, kinds_[front].seen, {line.ahead, 0.0}, sight, limits_.sight);
  return share * line.share;
}

double FillCosts::hiddenCost(const SightLine& line, std::size_t rear, std::size_t front) const {
  const double share = hidden(line, rear, front);
  // Beyond the limit it is a finding; some way before it, a risk of one.
  const double risk = std::clamp((share - 0.6 * limits_.hiddenShare) / 0.2, 0.0, 1.0);
  return 0.3 * share + risk;
}

double FillCosts::sightCost(std::size_t spot, const Assignment& kinds) const {
  double sum = 0.0;
  for (const SightLine& line : layout_.inFront[spot])
    sum += hiddenCost(line, kinds[spot], kinds[line.other]);
  for (const SightLine& line : layout_.behind[spot])
    sum += hiddenCost(line, kinds[line.other], kinds[spot]);
  return kHidden * sum;
}

bool FillCosts::unsupported(std::size_t spot, const Assignment& kinds) const {
  const FillKind& kind = kinds_[kinds[spot]];
  if (!kind.leans) return false;
  return std::none_of(layout_.touching[spot].begin(), layout_.touching[spot].end(),
                      [&](std::size_t other) {
                        const FillKind& beside = kinds_[kinds[other]];
                        return beside.supports && beside.seen.height > 0.5 * kind.seen.height;
                      });
}

double FillCosts::touchCost(std::size_t spot, const Assignment& kinds) const {
  const std::size_t kind = kinds[spot];
  double sum = unsupported(spot, kinds) ? kSupport : 0.0;
  for (const std::size_t other : layout_.touching[spot]) {
    const std::size_t beside = kinds[other];
    const std::size_t pair = kind * kinds_.size() + beside;
    if (beside == kind) sum += kinds_[kind].diseaseProne ? kMass : kApart;
    sum += kColour * clash_[pair] + kSpreaders * overrun_[pair] + kThirst * apart_[pair];
    if (unsupported(other, kinds)) sum += kSupport;
  }
  return sum;
}

double FillCosts::crowding(std::size_t kind, double metres) const {
  if (metres >= ideal_[kind]) return 0.0;
  const double near = 1.0 - metres / ideal_[kind];
  return near * near;
}

double FillCosts::repetitionCost(std::size_t spot, const Assignment& kinds) const {
  double sum = 0.0;
  for (const NearSpot& near : layout_.near[spot])
    if (kinds[near.other] == kinds[spot]) sum += crowding(kinds[spot], near.distance);
  return rhythm_ * sum;
}

double FillCosts::around(std::size_t spot, const Assignment& kinds) const {
  return alone_[spot * kinds_.size() + kinds[spot]] + sightCost(spot, kinds) +
         touchCost(spot, kinds) + repetitionCost(spot, kinds);
}

void FillCosts::addWeeks(Weeks& weeks, std::size_t kind, int step) const {
  for (std::size_t week = 0; week < weeks.size(); ++week)
    if ((kinds_[kind].weeks >> week & 1U) != 0)
      weeks[week] = static_cast<std::uint16_t>(weeks[week] + step);
}

double FillCosts::bloomCost(const Weeks& flowering) const {
  double bare = 0.0;
  for (std::size_t week = 0; week < flowering.size(); ++week)
    if ((season_ >> week & 1U) != 0 && flowering[week] == 0) bare += 1.0;
  return kBloom * bare;
}

double FillCosts::bloomCost(const Assignment& kinds) const {
  std::vector<Weeks> parts(layout_.parts);
  for (Weeks& part : parts) part.fill(0);
  for (std::size_t i = 0; i < kinds.size(); ++i)
    addWeeks(parts[layout_.spots[i].part], kinds[i], 1);
  double sum = 0.0;
  for (const Weeks& part : parts) sum += bloomCost(part);
  return sum;
}

void FillCosts::addPairs(const Assignment& kinds, TermSums& sums) const {
  auto& hiddenSum = sums[static_cast<std::size_t>(FillTerm::Height)];
  auto& apart = sums[static_cast<std::size_t>(FillTerm::Apart)];
  auto& colour = sums[static_cast<std::size_t>(FillTerm::Colour)];
  auto& spreaders = sums[static_cast<std::size_t>(FillTerm::Spreaders)];
  auto& repetition = sums[static_cast<std::size_t>(FillTerm::Repetition)];
  auto& moisture = sums[static_cast<std::size_t>(FillTerm::Moisture)];
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    double most = 0.0;
    for (const SightLine& line : layout_.inFront[i])
      most = std::max(most, hidden(line, kinds[i], kinds[line.other]));
    hiddenSum += most;
    double clash = 0.0, strong = 0.0, same = 0.0, crowd = 0.0, thirst = 0.0;
    for (const std::size_t other : layout_.touching[i]) {
      const std::size_t pair = kinds[i] * kinds_.size() + kinds[other];
      clash = std::max(clash, clash_[pair]), strong = std::max(strong, overrun_[pair]);
      thirst = std::max(thirst, kBeside * apart_[pair]);
      if (kinds[other] == kinds[i]) same = 1.0;
    }
    for (const NearSpot& near : layout_.near[i])
      if (kinds[near.other] == kinds[i]) crowd = std::max(crowd, crowding(kinds[i], near.distance));
    colour += clash, spreaders += strong, apart += same, repetition += crowd;
    moisture += std::max(thirst, alone(i, kinds[i]).moisture);
  }
}

// Drifts of species that come again; where none does, there is nothing to judge.
double FillCosts::repeated(const Assignment& kinds) const {
  std::vector<double> drifts(kinds_.size(), 0.0);
  for (const std::size_t kind : kinds) drifts[kind] += 1.0;
  double sum = 0.0;
  for (const double count : drifts) sum += count > 1.0 ? count : 0.0;
  return sum;
}

TermSums FillCosts::badness(const Assignment& kinds) const {
  TermSums sums{};
  const double count = static_cast<double>(kinds.size());
  auto at = [&sums](FillTerm term) -> double& { return sums[static_cast<std::size_t>(term)]; };
  addPairs(kinds, sums);
  double leaning = 0.0, sunny = 0.0, edge = 0.0;
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    const Terms t = alone(i, kinds[i]);
    at(FillTerm::Height) += t.height;
    if (kinds_[kinds[i]].leans) leaning += 1.0;
    if (unsupported(i, kinds)) at(FillTerm::Support) += 1.0;
    if (layout_.spots[i].hours >= 0.0) sunny += 1.0, at(FillTerm::Sun) += t.sun;
    edge += layout_.spots[i].edge, at(FillTerm::LowEdge) += t.edge;
  }
  at(FillTerm::Height) = layout_.viewed ? share(at(FillTerm::Height), count) : -1.0;
  at(FillTerm::LowEdge) = layout_.viewed ? share(at(FillTerm::LowEdge), edge) : -1.0;
  at(FillTerm::Sun) = share(at(FillTerm::Sun), sunny);
  at(FillTerm::Support) = share(at(FillTerm::Support), leaning);
  for (const FillTerm term :
       {FillTerm::Moisture, FillTerm::Apart, FillTerm::Spreaders, FillTerm::Colour})
    at(term) = share(at(term), count);
  at(FillTerm::Repetition) = share(at(FillTerm::Repetition), repeated(kinds));
  const double weeks =
      static_cast<double>(std::popcount(season_) * static_cast<int>(layout_.parts));
  at(FillTerm::Bloom) = share(bloomCost(kinds) / kBloom, weeks);
  return sums;
}

}  // namespace tussock
