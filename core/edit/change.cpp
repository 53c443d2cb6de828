// SPDX-License-Identifier: MIT
#include "core/edit/change.h"

#include <algorithm>
#include <map>

#include <fmt/format.h>

namespace tussock {

namespace {

void place(Yard& yard, const Object& object) {
  std::visit(
      [&](const auto& o) {
        using T = std::decay_t<decltype(o)>;
        if constexpr (std::is_same_v<T, Settings>) {
          yard.settings = o;
        } else {
          collectionOf<T>(yard) = collectionOf<T>(yard).with(o);
        }
      },
      object);
}

void erase(Yard& yard, const Object& object) {
  std::visit(
      [&](const auto& o) {
        using T = std::decay_t<decltype(o)>;
        if constexpr (std::is_same_v<T, Settings>) {
          throw EditConflict("The settings of a yard cannot be removed.");
        } else {
          collectionOf<T>(yard) = collectionOf<T>(yard).without(o.id);
        }
      },
      object);
}

template <class T>
void compare(const Collection<T>& from, const Collection<T>& to, ChangeSet& edit) {
  if (from.shares(to)) return;
  for (const T& before : from) {
    const T* after = to.find(before.id);
    if (after == nullptr) {
      edit.changes.push_back({before, std::nullopt});
    } else if (after != &before && !(*after == before)) {
      edit.changes.push_back({before, *after});
    }
  }
  for (const T& after : to)
    if (from.find(after.id) == nullptr) edit.changes.push_back({std::nullopt, after});
}

template <std::size_t... I>
void compareAll(const Yard& from, const Yard& to, ChangeSet& edit, std::index_sequence<I...>) {
  // Index 0 is Settings, which is no collection.
  (compare(collectionOf<std::variant_alternative_t<I + 1, Object>>(from),
           collectionOf<std::variant_alternative_t<I + 1, Object>>(to), edit),
   ...);
}

}  // namespace

ObjectRef subjectOf(const Change& change) {
  return refTo(change.after ? *change.after : change.before.value());
}

Yard apply(const Yard& yard, const ChangeSet& edit) {
  Yard result = yard;
  for (const Change& change : edit.changes) {
    const ObjectRef ref = subjectOf(change);
    if (objectAt(result, ref) != change.before)
      throw EditConflict(fmt::format("\"{}\" does not fit this yard: {} {} is not as it was.",
                                     edit.label, kindOf(ref), ref.id));
    if (change.after) {
      place(result, *change.after);
    } else {
      erase(result, *change.before);
    }
  }
  return result;
}

ChangeSet inverse(const ChangeSet& edit) {
  ChangeSet result{edit.label, {}};
  for (auto it = edit.changes.rbegin(); it != edit.changes.rend(); ++it)
    result.changes.push_back({it->after, it->before});
  return result;
}

ChangeSet difference(const Yard& from, const Yard& to, std::string label) {
  ChangeSet edit{std::move(label), {}};
  if (!(from.settings == to.settings)) edit.changes.push_back({from.settings, to.settings});
  compareAll(from, to, edit, std::make_index_sequence<std::variant_size_v<Object> - 1>{});
  return edit;
}

}  // namespace tussock
