// SPDX-License-Identifier: MIT
#include "core/store/soundness.h"

#include <limits>

#include <gmock/gmock.h>

#include "tests/support/random_yard.h"
#include "tests/support/small_yards.h"

namespace tussock {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr double kNotANumber = std::numeric_limits<double>::quiet_NaN();

TEST(Soundness, FindsNothingInSoundYards) {
  EXPECT_THAT(faultsOf(test::twoDrifts()), IsEmpty());
  for (unsigned seed = 1; seed <= 20; ++seed) {
    test::Random random(seed);
    EXPECT_THAT(faultsOf(test::randomYard(random)), IsEmpty()) << seed;
  }
}

TEST(Soundness, NamesObjectAndField) {
  Tree tree;
  tree.id = Id<Tree>(4);
  tree.at = {1, kNotANumber};
  EXPECT_THAT(faultsOf(Object(tree)), ElementsAre(HasSubstr("tree 4, at: ")));
}

TEST(Soundness, ABedNeedsAnOutlineABarrierNoFootprint) {
  Bed bed;
  bed.id = Id<Bed>(4);
  EXPECT_THAT(faultsOf(Object(bed)), ElementsAre(HasSubstr("bed 4, outline_wkt: ")));
  Barrier barrier;
  barrier.id = Id<Barrier>(4);
  barrier.line = {{0, 0}, {5, 0}};
  EXPECT_THAT(faultsOf(Object(barrier)), IsEmpty());
}

TEST(Soundness, LooksIntoListsAndOptionalFields) {
  Bed bed = *test::twoDrifts().beds.begin();
  bed.plantList = {{"Carex", kNotANumber}};
  bed.viewing.from = {Angle::radians(kNotANumber)};
  bed.setback = Length::metres(kNotANumber);
  EXPECT_EQ(faultsOf(Object(bed)).size(), 3u);
}

TEST(Soundness, OneIdIsOfOneThingOnly) {
  Draft draft(test::twoDrifts());
  Tree tree;
  tree.id = Id<Tree>(5);  // a plant has it
  draft.put(tree);
  EXPECT_THAT(faultsOf(draft.yard()), ElementsAre(HasSubstr("plant 5: something else")));
}

TEST(Soundness, TheLargestIdOfAnEditIsOfObjectsAndPlantsBeforeAndAfter) {
  const Yard yard = test::twoDrifts();
  EXPECT_EQ(largestId(difference(yard, Yard{}, "Clear")), largestId(yard));
  EXPECT_EQ(largestId(difference(Yard{}, yard, "Draw")), largestId(yard));
  EXPECT_EQ(largestId(test::renameTo(yard, "Hill")), 1);
}

}  // namespace
}  // namespace tussock
