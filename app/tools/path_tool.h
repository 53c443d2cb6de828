// SPDX-License-Identifier: MIT
// Draws a line or an outline corner by corner: click, or type the length of the side. The tools for
// beds, buildings, walls and so on say what becomes of it.
#pragma once

#include <vector>

#include "app/canvas/canvas.h"
#include "app/tools/snap.h"

namespace tussock {

class PathTool : public Tool {
 public:
  enum class Kind { Line, Outline };
  PathTool(Canvas& canvas, Kind kind) : canvas_(canvas), kind_(kind) {}

  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  void press(const PointerAt& at) override;
  void move(const PointerAt& at) override;
  void doubleClick(const PointerAt& at) override;
  bool key(const QKeyEvent& event) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;
  [[nodiscard]] bool busy() const override { return !corners_.empty(); }
  void cancel() override;

  [[nodiscard]] const std::vector<Point>& corners() const { return corners_; }

 protected:
  [[nodiscard]] virtual QString what() const = 0;  // "the bed"
  // The edit that adds it. Called with corners that make a sound shape.
  [[nodiscard]] virtual ChangeSet edit(const std::vector<Point>& corners) = 0;
  // Why it cannot be, in words; empty when it can.
  [[nodiscard]] virtual QString trouble(const std::vector<Point>& corners) const;
  virtual void finish();

  [[nodiscard]] Canvas& canvas() const { return canvas_; }
  [[nodiscard]] Document& document() const { return canvas_.document(); }
  // For an object that has just been drawn or cut.
  void commitAndSelect(const ChangeSet& edit);

 private:
  void addCorner(Point p);
  void askLength(const QString& start);
  void tellLength() const;
  [[nodiscard]] Snap snapAt(const PointerAt& at);
  [[nodiscard]] QString lengthText(Point a, Point b) const;

  Canvas& canvas_;
  Kind kind_;
  std::vector<Point> corners_;
  Snap hover_;
  bool hovering_ = false;
  SnapTargets targets_;
};

// "Bed 3": the first that is not taken.
template <class T>
[[nodiscard]] std::string freshName(const Collection<T>& objects, const QString& word) {
  for (std::size_t number = objects.size() + 1;; ++number) {
    const std::string name = QStringLiteral("%1 %2").arg(word).arg(number).toStdString();
    const bool taken = std::any_of(objects.begin(), objects.end(),
                                   [&](const T& object) { return object.name == name; });
    if (!taken) return name;
  }
}

}  // namespace tussock
