// SPDX-License-Identifier: MIT
// What is typed into the fields of a drift is read as the field shows it, and what became of it is
// told.
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/panels/margin_panel.h"
#include "tests/app/tools/margin_field.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class TypedShape : public WindowTest {
 protected:
  void startIn(UnitSystem units) {
    YardBuilder builder;
    builder.units(units);
    builder.bed("Front", "POLYGON((0 0,8 0,8 5,0 5,0 0))").viewing("S");
    builder.drift("Echinacea purpurea", row(7, 0.4, {2.0, 2.5}));
    drift = builder.lastDrift();
    start(builder.build());
    document.select({refTo(drift)});
  }
  [[nodiscard]] Drift now() const { return *inFile().drifts.find(drift); }
  [[nodiscard]] QLineEdit* field(const char* name) const { return marginField(*window, name); }
  void enter(const char* name, const QString& typed) { enterInMargin(*window, name, typed); }
  [[nodiscard]] QString saidUnder(const QString& name) const {
    auto* label = window->findChild<QLabel*>(name + QStringLiteral("-wrong"));
    return label && !label->isHidden() ? label->text() : QString();
  }

  Id<Drift> drift;
};

TEST_F(TypedShape, ABareSpacingIsInTheUnitThatTheFieldShows) {
  startIn(UnitSystem::FeetInches);
  ASSERT_TRUE(field("drift-spacing")->text().endsWith(QStringLiteral(" in")));
  enter("drift-spacing", QStringLiteral("18"));
  EXPECT_NEAR(now().spacing.inches(), 18.0, 1e-9);
  enter("drift-spacing", QStringLiteral("900"));
  EXPECT_NEAR(now().spacing.inches(), 18.0, 1e-9);
  EXPECT_TRUE(saidUnder(QStringLiteral("drift-spacing")).contains(QStringLiteral("2 in")));
}

// Who has eight plants in the tray gets eight, and is told what the check will say.
TEST_F(TypedShape, AnEvenCountIsPlantedAsAskedAndIsTold) {
  startIn(UnitSystem::Metres);
  enter("drift-plants", QStringLiteral("8"));
  EXPECT_EQ(now().plants.size(), 8u);
  EXPECT_EQ(field("drift-plants")->text(), QStringLiteral("8"));
  const QString said = saidUnder(QStringLiteral("drift-plants"));
  EXPECT_EQ(said, QStringLiteral("8 as asked; drifts of odd count look less set out."));
  EXPECT_FALSE(field("drift-plants")->property("wrong").toBool());
  const auto* words = window->findChild<QLabel*>(QStringLiteral("drift-plants-wrong"));
  ASSERT_NE(words, nullptr);
  EXPECT_EQ(words->property("look").toString(), QStringLiteral("note")) << "it was done";
  enter("drift-plants", QStringLiteral("0"));
  EXPECT_EQ(words->property("look").toString(), QStringLiteral("error")) << "it was not";
  enter("drift-plants", QStringLiteral("7"));
  EXPECT_EQ(now().plants.size(), 7u);
  EXPECT_EQ(saidUnder(QStringLiteral("drift-plants")), QString());
}

TEST_F(TypedShape, AnEvenCountStaysUntilTheStepperOrAnotherSpacing) {
  startIn(UnitSystem::Metres);
  enter("drift-plants", QStringLiteral("8"));
  enter("drift-stretch", QStringLiteral("4"));
  EXPECT_EQ(now().plants.size(), 8u);
  trigger("actionSetOut");
  EXPECT_EQ(now().plants.size(), 8u);
  auto* fewer = window->findChild<QPushButton*>(QStringLiteral("drift-fewer"));
  auto* more = window->findChild<QPushButton*>(QStringLiteral("drift-more"));
  QTest::mouseClick(more, Qt::LeftButton);
  EXPECT_EQ(now().plants.size(), 9u);
  enter("drift-plants", QStringLiteral("8"));
  QTest::mouseClick(fewer, Qt::LeftButton);
  EXPECT_EQ(now().plants.size(), 7u);
  enter("drift-plants", QStringLiteral("8"));
  enter("drift-spacing", QStringLiteral("0.3"));
  EXPECT_EQ(now().plants.size() % 2, 1u);
}

}  // namespace
}  // namespace tussock::test
