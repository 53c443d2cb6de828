// SPDX-License-Identifier: MIT
// What is typed into the fields of a drift is read as the field shows it, and what became of it is
// told.
#include <QLabel>
#include <QLineEdit>

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

TEST_F(TypedShape, AnEvenCountBecomesOddAndIsTold) {
  startIn(UnitSystem::Metres);
  enter("drift-plants", QStringLiteral("6"));
  EXPECT_EQ(now().plants.size(), 5u);
  EXPECT_EQ(field("drift-plants")->text(), QStringLiteral("5"));
  const QString said = saidUnder(QStringLiteral("drift-plants"));
  EXPECT_TRUE(said.contains(QStringLiteral("odd"))) << said.toStdString();
  enter("drift-plants", QStringLiteral("7"));
  EXPECT_EQ(saidUnder(QStringLiteral("drift-plants")), QString());
}

}  // namespace
}  // namespace tussock::test
