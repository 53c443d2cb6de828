// SPDX-License-Identifier: MIT
// Alt and drag: moves one plant of a drift, and says beside it what it would break there.
#pragma once

#include "app/tools/breakage.h"
#include "app/tools/gesture.h"

namespace tussock {

struct PlantAt {
  Id<Drift> drift;
  Id<Plant> plant;
};
// The plant whose centre is nearest, within `reach` metres.
[[nodiscard]] std::optional<PlantAt> plantAt(const Yard& yard, Point p, double reach);
// The same of one drift, however far; nothing when it has no plants.
[[nodiscard]] std::optional<PlantAt> nearestPlant(const Drift& drift, Point p);

class NudgeGesture : public Gesture {
 public:
  NudgeGesture(Canvas& canvas, PlantAt plant) : canvas_(canvas), plant_(plant) {}
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

  // Of what the place breaks.
  [[nodiscard]] const QStringList& words() const { return breakage_.words(); }

 private:
  [[nodiscard]] ChangeSet edit(Point to) const;
  void judge(const ChangeSet& nudged);

  Canvas& canvas_;
  PlantAt plant_;
  Point to_;
  Breakage breakage_;
  bool dragged_ = false;
};

}  // namespace tussock
