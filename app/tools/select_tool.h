// SPDX-License-Identifier: MIT
// Picks things and hands the drag on to the gesture that suits what was picked.
#pragma once

#include <memory>
#include <QObject>

#include "app/tools/drift_count.h"
#include "app/tools/gesture.h"
#include "app/tools/handles.h"
#include "app/tools/key_nudge.h"
#include "app/tools/part_gesture.h"

namespace tussock {

class SelectTool : public Tool {
 public:
  explicit SelectTool(Canvas& canvas);
  ~SelectTool() override;

  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QCursor cursor() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  [[nodiscard]] bool onlyLooks() const override { return true; }
  [[nodiscard]] bool readsMarks() const override { return true; }
  void press(const PointerAt& at) override;
  void move(const PointerAt& at) override;
  void release(const PointerAt& at) override;
  void doubleClick(const PointerAt& at) override;
  bool key(const QKeyEvent& event) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;
  [[nodiscard]] bool busy() const override { return gesture_ || nudge_.pending(); }
  void cancel() override;

  bool stepCount(int direction) { return count_.step(direction); }
  // Makes edits that were waiting for more keys.
  void finishPending() { nudge_.finish(); }
  // False when there is no active corner.
  bool deleteCorner();
  void deleteSelection();

 private:
  [[nodiscard]] const Item* pick(const PointerAt& at) const;
  // False when there is no plant near, nor any of the selected drift around.
  bool pressPlant(const PointerAt& at);
  void followEdit(const ChangeSet& edit);
  [[nodiscard]] std::optional<PlantAt> plantInside(Id<Drift> drift, Point p) const;
  void pressHandle(const Handles::Handle& handle, const PointerAt& at);
  void pressItem(const Item& item, const PointerAt& at);
  [[nodiscard]] bool isWherePicked(const PointerAt& at) const;
  [[nodiscard]] std::vector<const Item*> allAt(const PointerAt& at) const;  // uppermost first
  [[nodiscard]] std::optional<std::size_t> selectedAt(const PointerAt& at) const;
  void selectUnder(const PointerAt& at);
  void turn(Angle by);

  Canvas& canvas_;
  Handles handles_;
  KeyNudge nudge_;
  DriftCount count_;
  std::unique_ptr<Gesture> gesture_;
  // Where the pointer was when it selected what is selected: on the ground, for that may move away
  // under it as the view makes room.
  std::optional<Point> picked_;
  std::optional<ObjectRef> among_;  // pressed, and one of several selected
  bool again_ = false;              // it is pressed there once more
  std::optional<CornerAt> active_;
  DriftPart part_;
  bool edited_ = false;  // the change about to be told is a new edit
  Qt::CursorShape cursor_ = Qt::ArrowCursor;
};

}  // namespace tussock
