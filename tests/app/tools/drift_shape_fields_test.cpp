// SPDX-License-Identifier: MIT
// The shape of a drift, typed into the margin.
#include <algorithm>
#include <cmath>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "app/panels/margin_panel.h"
#include "tests/app/tools/margin_field.h"
#include "tests/app/tools/planted_drifts.h"

namespace tussock::test {
namespace {

class ShapeFields : public PlantedDrifts {
 protected:
  void startSelected() {
    startPlanted();
    click(onDrift());
  }
  [[nodiscard]] QLineEdit* field(const char* name) const { return marginField(*window, name); }
  void enter(const char* name, const QString& typed) { enterInMargin(*window, name, typed); }
  void choosePattern(Pattern pattern) {
    auto* choice =
        window->findChild<MarginPanel*>()->findChild<QComboBox*>(QStringLiteral("drift-pattern"));
    ASSERT_NE(choice, nullptr);
    choice->setFocus();
    while (choice->currentIndex() < int(pattern)) QTest::keyClick(choice, Qt::Key_Down);
  }
};

// A plant takes s² √3/2 of ground, so that 13 at 0.4 m and 8.3 at 0.5 m take the same.
TEST_F(ShapeFields, ASpacingIsAnsweredByTheCountOnTheSameGround) {
  startSelected();
  enter("drift-spacing", QStringLiteral("0.5"));
  EXPECT_EQ(drifted().spacing, Length::metres(0.5));
  EXPECT_EQ(drifted().plants.size(), 9u);
  EXPECT_EQ(field("drift-plants")->text(), QStringLiteral("9"));
  const auto places = positionsOf(drifted());
  for (std::size_t i = 0; i < places.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) EXPECT_GE(distance(places[i], places[j]), 0.425 - 1e-3);
}

TEST_F(ShapeFields, ACountIsAnsweredByTheSpacingOnTheSameGround) {
  startSelected();
  const QString ground = field("drift-ground")->text();
  enter("drift-plants", QStringLiteral("21"));
  EXPECT_EQ(drifted().plants.size(), 21u);
  EXPECT_NEAR(drifted().spacing.metres(), 0.4 * std::sqrt(13.0 / 21.0), 1e-9);
  EXPECT_EQ(field("drift-spacing")->text(), QStringLiteral("31 cm"));
  EXPECT_EQ(field("drift-ground")->text(), ground);
}

TEST_F(ShapeFields, ACountTooLargeForItsGroundIsRefusedWithWords) {
  startSelected();
  enter("drift-plants", QStringLiteral("2001"));
  EXPECT_EQ(drifted().plants.size(), 13u);
  auto* wrong = window->findChild<QLabel*>(QStringLiteral("drift-plants-wrong"));
  ASSERT_NE(wrong, nullptr);
  EXPECT_TRUE(wrong->text().contains(QStringLiteral("would stand"))) << wrong->text().toStdString();
}

// 3 m² hold 21.65 plants at 0.4 m.
TEST_F(ShapeFields, GroundIsAnsweredByTheCountWhereTheDriftStands) {
  startSelected();
  const auto before = plantIds();
  enter("drift-ground", QStringLiteral("3"));
  EXPECT_EQ(drifted().spacing, Length::metres(0.4));
  EXPECT_EQ(drifted().plants.size(), 21u);
  const auto after = plantIds();
  EXPECT_TRUE(std::includes(after.begin(), after.end(), before.begin(), before.end()));
}

TEST_F(ShapeFields, ASquarePatternStandsInRows) {
  startSelected();
  choosePattern(Pattern::Square);
  ASSERT_EQ(drifted().pattern, Pattern::Square);
  const Point first = drifted().plants.front().at;
  for (const Plant& plant : drifted().plants) {
    const Point cells = rotated(plant.at - first, -drifted().axis) * (1.0 / 0.4);
    EXPECT_NEAR(cells.x, std::round(cells.x), 1e-6);
    EXPECT_NEAR(cells.y, std::round(cells.y), 1e-6);
  }
}

TEST_F(ShapeFields, LengthToWidthIsReadAndItsBoundsAreSaid) {
  startSelected();
  enter("drift-stretch", QStringLiteral("6"));
  EXPECT_EQ(drifted().stretch, 6.0);
  enter("drift-stretch", QStringLiteral("60"));
  EXPECT_EQ(drifted().stretch, 6.0);
}

}  // namespace
}  // namespace tussock::test
