// SPDX-License-Identifier: MIT
#include "core/planting/fill_trades.h"

#include <algorithm>
#include <cmath>

#include "core/planting/drift_plants.h"
#include "core/planting/fill_regrow.h"
#include "core/planting/one_piece.h"

namespace tussock {

namespace {

bool sameSpacing(const Drift& drift, double metres) {
  return std::abs(drift.spacing.metres() - metres) < 1e-6;
}

Drift asSpecies(Drift drift, const std::string& species) {
  drift.species = species;
  return drift;
}

bool isLast(const Yard& yard, const Drift& drift) {
  return std::none_of(yard.drifts.begin(), yard.drifts.end(), [&](const Drift& other) {
    return other.id != drift.id && other.bed == drift.bed && other.species == drift.species &&
           !other.plants.empty();
  });
}

bool isSpare(const TradeRequest& request, const Drift& drift) {
  return !request.keepAll || !isLast(request.yard, drift);
}

const FillKind* kindOf(const TradeRequest& request, const Drift& drift) {
  const auto found = std::find_if(
      request.kinds.begin(), request.kinds.end(),
      [&](const FillKind& kind) { return kind.species->botanicalName == drift.species; });
  return found == request.kinds.end() ? nullptr : &*found;
}

bool mayRegrow(const Drift& drift, const FillKind& kind) {
  return !kind.matrix && drift.pattern != Pattern::Matrix && !sameSpacing(drift, kind.spacing) &&
         kind.species->botanicalName != drift.species;
}

// Each is set out anew on the ground of the other.
bool offerGround(const TradeRequest& request, const Drift& one, const Drift& other,
                 const TakeTrade& take) {
  const FillKind* ofOne = kindOf(request, one);
  const FillKind* ofOther = kindOf(request, other);
  if (ofOne == nullptr || ofOther == nullptr || !mayRegrow(one, *ofOther) ||
      !mayRegrow(other, *ofOne))
    return false;
  if (!request.mayPlant()) return false;
  const auto first = regrownAs(request.yard, one, *ofOther);
  if (!first) return false;
  Yard half = request.yard;
  half.drifts = half.drifts.with(*first);
  const auto second = regrownAs(half, other, *ofOne);
  return second && take({*first, *second});
}

}  // namespace

bool offerOthers(const TradeRequest& request, const Drift& drift, const TakeTrade& take) {
  if (!isSpare(request, drift)) return false;
  for (const FillKind& kind : request.kinds)
    if (sameSpacing(drift, kind.spacing) && !kind.matrix &&
        kind.species->botanicalName != drift.species &&
        take({asSpecies(drift, kind.species->botanicalName)}))
      return true;
  return false;
}

// Where there are a few plants too many of a species, a pair goes from the end of a drift.
bool offerFewer(const TradeRequest&, const Drift& drift, const TakeTrade& take) {
  constexpr std::size_t kLeast = 5;
  if (drift.plants.size() < kLeast) return false;
  Drift fewer = drift;
  fewer.plants = fewerPlants(drift, static_cast<int>(drift.plants.size()) - 2);
  return inOnePiece(positionsOf(fewer), fewer.spacing) && take({fewer});
}

bool offerPartners(const TradeRequest& request, const Drift& drift, const TakeTrade& take) {
  for (const Id<Drift> id : request.mine) {
    const Drift* other = request.yard.drifts.find(id);
    if (other == nullptr || id == drift.id || other->layer != drift.layer ||
        other->pattern == Pattern::Matrix || other->species == drift.species ||
        !sameSpacing(drift, other->spacing.metres()))
      continue;
    if (take({asSpecies(drift, other->species), asSpecies(*other, drift.species)})) return true;
  }
  return false;
}

bool offerRegrown(const TradeRequest& request, const Drift& drift, const TakeTrade& take) {
  if (drift.layer != Layer::Main) return false;
  const bool spare = isSpare(request, drift);
  for (const FillKind& kind : request.kinds) {
    if (!spare || !mayRegrow(drift, kind)) continue;
    if (!request.mayPlant()) return false;
    const auto next = regrownAs(request.yard, drift, kind);
    if (next && take({*next})) return true;
  }
  for (const Id<Drift> id : request.mine) {
    const Drift* other = request.yard.drifts.find(id);
    if (other == nullptr || other->layer != drift.layer) continue;
    if (offerGround(request, drift, *other, take)) return true;
  }
  return false;
}

}  // namespace tussock
