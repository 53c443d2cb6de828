// SPDX-License-Identifier: MIT
// Arrow keys move the selection a little; presses within a second of one another are one edit.
#pragma once

#include <QObject>
#include <QTimer>

#include "app/canvas/canvas.h"

namespace tussock {

class KeyNudge : public QObject {
  Q_OBJECT

 public:
  explicit KeyNudge(Canvas& canvas, QObject* parent = nullptr);
  // False when it is no arrow key, or nothing is selected.
  bool key(const QKeyEvent& event);
  void finish();  // makes the edit now
  void cancel();
  [[nodiscard]] bool pending() const { return timer_.isActive(); }

 private:
  Canvas& canvas_;
  QTimer timer_;
  std::vector<ObjectRef> refs_;
  Point step_;
};

}  // namespace tussock
