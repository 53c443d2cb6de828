// SPDX-License-Identifier: MIT
// Surveys are made up by tracing rays, code that the engine does not share; the fit must find the
// trees they came from.
#include "core/sun/survey_fit.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/sun/least_squares.h"
#include "core/sun/sun_days.h"
#include "tests/core/sun/ray_scene.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

constexpr double kLatitude = 42.0;

double tracedHours(const test::RayScene& scene, Point p, Date day) {
  const auto first = Date(day.year(), std::chrono::January, std::chrono::day(1));
  const int number =
      static_cast<int>((std::chrono::sys_days(day) - std::chrono::sys_days(first)).count());
  double hours = 0.0;
  for (const SunStep& step : stepsOf(day, Angle::degrees(kLatitude), {}, 1))
    hours += step.hours * test::rayShare(scene, p, step.sun, number, 0.0);
  return hours;
}

test::RayTree treeAt(Point at, double top, double opennessLeaf) {
  test::RayTree tree;
  tree.at = at, tree.radius = 2.5, tree.base = 1.5, tree.top = top;
  tree.opennessLeaf = opennessLeaf, tree.opennessBare = 0.6;
  return tree;
}

struct Survey : testing::Test {
  test::RayScene truth;
  Yard yard;

  // The yard as somebody drew it, with readings of what is there.
  void draw(std::vector<test::RayTree> real, std::vector<test::RayTree> drawn,
            const std::vector<Point>& points, const std::vector<Date>& days) {
    truth.trees = std::move(real);
    test::RayScene guess;
    guess.trees = std::move(drawn);
    yard = test::yardOf(guess);
    yard.settings.latitude = Angle::degrees(kLatitude);
    std::int64_t id = 500;
    for (const Date day : days)
      for (const Point p : points) {
        SunReading reading;
        reading.id = Id<SunReading>(id++);
        reading.at = p, reading.day = day, reading.hours = tracedHours(truth, p, day);
        yard.sunReadings = yard.sunReadings.with(reading);
      }
  }
};

const std::vector<Point> kAround{{5, 8}, {8, 9}, {11, 8}, {8, 12}, {4, 11}, {12, 11}};

TEST_F(Survey, ComputedHoursStandBesideThoseSeen) {
  draw({treeAt({8, 5}, 9, 0.2)}, {treeAt({8, 5}, 9, 0.2)}, kAround, {2026y / 6 / 21});
  const auto compared = compareReadings(yard);
  ASSERT_EQ(compared.size(), 6u);
  for (const ReadingCompared& each : compared) EXPECT_NEAR(each.residual(), 0.0, 0.06);
  EXPECT_LT(rmsOf(compared), 0.05);
}

TEST_F(Survey, FindsTheHeightAndOpennessOfATree) {
  draw({treeAt({8, 5}, 10, 0.35)}, {treeAt({8, 5}, 6, 0.1)}, kAround,
       {2026y / 5 / 20, 2026y / 9 / 10});
  const auto fit = fitSurvey(yard);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->verdict, SurveyVerdict::Fitted);
  EXPECT_EQ(fit->unknowns, 2);
  EXPECT_GT(rmsOf(fit->before), 0.4);
  EXPECT_LT(rmsOf(fit->after), 0.08);
  const Yard fitted = apply(yard, fit->proposal);
  EXPECT_NEAR(fitted.trees.begin()->height.metres(), 10.0, 0.3);
  EXPECT_NEAR(fitted.trees.begin()->opennessLeaf, 0.35, 0.03);
  EXPECT_EQ(fitted.trees.begin()->opennessBare, 0.6);  // no reading tells of it
  EXPECT_EQ(fitted.trees.begin()->at, yard.trees.begin()->at);
}

TEST_F(Survey, TellsTwoTreesApart) {
  draw({treeAt({5, 5}, 7, 0.1), treeAt({12, 5}, 11, 0.5)},
       {treeAt({5, 5}, 9, 0.3), treeAt({12, 5}, 8, 0.2)}, kAround,
       {2026y / 5 / 20, 2026y / 7 / 15, 2026y / 9 / 20});
  const auto fit = fitSurvey(yard);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->verdict, SurveyVerdict::Fitted);
  EXPECT_LT(rmsOf(fit->after), 0.1);
  const Yard fitted = apply(yard, fit->proposal);
  const Tree first = *fitted.trees.begin();
  const Tree second = *std::next(fitted.trees.begin());
  EXPECT_NEAR(first.height.metres(), 7.0, 0.5);
  EXPECT_NEAR(second.height.metres(), 11.0, 0.5);
  EXPECT_NEAR(first.opennessLeaf, 0.1, 0.06);
  EXPECT_NEAR(second.opennessLeaf, 0.5, 0.06);
}

TEST_F(Survey, WinterReadingsTellOfBareBranches) {
  draw({treeAt({8, 5}, 9, 0.2)}, {treeAt({8, 5}, 9, 0.2)}, kAround, {2026y / 3 / 20});
  Tree tree = *yard.trees.begin();
  tree.opennessBare = 0.3;
  yard.trees = yard.trees.with(tree);
  const auto fit = fitSurvey(yard);
  ASSERT_TRUE(fit);
  const Yard fitted = apply(yard, fit->proposal);
  EXPECT_NEAR(fitted.trees.begin()->opennessBare, 0.6, 0.05);
  EXPECT_EQ(fitted.trees.begin()->opennessLeaf, 0.2);
}

