// SPDX-License-Identifier: MIT
#include "app/canvas/label.h"

#include <gtest/gtest.h>

#include "app/look/theme.h"

namespace tussock {
namespace {

Label wish(const QString& text, QPointF middle, double weight = 0.0) {
  Label label;
  label.lines = {text};
  label.font = fontFor(TextRole::Note);
  label.middle = middle;
  label.weight = weight;
  return label;
}

TEST(PlaceLabels, NoTwoLieOverOneAnother) {
  std::vector<Label> wishes;
  for (int i = 0; i < 200; ++i)
    wishes.push_back(wish(QStringLiteral("7 × ECHPUR"), QPointF((i * 37) % 400, (i * 53) % 300)));
  const auto placed = placeLabels(wishes, {});
  EXPECT_GT(placed.size(), 20u);
  for (std::size_t i = 0; i < placed.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(placed[i].box.intersects(placed[j].box));
}

TEST(PlaceLabels, TheWeightiestComesFirst) {
  const auto placed = placeLabels({wish("light", {50, 50}, 1.0), wish("heavy", {50, 50}, 2.0)}, {});
  ASSERT_EQ(placed.size(), 1u);
  EXPECT_EQ(placed[0].label.lines.first(), QStringLiteral("heavy"));
}

TEST(PlaceLabels, SlidesWhereItMay) {
  Label second = wish("second", {50, 50}, 1.0);
  second.slide = 40.0;
  EXPECT_EQ(placeLabels({wish("first", {50, 50}, 2.0), second}, {}).size(), 2u);
}

TEST(PlaceLabels, LeavesOutWhatHasNoRoom) {
  Label wide = wish("a rather long label", {50, 50});
  wide.room = 20.0;
  EXPECT_TRUE(placeLabels({wide}, {}).empty());
}

TEST(PlaceLabels, KeepsClearOfWhatIsTaken) {
  EXPECT_TRUE(placeLabels({wish("here", {50, 50})}, {QRectF(40, 40, 20, 20)}).empty());
}

}  // namespace
}  // namespace tussock
