// SPDX-License-Identifier: MIT
// The plant schedule: what a yard or bed takes, counted in one place for sheets, labels and lists.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"

namespace tussock {

// All plants of one species in one size. Existing plants have lines of their own, to be left out of
// orders.
struct ScheduleLine {
  std::string code;  // empty when the species has no code yet
  std::string botanicalName;
  const Species* species = nullptr;  // null when the catalogue does not know it
  StockSize size = StockSize::Plug;
  Length closest, widest;  // spacings on centre; equal when all drifts have the same
  int quantity = 0;
  int drifts = 0;

  bool operator==(const ScheduleLine&) const = default;
};

// What is to be had and what stands there already, never in one sum: orders are made from the
// first.
struct PlantSums {
  int toPlant = 0;
  int existing = 0;

  [[nodiscard]] int all() const { return toPlant + existing; }
  void add(StockSize size, int plants) {
    (size == StockSize::Existing ? existing : toPlant) += plants;
  }
  bool operator==(const PlantSums&) const = default;
};
[[nodiscard]] PlantSums sumsOf(const std::vector<ScheduleLine>& lines);

// By botanical name, then size. Species point into the catalogue, which must live on.
[[nodiscard]] std::vector<ScheduleLine> scheduleOf(const Yard& yard, const Catalogue& catalogue,
                                                   std::optional<Id<Bed>> bed = std::nullopt);

}  // namespace tussock
