// SPDX-License-Identifier: MIT
// Figures of a bed that can be counted by hand.
#include "core/planting/published_figures.h"

#include <gtest/gtest.h>

#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

const PublishedFigure* find(const std::vector<PublishedFigure>& figures, std::string_view title) {
  for (const PublishedFigure& figure : figures)
    if (figure.title.starts_with(title)) return &figure;
  return nullptr;
}

// 2 by 2 m with 5, 4 and 3 plants: three a square metre, two of three drifts odd.
TEST(PublishedFigures, AreCountedFromTheBed) {
  test::YardBuilder builder;
  builder.bed("Bed", "POLYGON ((0 0, 2 0, 2 2, 0 2, 0 0))")
      .drift(test::kBergamot, test::row(5, 0.4, {0.2, 0.2}))
      .drift(test::kConeflower, test::row(4, 0.4, {0.2, 0.6}))
      .drift(test::kBluestem, test::row(3, 0.4, {0.2, 1.0}));
  const Yard yard = builder.build();
  const auto figures = publishedFigures(yard, test::tinyCatalogue(), builder.lastBed());
  ASSERT_NE(find(figures, "Plants a square metre, main"), nullptr);
  EXPECT_DOUBLE_EQ(find(figures, "Plants a square metre, main")->measured, 3.0);
  EXPECT_FALSE(find(figures, "Plants a square metre, main")->within());
  EXPECT_DOUBLE_EQ(find(figures, "Share of odd drifts")->measured, 2.0 / 3.0);
  // The grass shows no flowers: five and four remain.
  EXPECT_DOUBLE_EQ(find(figures, "Plants of a flowering species")->measured, 5.0);
  EXPECT_EQ(find(figures, "Plants a square metre, ground"), nullptr);
  for (const PublishedFigure& figure : figures) EXPECT_FALSE(figure.source.empty());
}

// A square yard is 0.9144² = 0.83612736 m², and four feet are published for the clumps.
TEST(PublishedFigures, AreInTheUnitsOfTheYard) {
  test::YardBuilder builder;
  builder.units(UnitSystem::FeetInches)
      .bed("Bed", "POLYGON ((0 0, 2 0, 2 2, 0 2, 0 0))")
      .drift(test::kBergamot, test::row(12, 0.1, {0.2, 0.2}));
  const auto figures = publishedFigures(builder.build(), test::tinyCatalogue(), builder.lastBed());
  const PublishedFigure* density = find(figures, "Plants a square yard, main");
  ASSERT_NE(density, nullptr);
  EXPECT_NEAR(density->measured, 3.0 * 0.83612736, 1e-12);
  EXPECT_NEAR(density->low, 4.0 * 0.83612736, 1e-12);
  EXPECT_NEAR(density->high, 9.0 * 0.83612736, 1e-12);
  EXPECT_EQ(find(figures, "Plants a square metre"), nullptr);
  const PublishedFigure* width = find(figures, "Feet across");
  ASSERT_NE(width, nullptr);
  EXPECT_DOUBLE_EQ(width->low, 4.0);
}

// 12 plants 0.6 m apart would be 3.2 a square metre if they took all of it; nine flower.
TEST(PublishedFigures, SayWhyTheyAreOutsideWhereTheBedItselfDoes) {
  test::YardBuilder builder;
  builder.bed("Bed", "POLYGON ((0 0, 2 0, 2 2, 0 2, 0 0))")
      .drift(test::kBergamot, test::row(5, 0.4, {0.2, 0.2}))
      .spaced(0.6)
      .drift(test::kConeflower, test::row(4, 0.4, {0.2, 0.6}))
      .spaced(0.6);
  const auto of = [&](const char* title) {
    const Yard yard = builder.build();
    return *find(publishedFigures(yard, test::tinyCatalogue(), builder.lastBed()), title);
  };
  EXPECT_TRUE(of("Plants a square metre, main").below());
  EXPECT_EQ(of("Plants a square metre, main").reason, "its plants stand 60 cm apart on average");
  EXPECT_EQ(of("Plants of a flowering species").reason, "9 plants that flower are of 2 species");
  // 45 cm apart there would be 5.7: that they are fewer is not for that.
  builder.drift(test::kBluestem, test::row(9, 0.2, {0.2, 1.4})).spaced(0.25);
  EXPECT_FALSE(of("Plants a square metre, main").below());
  EXPECT_EQ(of("Plants a square metre, main").reason, "");
}

TEST(PublishedFigures, AreToldAsBelowWithinOrAbove) {
  PublishedFigure figure{"Plants", 2.84, 4.0, 9.0, "a source", "they stand far apart"};
  EXPECT_EQ(besidePublished(figure), "2.8, below the published 4 to 9; here they stand far apart");
  EXPECT_EQ(figure.outside(), "below");
  figure.reason.clear();
  figure.measured = 9.5;
  EXPECT_EQ(besidePublished(figure), "9.5, above the published 4 to 9");
  figure.measured = 6.0;
  EXPECT_EQ(besidePublished(figure), "6.0, within the published 4 to 9");
  EXPECT_EQ(figure.outside(), "");
  figure.high = figure.low;
  EXPECT_EQ(besidePublished(figure), "6.0, within the published 4 and more");
}

TEST(PublishedFigures, OfAnEmptyBedThereAreNone) {
  test::YardBuilder builder;
  builder.bed("Bed", "POLYGON ((0 0, 2 0, 2 2, 0 2, 0 0))");
  const Yard yard = builder.build();
  EXPECT_TRUE(publishedFigures(yard, test::tinyCatalogue(), builder.lastBed()).empty());
}

}  // namespace
}  // namespace tussock
