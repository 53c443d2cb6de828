// SPDX-License-Identifier: MIT
// The words on the plan of the example yard, from afar and from near.
#include <map>

#include <gtest/gtest.h>

#include "app/canvas/plan_painter.h"
#include "core/exchange/example.h"
#include "tests/app/look/contrast.h"

namespace tussock {
namespace {

class PlanLabels : public testing::Test {
 protected:
  PlanLabels() {
    const Catalogue facts = readShippedCatalogue().catalogue;
    yard = buildExample(facts).yard;
    look.facts = facts;
    scene.show(yard);
  }
  // Paints the middle of a bed at a scale and gives the labels of the whole plan.
  const std::vector<PlacedLabel>& labelsAt(double scale) {
    mapping = SceneMapping(boundsOf(yard.beds.begin()->outline).centre(), scale, QSizeF(1000, 700));
    QImage image(1000, 700, QImage::Format_ARGB32_Premultiplied);
    QPainter onImage(&image);
    painter.paint(onImage, image.rect(), mapping, look);
    return painter.labels();
  }
  [[nodiscard]] std::size_t driftLabels() const {
    return std::size_t(std::ranges::count_if(
        painter.labels(), [](const PlacedLabel& label) { return label.label.set != 0; }));
  }

  Yard yard;
  Scene scene;
  FindingMarks marks;
  PlanPainter painter{scene, marks};
  CanvasLook look;
  SceneMapping mapping;
};

TEST_F(PlanLabels, NeverLieOverOneAnother) {
  for (const double scale : {8.0, 15.0, 25.0, 40.0, 70.0, 110.0, 200.0}) {
    const auto& placed = labelsAt(scale);
    for (std::size_t i = 0; i < placed.size(); ++i)
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(placed[i].box.intersects(placed[j].box))
            << placed[i].label.lines.join(' ').toStdString() << " over "
            << placed[j].label.lines.join(' ').toStdString() << " at " << scale;
  }
}

TEST_F(PlanLabels, MarkWhatIsLocked) {
  Drift locked = *yard.drifts.begin();
  locked.locked = true;
  yard.drifts = yard.drifts.with(locked);
  scene.show(yard);
  std::size_t marked = 0;
  for (const PlacedLabel& placed : labelsAt(110.0)) {
    if (placed.label.mark.isEmpty()) continue;
    ++marked;
    EXPECT_EQ(placed.label.mark, QStringLiteral("locked"));
    EXPECT_TRUE(placed.label.lines.first().startsWith(QString::number(locked.plants.size())));
  }
  EXPECT_EQ(marked, 1u);
}

// Five places a metre apart in each bed, where the sun was seen.
TEST_F(PlanLabels, GiveWayToWhatWasSeenOfTheSun) {
  std::int64_t id = 90000;
  for (const Bed& bed : yard.beds)
    for (const Point step : {Point{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      SunReading reading;
      reading.id = Id<SunReading>(++id);
      reading.at = boundsOf(bed.outline).centre() + step;
      reading.hours = 4.5;
      yard.sunReadings = yard.sunReadings.with(reading);
      look.readings.push_back({reading.id, 4.5, 7.7});
    }
  scene.show(yard);
  const QString whole = QStringLiteral("4.5 h seen, 7.7 computed: −3.2 h");
  const QString brief = QStringLiteral("4.5 h (7.7)");
  for (const double scale : {15.0, 25.0, 40.0, 110.0}) {
    painter.forgetLabels();
    const auto& placed = labelsAt(scale);
    const SceneMapping fromOrigin(Point{}, scale, QSizeF(0.0, 0.0));
    std::vector<QRectF> rings;
    for (const SunReading& reading : yard.sunReadings)
      scene.find(refTo(reading.id))->addTaken(rings, fromOrigin);
    ASSERT_EQ(rings.size(), yard.sunReadings.size());
    std::size_t told = 0;
    for (std::size_t i = 0; i < placed.size(); ++i) {
      const QString words = placed[i].label.lines.first();
      told += words == whole || words == brief;
      if (words == whole || words == brief) {
        const QPointF away = placed[i].box.center() - *placed[i].label.end;
        EXPECT_TRUE(placed[i].afar || std::hypot(away.x(), away.y()) < 40.0)
            << "no line leads to it";
      }
      for (const QRectF& ring : rings)
        EXPECT_FALSE(placed[i].box.intersects(ring)) << words.toStdString() << " at " << scale;
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(placed[i].box.intersects(placed[j].box))
            << words.toStdString() << " over " << placed[j].label.lines.first().toStdString();
    }
    EXPECT_EQ(told, yard.sunReadings.size()) << "at " << scale;
    const auto kept = painter.takenByLabels();
    for (const QRectF& ring : rings)
      EXPECT_TRUE(std::ranges::find(kept, ring) != kept.end()) << "free of the map's own words";
  }
}

// As small as where the plan shares a small window with the sun's strip.
TEST_F(PlanLabels, EachBedIsNamedWhereTheWholeYardIsSmall) {
  QStringList told;
  for (const PlacedLabel& placed : labelsAt(9.0)) told << placed.label.lines.first();
  for (const Bed& bed : yard.beds)
    EXPECT_TRUE(told.contains(QString::fromStdString(bed.name))) << bed.name;
}

TEST_F(PlanLabels, AllAreThereWhenAllAreAskedFor) {
  look.allNames = true;
  for (const double scale : {8.0, 15.0, 25.0, 40.0}) {
    std::map<QString, int> wished, found;
    for (const Drift& drift : yard.drifts)
      ++wished[QStringLiteral("%1 × ").arg(drift.plants.size())];
    for (const Bed& bed : yard.beds) ++wished[QString::fromStdString(bed.name)];
    const auto& placed = labelsAt(scale);
    for (const PlacedLabel& label : placed) {
      const QString words = label.label.lines.first();
      const qsizetype sign = words.indexOf(QStringLiteral("× "));
      ++found[sign < 0 ? words : words.left(sign + 2)];
    }
    for (const auto& [words, count] : wished)
      EXPECT_EQ(found[words], count) << words.toStdString() << " at " << scale;
    for (std::size_t i = 0; i < placed.size(); ++i)
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(placed[i].box.intersects(placed[j].box)) << "at " << scale;
  }
}

// WCAG 2.2, criterion 1.4.3: 4.5:1 for text of normal size. Every label that any kind of object
// wishes for, against the halo it is painted on.
TEST_F(PlanLabels, OfEveryKindReadOnTheirHalo) {
  for (const Theme& theme : {Theme::light(), Theme::darkTheme()}) {
    look.theme = theme;
    look.allNames = true;
    std::vector<Label> wishes;
    for (const auto& item : scene.within(boundsOf(yard).grown(5.0)))
      item->addLabels(wishes, SceneMapping(Point{}, 60.0, QSizeF(0, 0)), look);
    ASSERT_GT(wishes.size(), 40u);
    for (const Label& label : wishes)
      EXPECT_GE(test::contrast(label.ink, theme.paper), 4.5)
          << label.lines.join(' ').toStdString() << ' ' << label.ink.name().toStdString();
  }
}

TEST_F(PlanLabels, OfDriftsStayInTheirBeds) {
  for (const double scale : {15.0, 25.0, 40.0, 70.0, 110.0}) {
    const SceneMapping fromOrigin(Point{}, scale, QSizeF(0.0, 0.0));
    for (const PlacedLabel& label : labelsAt(scale)) {
      if (label.label.set == 0) continue;
      const Bed* bed = yard.beds.find(Id<Bed>(label.label.set));
      ASSERT_TRUE(bed);
      EXPECT_TRUE(contains(bed->outline, fromOrigin.toSite(label.box.center() -
                                                           QPointF(label.box.width() / 2, 0))) &&
                  contains(bed->outline, fromOrigin.toSite(label.box.center() +
                                                           QPointF(label.box.width() / 2, 0))))
          << label.label.lines.first().toStdString() << " at " << scale;
    }
  }
}

TEST_F(PlanLabels, AreAllThereFromNear) {
  labelsAt(15.0);
  const std::size_t far = driftLabels();
  labelsAt(150.0);
  const std::size_t near = driftLabels();
  EXPECT_LT(far, near);
  EXPECT_EQ(near, yard.drifts.size());
}

}  // namespace
}  // namespace tussock
