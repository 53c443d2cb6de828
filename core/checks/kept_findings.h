// SPDX-License-Identifier: MIT
// Running the checks again after an edit, at the price of the edit: beds in which nothing changed
// keep their findings.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/checks/registry.h"

namespace tussock {

// Remembers the last run. The findings are always those of runChecks for the same input.
class KeptFindings {
 public:
  // Nothing when stopped. `sun` may be null; it is held, so that the same pointer is the same map.
  [[nodiscard]] std::optional<std::vector<Finding>> run(const Yard& yard, const Catalogue& facts,
                                                        std::shared_ptr<const SunMap> sun,
                                                        std::stop_token stop = {});

 private:
  struct OfBed {
    // The bed and its drifts, by address: an edit replaces an object by another, and yard_ keeps
    // the old ones alive, so the same address is the same value.
    std::vector<const void*> objects;
    std::vector<Finding> findings;
  };
  using OfBeds = std::map<Id<Bed>, std::shared_ptr<const OfBed>>;

  [[nodiscard]] bool sameSurroundings(const CheckInput& input) const;
  [[nodiscard]] static std::shared_ptr<const OfBed> checkBed(const Survey& survey,
                                                             const SurveyedBed& bed,
                                                             const std::stop_token& stop);
  [[nodiscard]] std::optional<OfBeds> checkBeds(const Survey& survey,
                                                const std::stop_token& stop) const;

  std::optional<Yard> yard_;
  Catalogue facts_;
  std::shared_ptr<const SunMap> sun_;
  OfBeds ofBeds_;
};

}  // namespace tussock
