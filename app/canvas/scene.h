// SPDX-License-Identifier: MIT
// The items of a yard, from the ground up. It follows the yard; it never writes.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <vector>

#include "app/canvas/item.h"
#include "core/edit/change.h"

namespace tussock {

class Scene {
 public:
  void show(const Yard& yard);
  // Only what the edit names is made anew. `yard` is the yard after it.
  void follow(const Yard& yard, const ChangeSet& edit);

  [[nodiscard]] const Item* find(ObjectRef ref) const;
  // From the ground up, those that touch the box.
  [[nodiscard]] std::vector<const Item*> within(const Box& box) const;
  // Topmost first; what spreads over open ground comes just before that.
  [[nodiscard]] std::vector<const Item*> at(Point p, double reach) const;

 private:
  using Key = std::pair<Depth, ObjectRef>;
  void put(const Object& object, const Yard& yard);
  void drop(ObjectRef ref);
  void addSpreading(std::vector<const Item*>& found, Point p) const;

  std::map<Key, std::unique_ptr<Item>> items_;
  std::map<ObjectRef, Depth> depths_;
};

}  // namespace tussock
