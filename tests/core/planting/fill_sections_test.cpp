// SPDX-License-Identifier: MIT
// A large bed is looked at part by part: each drift in one of them, and nothing lost at the seams.
#include "core/planting/fill_sections.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "core/planting/fill_improve.h"
#include "core/planting/fill_scatter.h"
#include "core/planting/fill_tries.h"
#include "core/planting/planted_kinds.h"
#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

// Drifts of three in columns and rows a metre apart, of two species of one spacing in turn: short
// ones, and tall ones before them.
struct ManyDrifts {
  ManyDrifts(int columns, int rows) {
    test::YardBuilder builder;
    builder.bed("Field", "POLYGON ((-1 -1, 99 -1, 99 99, -1 99, -1 -1))").viewing("S");
    for (int row = 0; row < rows; ++row)
      for (int column = 0; column < columns; ++column) {
        const Point at{1.2 * column, 1.0 * row};
        builder.drift((row + column) % 2 == 0 ? kShort : kTall, test::row(3, 0.4, at));
        drifts.push_back(builder.lastDrift());
      }
    yard = builder.build();
    bed = builder.lastBed();
  }
  static constexpr auto kShort = "Rudbeckia fulgida", kTall = "Solidago speciosa";
  Yard yard;
  Id<Bed> bed;
  std::vector<Id<Drift>> drifts;
};

TEST(Sections, HoldEachDriftOnceAndLieTogether) {
  const ManyDrifts field(20, 12);
  const auto sections = sectionsOf(field.yard, field.drifts);
  std::vector<Id<Drift>> all;
  for (const auto& section : sections) {
    EXPECT_LE(section.size(), 48u);
    EXPECT_GE(section.size(), 12u);
    all.insert(all.end(), section.begin(), section.end());
    Box box;
    for (const Id<Drift> id : section) box.include(field.yard.drifts.find(id)->plants[0].at);
    EXPECT_LT(std::max(box.width(), box.height()), 12.0) << "a field of 24 by 12 m";
  }
  std::sort(all.begin(), all.end());
  EXPECT_EQ(all, field.drifts);
}

TEST(Sections, SeeWhatStandsAroundThem) {
  const ManyDrifts field(20, 12);
  const std::vector<Id<Drift>> one{field.drifts[0]};  // from (0, 0) to (0.8, 0)
  const Yard around = aroundSection(field.yard, one, 1.1);
  std::set<Id<Drift>> seen;
  for (const Drift& drift : around.drifts) seen.insert(drift.id);
  const std::set<Id<Drift>> expected{field.drifts[0], field.drifts[1], field.drifts[20],
                                     field.drifts[21]};
  EXPECT_EQ(seen, expected);
  EXPECT_EQ(around.beds, field.yard.beds);
}

TEST(SomeGround, IsLeftForCarpetsOnlyWhereTheBedIsLarge) {
  for (const double side : {10.0, 40.0}) {
    Yard yard;
    Bed bed;
    bed.id = Id<Bed>(2);
    bed.outline = rectangle({0, 0}, {side, side});
    yard.beds = yard.beds.with(bed);
    FillGround ground(yard, bed, Layer::Ground, 0.2, 0.2);
    const double whole = ground.area(), each = 0.0346;  // 0.2 m apart, in triangles
    Chance chance(1);
    keepSomeGround(ground, 1'000.0, each, chance);
    if (side < 20.0)
      EXPECT_EQ(ground.area(), whole);
    else
      EXPECT_NEAR(ground.area(), 3.0 * 1'000.0 * each, 20.0) << "of 1,600 square metres";
  }
}

TEST(UsualTime, GrowsWithLargeBeds) {
  using std::chrono::seconds;
  EXPECT_EQ(usualTimeFor(Area::squareMetres(40)), seconds(20));
  EXPECT_EQ(usualTimeFor(Area::squareMetres(2'500)), seconds(28));
  EXPECT_EQ(usualTimeFor(Area::squareMetres(20'000)), seconds(90));
}

// A judge of our own, who wants tall plants in the back half only.
FillVerdict wantsTallBehind(const Yard& yard) {
  FillVerdict verdict;
  for (const Drift& drift : yard.drifts)
    if ((drift.species == ManyDrifts::kTall) != (drift.plants[0].at.y > 5.5)) {
      verdict.cost += 1.0;
      verdict.concerned.push_back(drift.id);
    }
  return verdict;
}

TEST(Improvement, OfALargeBedGoesThroughAllItsParts) {
  ManyDrifts field(20, 12);
  const Catalogue& facts = test::shippedFacts();
  const auto kinds =
      kindsOf({facts.find(ManyDrifts::kShort), facts.find(ManyDrifts::kTall)}, field.yard.settings);
  ASSERT_NEAR(kinds[0].spacing, kinds[1].spacing, 1e-9);
  Yard planted = field.yard;
  for (const Id<Drift> id : field.drifts) {
    Drift drift = *planted.drifts.find(id);
    drift.spacing = Length::metres(kinds[0].spacing);
    planted.drifts = planted.drifts.with(drift);
  }
  const Yard before = planted;
  int askedOfAll = 0;
  const FillJudge judge = [&](const Yard& yard) { return ++askedOfAll, wantsTallBehind(yard); };
  const FillJudge ofSection = wantsTallBehind;
  const WorkWatch watch({}, std::chrono::minutes(5));
  const FillLimits limits;
  const PlantingWorth worth = improvePlanting(
      {facts, nullptr, field.bed, 0.5, limits, kinds, judge, ofSection, false, 0.0, 1, {}},
      field.drifts, planted, watch);
  EXPECT_EQ(worth.found, 0.0);
  EXPECT_EQ(wantsTallBehind(planted).cost, 0.0);
  EXPECT_LT(askedOfAll, 20) << "120 drifts stood wrong: what is near was asked instead";
  for (const Drift& drift : planted.drifts)
    EXPECT_EQ(drift.plants, before.drifts.find(drift.id)->plants) << "no plant moves";
}

}  // namespace
}  // namespace tussock
