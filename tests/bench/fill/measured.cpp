// SPDX-License-Identifier: MIT
#include "tests/bench/fill/measured.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/overlay.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_score.h"
#include "tests/support/triangular_lattice.h"

namespace tussock::bench {

namespace {

// Rows show when directions are gathered more than halfway from random ones, as many, to those of a
// strict lattice in the same bed.
double rowsShowAbove(const Yard& yard, const Bed& bed, const BedMeasures& measures) {
  constexpr std::size_t kBins = 18;
  if (measures.rows.pairs < 300) return 1e9;
  const Length spacing = Length::metres(measures.meanSpacing);
  std::vector<Point> lattice;
  for (const Point p :
       test::triangularLattice(boundsOf(bed.outline), spacing, {0, 0}, Angle::degrees(5)))
    if (contains(bed.outline, p)) lattice.push_back(p);
  const std::vector<double> spacings(lattice.size(), spacing.metres());
  const double strict = rowsOf(lattice, spacings).rowiness;
  Chance chance(static_cast<unsigned>(yard.drifts.size()));
  constexpr int kRounds = 200;
  double random = 0.0;
  for (int round = 0; round < kRounds; ++round) {
    std::array<int, kBins> bins{};
    for (int i = 0; i < measures.rows.pairs; ++i) ++bins[chance.below(kBins)];
    random += *std::max_element(bins.begin(), bins.end()) * static_cast<double>(kBins) /
              measures.rows.pairs / kRounds;
  }
  return (strict + random) / 2.0;
}

bool isPlacingRule(CheckId id) {
  return id == CheckId::Spacing || id == CheckId::SetBack || id == CheckId::Obstructed;
}

}  // namespace

int Measured::placingRulesBroken() const {
  int count = 0;
  for (const auto& [id, found] : findings) count += isPlacingRule(id) ? found : 0;
  return count;
}

int Measured::otherFindings() const {
  int count = 0;
  for (const auto& [id, found] : findings) count += isPlacingRule(id) ? 0 : found;
  return count;
}

Measured measured(const Yard& planted, const Catalogue& catalogue, const SunMap* sun, Id<Bed> id) {
  const Bed& bed = *planted.beds.find(id);
  Measured result;
  result.bed = measure(planted, id);
  result.area = areaOf(bed.outline).squareMetres();
  const OrientedRectangle box = smallestRectangle(bed.outline.outer, Length());
  result.widthInSpacings = result.area / box.length / std::max(0.05, result.bed.meanSpacing);
  result.rowsShowAbove = rowsShowAbove(planted, bed, result.bed);
  result.rowsShow = result.bed.rows.rowiness > result.rowsShowAbove;
  const FillScore score = scoreBed(planted, catalogue, sun, id, bed.wildness);
  result.score = score.total;
  result.height = score.of(FillTerm::Height).value_or(1.0);
  const std::vector<Finding> findings = runChecks({planted, catalogue, sun}).value();
  for (const Finding& finding : findings) ++result.findings[finding.check];
  return result;
}

}  // namespace tussock::bench
