// SPDX-License-Identifier: MIT
// All plants of a fill on the move: each pushes others off to its distance and stays inside what is
// free for it, until the placement rules hold (position-based dynamics, Müller and others 2007).
#pragma once

#include <map>
#include <memory>
#include <vector>

#include "core/planting/disc_grid.h"
#include "core/planting/fill_plant.h"
#include "core/planting/ground.h"

namespace tussock {

// The free ground for plants of one spacing, quick to ask.
class FreeGround {
 public:
  FreeGround(const PlantingPlace& place, double spacing);

  [[nodiscard]] double spacing() const { return spacing_; }
  // Inside by the set-back and clear of what stands there; other plants of the fill are not asked.
  [[nodiscard]] bool holds(Point p) const;
  // Pushed inside if it can be done.
  [[nodiscard]] Point inside(Point p) const;
  // Away from kept plants, trunks and stepping places that stand nearer than `share` of usual.
  [[nodiscard]] Point pushFromKept(Point p, double share) const;
  // At its least distance from them.
  [[nodiscard]] bool clearOfKept(Point p) const;

 private:
  const FillGround& cells_;
  Ground ground_;
  double spacing_;
  double setBack_;
  double widest_ = 0.0;
  DiscGrid kept_;
};

class Settling {
 public:
  Settling(const PlantingPlace& place, const std::vector<DriftToPlant>& drifts,
           const DriftPlaces& places);

  // Plants nearer than `rest` of their usual distance push each other off; `even` distances or a
  // little different from plant to plant, so that rows do not form.
  enum class Distances { Even, Uneven };
  void round(double rest, Distances distances);

  // The same for plants that keep the rules already, within the rules: those beside a hole lean
  // into it, and no drift is parted.
  void ease(double rest);

  struct Item {
    std::size_t drift = 0;
    const FreeGround* free = nullptr;
    double uneven = 1.0;
    bool stands = true;
  };
  [[nodiscard]] std::size_t size() const { return items_.size(); }
  [[nodiscard]] const Item& item(std::size_t i) const { return items_[i]; }
  [[nodiscard]] Point at(std::size_t i) const { return grid_.at(i); }
  [[nodiscard]] double spacing(std::size_t i) const { return items_[i].free->spacing(); }
  [[nodiscard]] const FreeGround& freeFor(std::size_t drift) const;
  [[nodiscard]] const DiscGrid& grid() const { return grid_; }
  [[nodiscard]] double widest() const { return widest_; }

  // How many placement rules this plant breaks, with those that stand.
  [[nodiscard]] int breaches(std::size_t i) const;
  // Whether a plant of the drift may stand there; plant `without` is not asked.
  [[nodiscard]] bool fits(std::size_t drift, Point p, std::size_t without = kNobody) const;
  // The same, and whether its drift stays whole when the plant moves there.
  [[nodiscard]] bool mayMove(std::size_t i, Point to) const {
    return fits(items_[i].drift, to, i) && keepsTouch(i, to);
  }
  void moveTo(std::size_t i, Point to) { grid_.move(i, to); }
  // To the nearest plant from there, as a share of the usual distance; at most 1.
  [[nodiscard]] double roomFor(std::size_t i, Point to) const;
  // The mean of that over all plants; 1 without any.
  [[nodiscard]] double meanNearest() const;
  void setStands(std::size_t i, bool stands) { items_[i].stands = stands; }
  void add(std::size_t drift, Point p);

  static constexpr std::size_t kNobody = static_cast<std::size_t>(-1);

 private:
  [[nodiscard]] Point pushOn(std::size_t i, double rest, Distances distances) const;
  [[nodiscard]] Point stepOf(std::size_t i, Point push) const;
  void move(std::size_t i, Point push);
  [[nodiscard]] bool keepsTouch(std::size_t i, Point to) const;
  std::vector<DriftToPlant> drifts_;
  std::map<double, std::unique_ptr<FreeGround>> free_;  // by spacing
  std::vector<Item> items_;
  double widest_ = 0.0;  // metres, the largest spacing
  DiscGrid grid_;
};

}  // namespace tussock
