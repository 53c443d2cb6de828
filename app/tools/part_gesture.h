// SPDX-License-Identifier: MIT
// Some plants of one drift: marked with a band, then moved together.
#pragma once

#include "app/tools/breakage.h"
#include "app/tools/gesture.h"
#include "app/tools/nudge_gesture.h"

namespace tussock {

struct DriftPart {
  Id<Drift> drift;
  std::vector<Id<Plant>> plants;

  [[nodiscard]] bool holds(const PlantAt& plant) const;
  void keepOnlyOf(const Drift& now);                    // the plants that it still has
  void paint(QPainter& painter, Canvas& canvas) const;  // rings around them
};

// Alt, Shift and drag.
class PartBandGesture : public Gesture {
 public:
  PartBandGesture(Canvas& canvas, Id<Drift> drift, const PointerAt& from, DriftPart& part)
      : canvas_(canvas), from_(from), to_(from), part_(part) {
    part_.drift = drift;
  }
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

 private:
  Canvas& canvas_;
  PointerAt from_, to_;
  DriftPart& part_;
};

// Alt and drag one of the marked: says what they would break there.
class PartMoveGesture : public Gesture {
 public:
  PartMoveGesture(Canvas& canvas, DriftPart part, const PointerAt& from)
      : canvas_(canvas), part_(std::move(part)), from_(from.site) {}
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

  // Of what the place breaks.
  [[nodiscard]] const QStringList& words() const { return breakage_.words(); }

 private:
  [[nodiscard]] ChangeSet edit(Point to) const;
  [[nodiscard]] Breakage breakageOfPart(const ChangeSet& moved, const Drift& drift) const;

  Canvas& canvas_;
  DriftPart part_;
  Point from_, at_;
  Breakage breakage_;
};

}  // namespace tussock
