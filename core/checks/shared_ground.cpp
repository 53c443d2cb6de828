// SPDX-License-Identifier: MIT
#include <algorithm>
#include <iterator>
#include <optional>

#include "core/checks/checks.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {

double squareMetres(const std::vector<Polygon>& pieces) {
  double sum = 0.0;
  for (const Polygon& piece : pieces) sum += areaOf(piece).squareMetres();
  return sum;
}

std::optional<Finding> sharedBy(const Bed& one, const Bed& other, double limit) {
  const double smaller =
      std::min(areaOf(one.outline).squareMetres(), areaOf(other.outline).squareMetres());
  std::vector<Polygon> shared = intersection(one.outline, other.outline);
  const double share = smaller > 0.0 ? squareMetres(shared) / smaller : 0.0;
  if (share <= limit) return std::nullopt;
  Finding finding;
  finding.check = CheckId::SharedGround;
  finding.subjects = {refTo(one.id), refTo(other.id)};
  finding.place = std::move(shared);
  finding.measured = share;
  finding.required = limit;
  finding.unit = Quantity::Share;
  finding.thresholdId = "shared_ground";
  return finding;
}

}  // namespace

std::vector<Finding> checkSharedGround(const Survey& survey) {
  std::vector<Finding> findings;
  const double limit = survey.limit("shared_ground");
  for (auto one = survey.beds.begin(); one != survey.beds.end(); ++one)
    for (auto other = std::next(one); other != survey.beds.end(); ++other) {
      if (!one->box.overlaps(other->box)) continue;
      if (auto finding = sharedBy(*one->bed, *other->bed, limit))
        findings.push_back(std::move(*finding));
    }
  return findings;
}

}  // namespace tussock
