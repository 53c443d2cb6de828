// SPDX-License-Identifier: MIT
// A soft crown with strokes from the trunk, as trees are drawn on planting plans.
#include <cmath>
#include <numbers>
#include <QRadialGradient>

#include "app/canvas/items.h"
#include "core/sun/solids.h"
#include "core/units/date.h"

namespace tussock {

namespace {

constexpr int kStrokes = 30;
constexpr int kCrownSides = 96;

// 0 to 1, the same every time for a tree and a number.
double chance(std::int64_t tree, int number) {
  const double x = std::sin(double(tree) * 12.9898 + number * 78.233) * 43758.5453;
  return x - std::floor(x);
}

QPointF onCircle(Point at, double radius, double turn) {
  return {at.x + radius * std::cos(turn), at.y + radius * std::sin(turn)};
}

MonthDay middleOfWeek(int week) {
  const std::chrono::sys_days first = std::chrono::year(2027) / std::chrono::January / 1;
  const Date day(first + std::chrono::days(7 * week + 3));
  return {day.month(), day.day()};
}

Crown leavesOf(const Tree& tree) {
  Crown crown;
  crown.leafOn = tree.leafOn;
  crown.leafOff = tree.leafOff;
  crown.evergreen = tree.evergreen;
  return crown;
}

class TreeItem : public Item {
 public:
  explicit TreeItem(const Tree& tree)
      : Item(refTo(tree.id), Depth::Tree),
        tree_(tree),
        leaves_(leavesOf(tree)),
        strokes_(strokesOf(tree)) {
    setArea({disc(tree.at, tree.crownRadius, kCrownSides)});
  }

  // The trunk or the rim: under the rest of the crown other things are to be had.
  [[nodiscard]] bool hit(Point p, double reach) const override {
    const double away = distance(p, tree_.at);
    const double trunk = std::max(tree_.trunkDiameter.metres(), 0.3);
    return away <= trunk + reach || std::abs(away - tree_.crownRadius.metres()) <= reach;
  }

  [[nodiscard]] bool spreadsOver(Point p) const override {
    return distance(p, tree_.at) <= tree_.crownRadius.metres();
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const double leaves = inLeaf(look) ? 1.0 : 0.35;
    const QColor green = look.theme.leaf;
    const double radius = tree_.crownRadius.metres();
    QRadialGradient wash(QPointF(tree_.at.x, tree_.at.y), radius);
    wash.setColorAt(0.0, faded(green, 0.10 * leaves));
    wash.setColorAt(0.8, faded(green, 0.17 * leaves));
    wash.setColorAt(1.0, faded(green, 0.24 * leaves));
    painter.setTransform(mapping.transform(), true);
    painter.setPen(linePen(faded(green, 0.55), 1.0));
    painter.setBrush(wash);
    painter.drawPath(shape());
    painter.strokePath(strokes_, linePen(faded(green, 0.25 + 0.15 * leaves), 0.9));
    const double trunk = std::max(tree_.trunkDiameter.metres() / 2.0, mapping.metres(3.0));
    painter.setPen(Qt::NoPen);
    painter.setBrush(green);
    painter.drawEllipse(QPointF(tree_.at.x, tree_.at.y), trunk, trunk);
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    if (tree_.name.empty()) return;
    Label label{
        {QString::fromStdString(tree_.name)}, fontFor(TextRole::Note), {}, look.theme.quietInk};
    label.middle = mapping.toPixels(tree_.at) + QPointF(0.0, 16.0);
    label.room = mapping.pixels(tree_.crownRadius.metres() * 2.0);
    label.weight = 20.0;
    label.slide = 16.0;
    labels.push_back(label);
  }

 private:
  static QPainterPath strokesOf(const Tree& tree) {
    QPainterPath path;
    const double radius = tree.crownRadius.metres();
    for (int i = 0; i < kStrokes; ++i) {
      const double turn =
          2.0 * std::numbers::pi * (i + 0.5 * chance(tree.id.value(), i)) / kStrokes;
      path.moveTo(
          onCircle(tree.at, radius * (0.10 + 0.35 * chance(tree.id.value(), i + 99)), turn));
      path.lineTo(
          onCircle(tree.at, radius * (0.78 + 0.18 * chance(tree.id.value(), i + 49)), turn));
    }
    return path;
  }

  [[nodiscard]] bool inLeaf(const CanvasLook& look) const {
    if (!look.day && !look.week) return true;
    return tussock::inLeaf(leaves_, look.day ? *look.day : middleOfWeek(*look.week));
  }

  Tree tree_;
  Crown leaves_;  // as the shade has them
  QPainterPath strokes_;
};

}  // namespace

std::unique_ptr<Item> makeTreeItem(const Tree& tree) {
  return std::make_unique<TreeItem>(tree);
}

}  // namespace tussock
