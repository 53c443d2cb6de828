// SPDX-License-Identifier: MIT
// Alt and drag: moves one plant of a drift, and says beside it what it would break there.
#pragma once

#include "app/tools/gesture.h"

namespace tussock {

struct PlantAt {
  Id<Drift> drift;
  Id<Plant> plant;
};
// The plant whose centre is nearest, within `reach` metres.
[[nodiscard]] std::optional<PlantAt> plantAt(const Yard& yard, Point p, double reach);

class NudgeGesture : public Gesture {
 public:
  NudgeGesture(Canvas& canvas, PlantAt plant) : canvas_(canvas), plant_(plant) {}
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

  // "Too near Aster: 0.20 m, 0.38 m asked"; one for each rule that the place breaks.
  [[nodiscard]] const QStringList& words() const { return words_; }

 private:
  [[nodiscard]] ChangeSet edit(Point to) const;

  Canvas& canvas_;
  PlantAt plant_;
  Point to_;
  QStringList words_;
  bool dragged_ = false;
};

}  // namespace tussock
