// SPDX-License-Identifier: MIT
// A sun survey: hours of sun seen at points on days, beside those computed, and the tree heights
// and opennesses that would fit them best. A proposal only; nothing is applied.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/edit/change.h"

namespace tussock {

struct ReadingCompared {
  Id<SunReading> reading;
  double observed = 0.0, computed = 0.0;  // hours on the reading's day
  [[nodiscard]] double residual() const { return observed - computed; }
};
// In order of the readings; those with a problem (see readingProblem) are left out.
[[nodiscard]] std::vector<ReadingCompared> compareReadings(const Yard& yard);
// Root mean square of the residuals, hours; 0 without readings.
[[nodiscard]] double rmsOf(const std::vector<ReadingCompared>& compared);

enum class TreeQuantity { Height, OpennessLeaf, OpennessBare };
struct FittedValue {
  Id<Tree> tree;
  TreeQuantity quantity = TreeQuantity::Height;
  double from = 0.0, to = 0.0;  // metres, or share of sun let through
  enum class End { None, Least, Most };
  End end = End::None;  // of what is taken for possible, where `to` lies at it
};

enum class SurveyVerdict {
  NoReadings,
  NothingToFit,  // no tree can shade any of the points at the time
  TooFew,        // fewer readings than unknowns: the change nearest to what is drawn
  Fitted
};
struct SurveyFit {
  SurveyVerdict verdict = SurveyVerdict::NoReadings;
  int unknowns = 0;  // heights and opennesses that the readings can tell anything about
  std::vector<ReadingCompared> before, after;
  std::vector<FittedValue> values;  // those that change, rounded to 0.1 m and 0.01
  ChangeSet proposal;               // empty when what is drawn fits as well
  std::string text;                 // what was found, as a sentence or two
};
// Least squares by Levenberg and Marquardt's method on the sun engine, heights held between 0.3 and
// 3 times those drawn and above the crown's base, opennesses between 0 and 1. Always the same for
// the same yard. Nothing when stopped.
[[nodiscard]] std::optional<SurveyFit> fitSurvey(const Yard& yard, std::stop_token stop = {});

}  // namespace tussock
