// SPDX-License-Identifier: MIT
// A bed that has been filled, beside what was asked: what is told of it is found from this.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/checks/registry.h"
#include "core/planting/fill.h"

namespace tussock {

// What it is made from must outlive it; the yard is that after the fill.
class FillOutcome {
 public:
  FillOutcome(const CheckInput& made, const FillRequest& asked, const FillResult& came);

  const CheckInput& input;
  const FillRequest& request;
  const FillResult& result;

  // Of the list, what suits the bed; each once.
  [[nodiscard]] const std::vector<const Species*>& listed() const { return listed_; }
  [[nodiscard]] bool suits(const std::string& species) const;
  [[nodiscard]] bool isMatrix(const std::string& species) const;
  [[nodiscard]] bool isPlanted(Id<Drift> drift) const { return planted_.contains(drift); }
  // What stood there before and was to stay.
  [[nodiscard]] bool isKept(const Drift& drift) const;
  // Whether the species is, or belongs to, what has the share.
  [[nodiscard]] bool concerns(const Finding& finding, const std::string& species) const;
  [[nodiscard]] std::set<std::string_view> speciesHere() const;  // in the main layer of the bed
  [[nodiscard]] std::size_t plantsHere() const;                  // of all its layers
  [[nodiscard]] int mainPlants() const;                          // of the yard
  // Of a refill of one species, whether the finding is about it or was not there before.
  [[nodiscard]] bool isOfTheRefill(const Finding& finding) const;

 private:
  void takeThoseBefore();
  [[nodiscard]] bool isAboutTheRefilled(const Finding& finding) const;

  std::vector<const Species*> listed_;
  std::set<std::string> matrices_;
  std::set<Id<Drift>> planted_;
  std::set<std::string> before_;  // keys of what was found before, where one species was asked for
};

}  // namespace tussock
