// SPDX-License-Identifier: MIT
// The shares that a plant list asks for, held against what a fill has planted.
#pragma once

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"

namespace tussock {

// Of the plants of a list; 0 to 1.
struct AskedShare {
  double asked = 0.0, planted = 0.0;

  [[nodiscard]] bool kept() const;         // within 3 points; our own judgement
  [[nodiscard]] std::string text() const;  // "asked 41 %, planted 61 %"
};

class AskedShares {
 public:
  // `counts` says which drifts of the bed were planted from the list. Shares that do not come to
  // the whole are taken as a fill takes them. Ground covers and bulbs without a share come on top
  // of the others, and are not counted.
  AskedShares(const std::vector<ListedSpecies>& list, const Yard& planted, const Catalogue& facts,
              Id<Bed> bed, const std::function<bool(const Drift&)>& counts);

  // Of a species, or of several together; none where one of them has no share, or there are none.
  [[nodiscard]] std::optional<AskedShare> of(const std::set<std::string>& species) const;
  // What the shares leave to each species that has none.
  [[nodiscard]] double leftToEach() const;
  [[nodiscard]] bool any() const { return any_; }
  // A sentence of what was planted otherwise than asked, but for the species that
  // have been told of; empty when there is none. `nameOf` gives the words for a species.
  [[nodiscard]] std::string others(
      const std::set<std::string>& told,
      const std::function<std::string(std::string_view)>& nameOf) const;

 private:
  struct Entry {
    std::string species;
    double asked = 0.0;  // 0 where left open
    double plants = 0.0;
    bool main = false;  // planted in the main layer, whatever its usual one
  };
  void takeWhole(const Catalogue& facts);
  [[nodiscard]] const Entry* find(const std::string& species) const;

  std::vector<Entry> entries_;  // each species once
  double plants_ = 0.0;
  bool any_ = false;
};

}  // namespace tussock
