// SPDX-License-Identifier: MIT
// An immutable set of objects ordered by id. Copies share their storage, so a yard can be copied
// and handed to another thread for the price of a few pointers.
#pragma once

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <memory>
#include <utility>
#include <vector>

#include "core/model/id.h"

namespace tussock {

template <class T>
class Collection {
  using Shared = std::shared_ptr<const T>;
  using Items = std::vector<Shared>;

 public:
  class Iterator {
   public:
    using iterator_category = std::random_access_iterator_tag;
    using value_type = T;
    using difference_type = std::ptrdiff_t;
    using pointer = const T*;
    using reference = const T&;
    Iterator() = default;
    explicit Iterator(typename Items::const_iterator at) : at_(at) {}
    reference operator*() const { return **at_; }
    pointer operator->() const { return at_->get(); }
    Iterator& operator++() { return ++at_, *this; }
    Iterator operator++(int) { return Iterator(at_++); }
    Iterator& operator--() { return --at_, *this; }
    Iterator& operator+=(difference_type n) { return at_ += n, *this; }
    friend Iterator operator+(Iterator it, difference_type n) { return it += n; }
    friend difference_type operator-(Iterator a, Iterator b) { return a.at_ - b.at_; }
    bool operator==(const Iterator&) const = default;

   private:
    typename Items::const_iterator at_;
  };

  Collection() : items_(emptyItems()) {}
  // Takes objects in any order; of two with one id the later stays.
  explicit Collection(std::vector<T> values) {
    auto items = std::make_shared<Items>();
    items->reserve(values.size());
    for (T& value : values) items->push_back(std::make_shared<const T>(std::move(value)));
    std::stable_sort(items->begin(), items->end(),
                     [](const Shared& a, const Shared& b) { return a->id < b->id; });
    auto last = std::unique(items->rbegin(), items->rend(),
                            [](const Shared& a, const Shared& b) { return a->id == b->id; });
    items->erase(items->begin(), last.base());
    items_ = std::move(items);
  }

  [[nodiscard]] Iterator begin() const { return Iterator(items_->begin()); }
  [[nodiscard]] Iterator end() const { return Iterator(items_->end()); }
  [[nodiscard]] std::size_t size() const { return items_->size(); }
  [[nodiscard]] bool empty() const { return items_->empty(); }
  [[nodiscard]] const T* find(Id<T> id) const {
    auto at = lowerBound(*items_, id);
    return at != items_->end() && (*at)->id == id ? at->get() : nullptr;
  }

  [[nodiscard]] Collection with(T value) const {  // added, or in place of the one with its id
    auto items = std::make_shared<Items>(*items_);
    auto at = items->begin() + (lowerBound(*items, value.id) - items->cbegin());
    auto shared = std::make_shared<const T>(std::move(value));
    if (at != items->end() && (*at)->id == shared->id) {
      *at = std::move(shared);
    } else {
      items->insert(at, std::move(shared));
    }
    return Collection(std::move(items));
  }
  [[nodiscard]] Collection without(Id<T> id) const {
    auto items = std::make_shared<Items>(*items_);
    std::erase_if(*items, [id](const Shared& item) { return item->id == id; });
    return Collection(std::move(items));
  }

  bool operator==(const Collection& other) const {
    return items_ == other.items_ ||
           std::equal(items_->begin(), items_->end(), other.items_->begin(), other.items_->end(),
                      [](const Shared& a, const Shared& b) { return a == b || *a == *b; });
  }
  // True when both hold the very same storage: a quick "nothing changed here".
  [[nodiscard]] bool shares(const Collection& other) const { return items_ == other.items_; }

 private:
  explicit Collection(std::shared_ptr<const Items> items) : items_(std::move(items)) {}
  static const std::shared_ptr<const Items>& emptyItems() {
    static const auto empty = std::make_shared<const Items>();
    return empty;
  }
  static typename Items::const_iterator lowerBound(const Items& items, Id<T> id) {
    return std::lower_bound(items.begin(), items.end(), id,
                            [](const Shared& item, Id<T> wanted) { return item->id < wanted; });
  }

  std::shared_ptr<const Items> items_;
};

}  // namespace tussock
