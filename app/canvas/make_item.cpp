// SPDX-License-Identifier: MIT
#include "app/canvas/items.h"

namespace tussock {

namespace {

struct Maker {
  const Yard& yard;
  using Made = std::unique_ptr<Item>;
  Made operator()(const Settings&) const { return nullptr; }
  Made operator()(const PlanCode&) const { return nullptr; }
  Made operator()(const Acceptance&) const { return nullptr; }
  Made operator()(const ForeignFeature&) const { return nullptr; }
  Made operator()(const SunReading& o) const { return makeReadingItem(o); }
  Made operator()(const OwnSpecies&) const { return nullptr; }
  Made operator()(const Arrangement&) const { return nullptr; }
  Made operator()(const LotLine& o) const { return makeLotItem(o); }
  Made operator()(const Building& o) const { return makeBuildingItem(o); }
  Made operator()(const Barrier& o) const { return makeBarrierItem(o); }
  Made operator()(const Tree& o) const { return makeTreeItem(o); }
  Made operator()(const Paving& o) const { return makePavingItem(o); }
  Made operator()(const SteppingPlace& o) const { return makeStepItem(o); }
  Made operator()(const WaterPoint& o) const { return makeWaterItem(o); }
  Made operator()(const HeightLimit& o) const { return makeLimitItem(o); }
  Made operator()(const BuriedLine& o) const { return makeBuriedItem(o); }
  Made operator()(const Bed& o) const { return makeBedItem(o); }
  Made operator()(const Patch& o) const { return makePatchItem(o); }
  Made operator()(const Drift& o) const { return makeDriftItem(o, yard); }
  Made operator()(const Photo& o) const { return makePhotoItem(o); }
};

}  // namespace

std::unique_ptr<Item> makeItem(const Object& object, const Yard& yard) {
  return std::visit(Maker{yard}, object);
}

}  // namespace tussock
