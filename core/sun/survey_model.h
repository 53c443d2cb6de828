// SPDX-License-Identifier: MIT
// Hours of sun at the points and days of a sun survey, as a function of the trees: everything else
// is worked out once, and so is a tree until it changes. Used by the survey's fit.
#pragma once

#include <vector>

#include "core/model/yard.h"
#include "core/sun/sun_days.h"

namespace tussock {

class SurveyModel {
 public:
  explicit SurveyModel(const Yard& yard);

  [[nodiscard]] const std::vector<SunReading>& readings() const {
    return readings_;
  }  // usable ones
  // By reading; as many trees as the yard has, in its order.
  [[nodiscard]] std::vector<double> hours(const std::vector<Tree>& trees);

 private:
  struct Sight {  // from one reading's point, over its day
    Point at;
    MonthDay day{};
    std::vector<SunStep> steps;
    std::vector<double> share;  // what buildings and barriers let through, step by step
  };
  struct Version {
    Tree tree;
    std::vector<std::vector<double>> share;  // by reading and step
  };
  const Version& versionOf(std::size_t index, const Tree& tree);

  Settings settings_;
  std::vector<SunReading> readings_;
  std::vector<Sight> sights_;
  std::vector<std::vector<Version>> versions_;  // by tree, the latest last
};

}  // namespace tussock
