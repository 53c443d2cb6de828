// SPDX-License-Identifier: MIT
#include "core/edit/change.h"

#include <random>

#include <gtest/gtest.h>

#include "core/edit/draft.h"

namespace tussock {
namespace {

Bed bed(std::int64_t id, double left) {
  Bed b;
  b.id = Id<Bed>(id);
  b.name = "Bed " + std::to_string(id);
  b.outline = rectangle({left, 0}, {left + 3, 2});
  return b;
}

Drift drift(std::int64_t id, std::int64_t inBed, Point at) {
  Drift d;
  d.id = Id<Drift>(id);
  d.bed = Id<Bed>(inBed);
  d.species = "Carex pensylvanica";
  d.spacing = Length::metres(0.3);
  d.plants = {{Id<Plant>(id * 100), at}};
  return d;
}

Yard sample() {
  Yard yard;
  yard.beds = Collection<Bed>({bed(1, 0), bed(2, 5)});
  yard.drifts =
      Collection<Drift>({drift(10, 1, {1, 1}), drift(11, 1, {2, 1}), drift(12, 2, {6, 1})});
  return yard;
}

// A random walk of edits of several kinds, numbered so that a failure can be run again.
Yard changedAtRandom(const Yard& yard, std::mt19937& random) {
  Draft draft(yard);
  const int times = 1 + static_cast<int>(random() % 4);
  for (int i = 0; i < times; ++i) {
    const auto id = static_cast<std::int64_t>(1 + random() % 6);
    switch (random() % 5) {
      case 0:
        draft.put(bed(id, static_cast<double>(random() % 50)));
        break;
      case 1:
        draft.remove(Id<Bed>(id));
        break;
      case 2:
        draft.put(drift(20 + id, id, {static_cast<double>(random() % 9), 1}));
        break;
      case 3:
        draft.remove(Id<Drift>(20 + id));
        break;
      default: {
        Settings s = draft.yard().settings;
        s.notes += "x";
        draft.put(s);
      }
    }
  }
  return draft.yard();
}

TEST(ChangeSet, LeadsThereAndBackAgain) {
  std::mt19937 random(38);
  Yard yard = sample();
  for (int round = 0; round < 200; ++round) {
    const Yard next = changedAtRandom(yard, random);
    const ChangeSet edit = difference(yard, next, "Walk");
    EXPECT_EQ(apply(yard, edit), next) << "round " << round;
    EXPECT_EQ(apply(next, inverse(edit)), yard) << "round " << round;
    EXPECT_EQ(inverse(inverse(edit)), edit);
    yard = next;
  }
}

TEST(ChangeSet, OfEqualYardsIsEmpty) {
  EXPECT_TRUE(difference(sample(), sample(), "Nothing").empty());
}

TEST(Apply, RefusesAYardThatIsNotAsItWas) {
  const Yard yard = sample();
  Draft draft(yard);
  draft.remove(Id<Bed>(2));
  const ChangeSet edit = draft.finish("Delete bed");
  const Yard other = apply(yard, difference(
                                     yard,
                                     [&] {
                                       Draft rename(yard);
                                       Bed b = *yard.beds.find(Id<Bed>(2));
                                       b.name = "Renamed";
                                       rename.put(b);
                                       return rename.yard();
                                     }(),
                                     "Rename"));
  EXPECT_THROW((void)apply(other, edit), EditConflict);
  EXPECT_THROW((void)apply(apply(yard, edit), edit), EditConflict);
}

TEST(Remove, TakesTheDriftsOfABedAndSaysHowMany) {
  const ChangeSet edit = removeObjects(sample(), {refTo(Id<Bed>(1))});
  EXPECT_EQ(edit.label, "Delete bed with 2 drifts");
  const Yard after = apply(sample(), edit);
  EXPECT_EQ(after.beds.size(), 1u);
  EXPECT_EQ(after.drifts.size(), 1u);
  EXPECT_EQ(apply(after, inverse(edit)), sample());
}

TEST(Move, TakesTheDriftsAlongButNotLockedOnes) {
  Yard yard = sample();
  Drift locked = *yard.drifts.find(Id<Drift>(11));
  locked.locked = true;
  yard.drifts = yard.drifts.with(locked);
  const Yard after = apply(yard, moveObjects(yard, {refTo(Id<Bed>(1))}, {0, 4}));
  EXPECT_EQ(after.beds.find(Id<Bed>(1))->outline.outer[0], (Point{0, 4}));
  EXPECT_EQ(after.drifts.find(Id<Drift>(10))->plants[0].at, (Point{1, 5}));
  EXPECT_EQ(after.drifts.find(Id<Drift>(11))->plants[0].at, (Point{2, 1}));
  EXPECT_EQ(after.drifts.find(Id<Drift>(12))->plants[0].at, (Point{6, 1}));
}

}  // namespace
}  // namespace tussock
