// SPDX-License-Identifier: MIT
// Trees in leaf and bare, as they are drawn.
#include <gtest/gtest.h>

#include "app/canvas/items.h"

namespace tussock {
namespace {

// How much of white paper the crown covers.
int covered(const Tree& tree, std::optional<int> week, std::optional<MonthDay> day) {
  QImage image(200, 200, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  CanvasLook look;
  look.theme = Theme::light();
  look.week = week;
  look.day = day;
  makeTreeItem(tree)->paint(painter, SceneMapping({0.0, 0.0}, 20.0, QSizeF(200, 200)), look);
  painter.end();
  int sum = 0;
  for (int y = 0; y < 200; ++y)
    for (int x = 0; x < 200; ++x) sum += 255 - image.pixelColor(x, y).red();
  return sum;
}

Tree southern() {
  Tree tree;
  tree.id = Id<Tree>(2);
  tree.crownRadius = Length::metres(4);
  tree.leafOn = std::chrono::September / 20;
  tree.leafOff = std::chrono::May / 1;
  return tree;
}

TEST(TreeItem, LeavesLastOverTheNewYear) {
  const int leafy = covered(southern(), 2, {}), bare = covered(southern(), 26, {});
  EXPECT_GT(leafy, bare * 3 / 2) << "January and July in the south";
  EXPECT_EQ(covered(southern(), 45, {}), leafy) << "November";
}

TEST(TreeItem, TheDayOfTheShadowsGoesBeforeTheWeek) {
  const int leafy = covered(southern(), 2, {}), bare = covered(southern(), 26, {});
  EXPECT_EQ(covered(southern(), {}, std::chrono::July / 1), bare);
  EXPECT_EQ(covered(southern(), 26, std::chrono::January / 10), leafy);
  EXPECT_EQ(covered(southern(), {}, std::chrono::May / 1), bare) << "bare from that day";
  EXPECT_EQ(covered(southern(), {}, std::chrono::April / 30), leafy);
}

}  // namespace
}  // namespace tussock
