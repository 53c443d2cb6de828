// SPDX-License-Identifier: MIT
#include "app/canvas/label.h"

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>

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

// Or the halo of one would eat into the words of the other, and the two would read as one.
TEST(PlaceLabels, OneOverTheOtherTheyAreApart) {
  Label second = wish("5 × DODMEA", {50, 50}, 1.0);
  second.slide = 14.0;
  for (double down = 0.0; down < 30.0; down += 0.5) {
    const auto placed = placeLabels({wish("13 × RUDHIR", {50, 50 + down}, 2.0), second}, {});
    if (placed.size() < 2u) continue;
    const double gap = std::max(placed[0].box.top() - placed[1].box.bottom(),
                                placed[1].box.top() - placed[0].box.bottom());
    EXPECT_GE(gap, 2.0 - 1e-9) << down;
  }
  EXPECT_EQ(placeLabels({wish("13 × RUDHIR", {50, 70}, 2.0), second}, {}).size(), 2u);
}

// Most pixels of so small a mark are between its ink and the ground.
int darkIn(const QImage& image, const QRectF& box) {
  int count = 0;
  for (int y = int(box.top()); y < int(box.bottom()); ++y)
    for (int x = int(box.left()); x < int(box.right()); ++x)
      count += image.pixelColor(x, y).lightness() < 128 ? 1 : 0;
  return count;
}

TEST(PlaceLabels, AMarkHasRoomBeforeTheWords) {
  Label marked = wish("7 × ECHPUR", {100, 50});
  const QRectF plain = placeLabels({marked}, {}).front().box;
  marked.mark = QStringLiteral("locked");
  marked.ink = currentTheme().ink;
  auto placed = placeLabels({marked}, {});
  const QRectF box = placed.front().box;
  EXPECT_EQ(box.height(), plain.height());
  const double wider = box.width() - plain.width();
  EXPECT_GT(wider, 8.0);
  QImage image(200, 100, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  {
    QPainter painter(&image);
    paintLabel(painter, placed.front(), {}, Qt::white);
  }
  EXPECT_GT(darkIn(image, {box.topLeft(), QSizeF(wider, box.height())}), 12);
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

TEST(PlaceLabels, SaysShortlyWhatHasNoRoomInFull) {
  Label wide = wish("13 × ECHPUR", {50, 50});
  wide.brief = QStringLiteral("ECHPUR");
  wide.room = QFontMetricsF(wide.font).horizontalAdvance(wide.lines.first()) - 1.0;
  const auto placed = placeLabels({wide}, {});
  ASSERT_EQ(placed.size(), 1u);
  EXPECT_EQ(placed[0].label.lines, QStringList{QStringLiteral("ECHPUR")});
}

TEST(PlaceLabels, NeverHideWhatTheyName) {
  Label large = wish("MONFIS", {50, 50});
  large.ground = 200.0;
  EXPECT_TRUE(placeLabels({large}, {}).empty());
  large.ground = 2000.0;
  EXPECT_EQ(placeLabels({large}, {}).size(), 1u);
}

TEST(PlaceLabels, LieWhereTheyAreAllowed) {
  Label bound = wish("here", {50, 50});
  bound.slide = 40.0;
  bound.allowed = [](const QRectF& box) { return box.top() > 60.0; };
  const auto placed = placeLabels({bound}, {});
  ASSERT_EQ(placed.size(), 1u);
  EXPECT_GT(placed[0].box.top(), 60.0);
  bound.allowed = [](const QRectF&) { return false; };
  EXPECT_TRUE(placeLabels({bound}, {}).empty());
}

// One label of many would look as if the others had none to show.
TEST(PlaceLabels, FewOfASetAreLeftOutWithTheRest) {
  std::vector<Label> wishes;
  for (int i = 0; i < 5; ++i) {
    Label one = wish("9 × MONFIS", {50.0, 50.0 + 40.0 * i});
    one.set = 7;
    if (i > 0) one.room = 5.0;
    wishes.push_back(one);
  }
  EXPECT_TRUE(placeLabels(wishes, {}).empty());
  wishes[1].room = 1e9;
  EXPECT_EQ(placeLabels(wishes, {}).size(), 2u);
}

TEST(PlaceLabels, KeepsClearOfWhatIsTaken) {
  EXPECT_TRUE(placeLabels({wish("here", {50, 50})}, {QRectF(40, 40, 20, 20)}).empty());
}

}  // namespace
}  // namespace tussock
