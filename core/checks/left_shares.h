// SPDX-License-Identifier: MIT
// Why species, genera and families have more than their usual share after a fill, and which came
// otherwise than they were asked for: one note for all that have the same reason.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/checks/asked_shares.h"
#include "core/checks/fill_outcome.h"
#include "core/checks/shares.h"
#include "core/checks/wording.h"
#include "core/planting/fill_kinds.h"

namespace tussock {

class LeftShares {
 public:
  explicit LeftShares(const FillOutcome& outcome);

  // The finding is about the largest; the others over the limit have reasons of their own.
  void add(const Finding& largest, Rank rank);
  [[nodiscard]] std::vector<std::string> tell() const;

 private:
  struct Reason {
    std::string why, remedy;
    bool operator==(const Reason&) const = default;
  };
  struct Group {
    Reason reason;
    std::map<Rank, std::vector<std::string>> over;  // "purple coneflower 20 %"
  };

  void addTo(const Reason& reason, Rank rank, std::string over);
  [[nodiscard]] bool isOfOthers(const std::set<std::string>& here) const;
  [[nodiscard]] Reason reasonFor(const Finding& finding) const;
  [[nodiscard]] Reason reasonByRoom(const Finding& finding, bool barely) const;
  [[nodiscard]] Reason reasonByList(const Finding& finding) const;
  [[nodiscard]] std::string nameOf(const Finding& finding, Rank rank) const;
  [[nodiscard]] std::string textOf(const Group& group) const;
  [[nodiscard]] std::string nearer() const;
  [[nodiscard]] std::set<std::string> plantedOf(const Finding& finding) const;
  [[nodiscard]] std::size_t keptOf(const Finding& finding) const;
  [[nodiscard]] std::vector<FillKind> mainKinds() const;

  const FillOutcome& outcome_;
  Wording words_;
  AskedShares shares_;
  std::map<Rank, std::string> limits_;  // "10 %"
  std::vector<Group> groups_;
  std::set<std::string> told_;  // species whose asked share is told here
};

}  // namespace tussock
