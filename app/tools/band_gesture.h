// SPDX-License-Identifier: MIT
// A rubber band: selects all that lies wholly within.
#pragma once

#include "app/tools/gesture.h"

namespace tussock {

class BandGesture : public Gesture {
 public:
  // `kept` stays selected, whatever the band holds.
  BandGesture(Canvas& canvas, const PointerAt& from, std::vector<ObjectRef> kept)
      : canvas_(canvas), from_(from), to_(from), kept_(std::move(kept)) {}
  void move(const PointerAt& at) override { to_ = at; }
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

 private:
  Canvas& canvas_;
  PointerAt from_, to_;
  std::vector<ObjectRef> kept_;
};

}  // namespace tussock
