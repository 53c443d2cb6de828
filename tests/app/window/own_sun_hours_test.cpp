// SPDX-License-Identifier: MIT
// Sun hours of a plant of one's own, typed in the window: the fit and the checks go by them.
#include <algorithm>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/catalog/bed_request.h"
#include "core/catalog/own_plants.h"
#include "core/checks/finding.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

constexpr auto kOwnBergamot = "Monarda fistulosa";

// An open yard: the sun reaches the bed all day.
class OwnSunHours : public test::WindowTest {
 protected:
  OwnSunHours() {
    test::YardBuilder builder;
    builder.bed("Walk", "POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))")
        .drift(kOwnBergamot, test::row(3, 0.5, {1.0, 1.5}));
    start(builder.build());
    document.waitForAnalysis();
    document.select({refTo(builder.lastDrift())});
    QCoreApplication::processEvents();
    for (auto* button : window->findChildren<QPushButton*>(QStringLiteral("drift-facts")))
      if (button->isVisible()) QTest::mouseClick(button, Qt::LeftButton);
  }
  void type(const char* column, const QString& words) {
    QCoreApplication::processEvents();
    QLineEdit* line = nullptr;
    for (auto* each :
         window->findChildren<QLineEdit*>(QStringLiteral("plant-") + QLatin1String(column)))
      if (each->isVisible()) line = each;
    ASSERT_TRUE(line) << column;
    line->setFocus();
    line->selectAll();
    QTest::keyClick(line, Qt::Key_Delete);
    QTest::keyClicks(line, words);
    QTest::keyClick(line, Qt::Key_Return);
    document.waitForAnalysis();
  }
  [[nodiscard]] std::string ownValue(const char* column) const {
    const Yard kept = inFile();
    const OwnSpecies* own = findOwn(kept, kOwnBergamot);
    if (!own) return {};
    for (const OwnFact& fact : own->facts)
      if (fact.column == column) return fact.value;
    return {};
  }
  [[nodiscard]] Ranked ranked() const {
    const double hours = document.sunMap()->meanHours(yard().beds.begin()->outline).value();
    return rankOf(*document.facts().find(kOwnBergamot),
                  requestFor(yard(), document.facts(), *yard().beds.begin(), hours));
  }
  [[nodiscard]] const Finding* tooMuchSun() const {
    static std::vector<Finding> found;
    found = *document.findings();
    const auto at = std::find_if(found.begin(), found.end(),
                                 [](const Finding& f) { return f.check == CheckId::SunNeed; });
    return at == found.end() ? nullptr : &*at;
  }
};

TEST_F(OwnSunHours, DecideTheFitAndTheChecks) {
  ASSERT_TRUE(ranked().suits()) << "full sun, in an open yard";
  ASSERT_FALSE(tooMuchSun());
  type("sun_hours_min", QStringLiteral("2"));
  type("sun_hours_max", QStringLiteral("3.5 hours"));
  EXPECT_EQ(ownValue("sun_hours_min"), "2");
  EXPECT_EQ(ownValue("sun_hours_max"), "3.5");
  ASSERT_FALSE(ranked().suits());
  EXPECT_NE(ranked().whyNot.front().find("asks for 2 to 3.5"), std::string::npos)
      << ranked().whyNot.front();
  const Finding* finding = tooMuchSun();
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->about, "too much");
  EXPECT_DOUBLE_EQ(finding->required, 3.5);
  document.undo(), document.undo();
  document.waitForAnalysis();
  EXPECT_TRUE(ranked().suits());
  EXPECT_FALSE(tooMuchSun());
  EXPECT_EQ(ownValue("sun_hours_max"), "");
}

TEST_F(OwnSunHours, ThatCannotBeAreRefused) {
  type("sun_hours_max", QStringLiteral("25"));
  EXPECT_EQ(ownValue("sun_hours_max"), "");
  bool said = false;
  for (const auto* label :
       window->findChildren<QLabel*>(QStringLiteral("plant-sun_hours_max-wrong")))
    said = said || (label->isVisible() && !label->text().isEmpty());
  EXPECT_TRUE(said);
}

}  // namespace
}  // namespace tussock