TEST_F(Survey, TooFewReadingsSaySoAndChangeLittle) {
  draw({treeAt({5, 5}, 9, 0.3), treeAt({11, 5}, 9, 0.3)},
       {treeAt({5, 5}, 8, 0.2), treeAt({11, 5}, 8, 0.2)}, {{8, 9}}, {2026y / 6 / 21});
  const auto fit = fitSurvey(yard);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->verdict, SurveyVerdict::TooFew);
  EXPECT_GT(fit->unknowns, 1);
  EXPECT_LE(rmsOf(fit->after), rmsOf(fit->before));
  EXPECT_NE(fit->text.find("1 reading cannot settle"), std::string::npos) << fit->text;
  for (const FittedValue& value : fit->values)
    if (value.quantity == TreeQuantity::Height) {
      EXPECT_LT(std::abs(value.to - value.from), 3.0);
    }
}

// One reading says that there is no sun at all where the crown lets much through: the light goes to
// none, and the height as far as it may.
TEST_F(Survey, ValuesAtTheEndOfWhatIsTriedAreTold) {
  draw({treeAt({8, 5}, 9, 0.5)}, {treeAt({8, 5}, 9, 0.5)}, {{8, 8}}, {2026y / 6 / 21});
  SunReading reading = *yard.sunReadings.begin();
  reading.hours = 0.0;
  yard.sunReadings = yard.sunReadings.with(reading);
  const auto fit = fitSurvey(yard);
  ASSERT_TRUE(fit);
  ASSERT_FALSE(fit->values.empty());
  bool light = false;
  for (const FittedValue& value : fit->values) {
    light = light || (value.quantity == TreeQuantity::OpennessLeaf && value.to <= 0.01 &&
                      value.end == FittedValue::End::Least);
  }
  EXPECT_TRUE(light);
  EXPECT_NE(fit->text.find("to the end of what a tree can be"), std::string::npos) << fit->text;
  EXPECT_EQ(fit->text.find("nearest to what is drawn"), std::string::npos) << fit->text;
}

TEST_F(Survey, TreesThatShadeNoPointAreLeftAlone) {
  draw({treeAt({8, 5}, 10, 0.3)}, {treeAt({8, 5}, 7, 0.1)}, kAround, {2026y / 6 / 10});
  Tree far;
  far.id = Id<Tree>(900);
  far.at = {8, 400};
  yard.trees = yard.trees.with(far);
  const auto fit = fitSurvey(yard);
  ASSERT_TRUE(fit);
  for (const FittedValue& value : fit->values) EXPECT_NE(value.tree, Id<Tree>(900));
}

TEST_F(Survey, NothingIsOfferedWithoutReadingsOrTrees) {
  EXPECT_EQ(fitSurvey(yard)->verdict, SurveyVerdict::NoReadings);
  draw({}, {}, kAround, {2026y / 6 / 10});
  const auto fit = fitSurvey(yard);
  EXPECT_EQ(fit->verdict, SurveyVerdict::NothingToFit);
  EXPECT_TRUE(fit->proposal.empty());
}

TEST_F(Survey, BadReadingsAreLeftOut) {
  draw({treeAt({8, 5}, 9, 0.2)}, {treeAt({8, 5}, 9, 0.2)}, {{8, 9}}, {2026y / 6 / 21});
  SunReading bad = *yard.sunReadings.begin();
  bad.id = Id<SunReading>(900), bad.hours = NAN;
  yard.sunReadings = yard.sunReadings.with(bad);
  bad.id = Id<SunReading>(901), bad.hours = 30.0;
  yard.sunReadings = yard.sunReadings.with(bad);
  bad.id = Id<SunReading>(902), bad.hours = 3.0, bad.day = 2026y / 2 / 30;
  yard.sunReadings = yard.sunReadings.with(bad);
  EXPECT_EQ(compareReadings(yard).size(), 1u);
}

TEST_F(Survey, TheSameYardGetsTheSameOffer) {
  draw({treeAt({8, 5}, 10, 0.35)}, {treeAt({8, 5}, 6, 0.1)}, kAround, {2026y / 5 / 20});
  EXPECT_EQ(fitSurvey(yard)->proposal, fitSurvey(yard)->proposal);
}

TEST_F(Survey, StoppingGivesNothing) {
  draw({treeAt({8, 5}, 10, 0.35)}, {treeAt({8, 5}, 6, 0.1)}, kAround, {2026y / 5 / 20});
  std::stop_source source;
  source.request_stop();
  EXPECT_FALSE(fitSurvey(yard, source.get_token()));
}

// Rosenbrock's function (1960), whose least lies at 1, 1.
TEST(LeastSquaresTest, FindsTheLowestPlaceOfABentValley) {
  const std::vector<Unknown> unknowns{{-1.2, -2, 2, 1e-6, 1}, {1.0, -2, 2, 1e-6, 1}};
  const auto at =
      leastSquares(unknowns, 0.0,
                   [](const std::vector<double>& x) {
                     return std::vector<double>{10.0 * (x[1] - x[0] * x[0]), 1.0 - x[0]};
                   },
                   {});
  EXPECT_NEAR(at[0], 1.0, 1e-3);
  EXPECT_NEAR(at[1], 1.0, 2e-3);
}

TEST(LeastSquaresTest, StaysWithinBounds) {
  const std::vector<Unknown> unknowns{{0.5, 0.0, 0.8, 1e-3, 1}};
  const auto at = leastSquares(
      unknowns, 0.0, [](const std::vector<double>& x) { return std::vector<double>{x[0] - 3.0}; },
      {});
  EXPECT_DOUBLE_EQ(at[0], 0.8);
}

}  // namespace
}  // namespace tussock
