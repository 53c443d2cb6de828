// SPDX-License-Identifier: MIT
// Collects changes to a yard into one change set.
#pragma once

#include <string>
#include <utility>

#include "core/edit/change.h"

namespace tussock {

class Draft {
 public:
  explicit Draft(const Yard& yard) : before_(yard), after_(yard) {}

  // Adds the object, or puts it in place of the one with its id.
  template <class T>
  void put(T object) {
    if constexpr (std::is_same_v<T, Settings>) {
      after_.settings = std::move(object);
    } else {
      collectionOf<T>(after_) = collectionOf<T>(after_).with(std::move(object));
    }
  }
  template <class T>
  void remove(Id<T> id) {
    collectionOf<T>(after_) = collectionOf<T>(after_).without(id);
  }
  void remove(ObjectRef ref);

  [[nodiscard]] const Yard& yard() const { return after_; }
  [[nodiscard]] ChangeSet finish(std::string label) const {
    return difference(before_, after_, std::move(label));
  }

 private:
  Yard before_;
  Yard after_;
};

// Removing a bed removes its drifts too; the label says how many.
[[nodiscard]] ChangeSet removeObjects(const Yard& yard, const std::vector<ObjectRef>& refs);
// Objects moved by a step; a bed takes its drifts along. Locked photos and locked drifts stay.
[[nodiscard]] ChangeSet moveObjects(const Yard& yard, const std::vector<ObjectRef>& refs,
                                    Point step);

}  // namespace tussock
