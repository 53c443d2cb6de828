// SPDX-License-Identifier: MIT
// Filling a bed with drifts: which species, how many of each, where. Every rule that a placing is
// judged by is a term of its own, with its weight; see docs/methods-planting.md.
#pragma once

#include <chrono>
#include <functional>
#include <optional>
#include <set>
#include <stop_token>
#include <string>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/edit/change.h"
#include "core/planting/fill_judge.h"
#include "core/planting/fill_score.h"
#include "core/planting/fill_terms.h"
#include "core/sun/map.h"

namespace tussock {

enum class FillWhat {
  WholeBed,    // takes out what is free and new, keeps what is locked or existing
  EmptyPart,   // keeps every plant
  OneSpecies,  // takes out the free drifts of one species and plants it anew
};

struct FillRequest {
  Id<Bed> bed;
  std::vector<ListedSpecies> plants;  // the bed's own plant list when empty; else one is proposed
  int seed = 1;
  std::optional<double> wildness;  // 0 formal to 1 natural; the bed's own when absent
  FillWhat what = FillWhat::WholeBed;
  std::string species;  // for OneSpecies, its botanical name
  StockSize size = StockSize::Plug;
  std::optional<std::chrono::milliseconds> timeLimit;  // as usualTimeFor when absent
  FillLimits limits;
  FillJudge judge;           // asked of plantings while one is chosen and mended; may be empty
  FillJudge judgeOfSection;  // the same for a part of a bed: without what only the whole shows
};

// Whether a fill takes this drift out before it plants.
[[nodiscard]] bool takesOut(const FillRequest& request, const Drift& drift);
[[nodiscard]] Yard withoutTakenOut(const Yard& yard, const FillRequest& request);

struct FillResult {
  ChangeSet edit;                     // empty when nothing could be planted
  bool unchanged = false;             // or when all that would be planted stands there already
  FillScore score;                    // of the bed as it is after the edit
  std::vector<std::string> notes;     // what could not be met and why, as sentences
  std::vector<ListedSpecies> plants;  // the list that was planted from
  std::set<std::string> suiting;      // species of it that find a place they like in the bed
  bool proposed = false;              // that list came from the catalogue
  bool cutShort = false;  // the time limit ended the work: another machine may plant otherwise
  bool stopped = false;   // somebody stopped the work and kept what stood by then
  bool untried = false;   // so large a bed that not every exchange between drifts was tried
  std::set<std::string> takers = {};  // species given drifts of others, so that less is found
  int planted = 0;                    // plants, in all layers
  std::size_t drifts = 0, species = 0;
};

struct FillProgress {
  double share = 0.0;           // of the work, 0 to 1
  std::vector<KeptDrift> best;  // planted so far, and best; empty when nothing is new
  // Before anything is planted: the drifts as they grow, roughly and not yet by the rules.
  std::vector<KeptDrift> grown = {};
  // The list that is planted from and what is said of it; for the call only.
  const FillResult* listed = nullptr;
};
using FillProgressCall = std::function<void(const FillProgress&)>;

// The same input and seed give the same bed, unless the time limit cut the work short. Nothing when
// stopped. `sun` may be null. Never moves a plant that is kept nor changes its id.
[[nodiscard]] std::optional<FillResult> fillBed(const Yard& yard, const Catalogue& catalogue,
                                                const SunMap* sun, const FillRequest& request,
                                                IdSource& ids, std::stop_token stop = {},
                                                const FillProgressCall& progress = {});

// A plant list for the bed from the catalogue: species that suit its sun, moisture, zone and state,
// few or many by its size and wildness, that flower one after another.
[[nodiscard]] std::vector<ListedSpecies> proposeList(const Yard& yard, const Catalogue& catalogue,
                                                     const SunMap* sun, Id<Bed> bed, int seed,
                                                     double wildness,
                                                     const FillLimits& limits = {});

}  // namespace tussock
