// SPDX-License-Identifier: MIT
// One maker for each kind of object that is drawn.
#pragma once

#include "app/canvas/item.h"

namespace tussock {

[[nodiscard]] std::unique_ptr<Item> makePhotoItem(const Photo& photo);
[[nodiscard]] std::unique_ptr<Item> makeLotItem(const LotLine& lot);
[[nodiscard]] std::unique_ptr<Item> makePatchItem(const Patch& patch);
[[nodiscard]] std::unique_ptr<Item> makePavingItem(const Paving& paving);
[[nodiscard]] std::unique_ptr<Item> makeLimitItem(const HeightLimit& limit);
[[nodiscard]] std::unique_ptr<Item> makeBuriedItem(const BuriedLine& line);
[[nodiscard]] std::unique_ptr<Item> makeStepItem(const SteppingPlace& step);
[[nodiscard]] std::unique_ptr<Item> makeWaterItem(const WaterPoint& point);
[[nodiscard]] std::unique_ptr<Item> makeReadingItem(const SunReading& reading);
[[nodiscard]] std::unique_ptr<Item> makeBedItem(const Bed& bed);
[[nodiscard]] std::unique_ptr<Item> makeDriftItem(const Drift& drift, const Yard& yard);
[[nodiscard]] std::unique_ptr<Item> makeBarrierItem(const Barrier& barrier);
[[nodiscard]] std::unique_ptr<Item> makeBuildingItem(const Building& building);
[[nodiscard]] std::unique_ptr<Item> makeTreeItem(const Tree& tree);

}  // namespace tussock
