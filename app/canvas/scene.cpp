// SPDX-License-Identifier: MIT
#include "app/canvas/scene.h"

#include <algorithm>
#include <ranges>

namespace tussock {

void Scene::show(const Yard& yard) {
  items_.clear();
  depths_.clear();
  forEachObject(yard, [&](const auto& object) { put(Object(object), yard); });
}

void Scene::follow(const Yard& yard, const ChangeSet& edit) {
  for (const Change& change : edit.changes) {
    drop(subjectOf(change));
    if (change.after) put(*change.after, yard);
  }
}

const Item* Scene::find(ObjectRef ref) const {
  const auto depth = depths_.find(ref);
  return depth == depths_.end() ? nullptr : items_.at({depth->second, ref}).get();
}

std::vector<const Item*> Scene::within(const Box& box) const {
  std::vector<const Item*> found;
  for (const auto& [key, item] : items_)
    if (item->bounds().overlaps(box)) found.push_back(item.get());
  return found;
}

std::vector<const Item*> Scene::at(Point p, double reach) const {
  std::vector<const Item*> found;
  for (const auto& [key, item] : std::views::reverse(items_))
    if (item->hit(p, reach)) found.push_back(item.get());
  // Of ground that lies on ground the smaller is meant: a path across a bed, a bed in a plaza.
  const auto isGround = [](const Item* item) {
    return item->depth() >= Depth::Bed && item->depth() <= Depth::Paving;
  };
  const auto first = std::ranges::find_if(found, isGround);
  const auto last = std::find_if_not(first, found.end(), isGround);
  std::stable_sort(first, last, [](const Item* a, const Item* b) {
    return a->bounds().width() * a->bounds().height() < b->bounds().width() * b->bounds().height();
  });
  addSpreading(found, p);
  return found;
}

// Over the lawn, which is all that lies under them there, the smaller first.
void Scene::addSpreading(std::vector<const Item*>& found, Point p) const {
  std::vector<const Item*> spreading;
  for (const auto& [key, item] : items_)
    if (item->spreadsOver(p) && std::ranges::find(found, item.get()) == found.end())
      spreading.push_back(item.get());
  std::ranges::stable_sort(spreading, {}, [](const Item* item) { return item->bounds().width(); });
  const auto lawn =
      std::ranges::find_if(found, [](const Item* item) { return item->depth() <= Depth::Lot; });
  found.insert(lawn, spreading.begin(), spreading.end());
}

void Scene::put(const Object& object, const Yard& yard) {
  std::unique_ptr<Item> item = makeItem(object, yard);
  if (!item) return;
  depths_[item->ref()] = item->depth();
  const Key key{item->depth(), item->ref()};
  items_[key] = std::move(item);
}

void Scene::drop(ObjectRef ref) {
  const auto depth = depths_.find(ref);
  if (depth == depths_.end()) return;
  items_.erase({depth->second, ref});
  depths_.erase(depth);
}

}  // namespace tussock
