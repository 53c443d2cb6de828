// SPDX-License-Identifier: MIT
// What a planting of the main layer lacks, whoever grows where: ground that is not taken, plants
// that stand too near, species that came to no drift.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/model/drift.h"
#include "core/planting/fill_ground.h"
#include "core/planting/fill_kinds.h"
#include "core/planting/fill_watch.h"

namespace tussock {

// Of the free ground; where less is taken there is a gap.
inline constexpr double kLeastGroundTaken = 0.935;

struct PlantingLacks {
  double cost = 0.0;                    // off the score; our own judgement
  bool any = false;                     // that another try may mend
  std::vector<const Species*> missing;  // of those wanted
};
[[nodiscard]] std::size_t plantsIn(const std::vector<KeptDrift>& drifts);
[[nodiscard]] double groundTakenBy(const std::vector<KeptDrift>& drifts);  // square metres
// Shares of the free ground.
struct GroundShares {
  double taken = 1.0;
  double covered = 1.0;  // within one spacing of a plant
};
// Of the cells of the ground, with the main layer that stands in the bed of a yard laid flat; 1 in
// beds of a few plants, which are all edge.
[[nodiscard]] double coveredBy(const std::vector<KeptDrift>& drifts, const FillGround& ground,
                               const Yard& flat, Id<Bed> bed);
// When told to halt, distances are not looked at: they take time.
[[nodiscard]] PlantingLacks lacksOf(const std::vector<KeptDrift>& drifts,
                                    const std::vector<FillKind>& wanted, const GroundShares& ground,
                                    const WorkWatch& watch);

// A sentence that names the first of them.
[[nodiscard]] std::string noRoomFor(const std::vector<const Species*>& missing,
                                    const Catalogue& catalogue);
[[nodiscard]] std::string noTimeFor(const std::vector<const Species*>& missing,
                                    const Catalogue& catalogue);
// Of the kinds those that no drift is of.
[[nodiscard]] std::vector<const Species*> missingFrom(const std::vector<KeptDrift>& drifts,
                                                      const std::vector<FillKind>& wanted);

}  // namespace tussock
