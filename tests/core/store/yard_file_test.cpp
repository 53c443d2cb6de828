// SPDX-License-Identifier: MIT
#include "core/store/yard_file.h"

#include <limits>

#include <gmock/gmock.h>

#include "tests/support/random_yard.h"
#include "tests/support/small_yards.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::Optional;

using test::renameTo;
using test::twoDrifts;

TEST(YardFile, HoldsTheYardItWasMadeWith) {
  const test::TemporaryFolder folder;
  const Yard yard = twoDrifts();
  EXPECT_EQ(YardFile::create(folder / "a.yard", yard).yard(), yard);
  const YardFile file = YardFile::open(folder / "a.yard");
  EXPECT_EQ(file.yard(), yard);
  EXPECT_EQ(file.revision(), 0);
  EXPECT_THAT(file.verify(), IsEmpty());
}

TEST(YardFile, ACopyIsWholeWithItsHistoryAndGoesItsOwnWay) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  file.commit(renameTo(file.yard(), "Hill"));
  YardFile other = YardFile::open(folder / "a.yard");
  other.commit(renameTo(other.yard(), "Vale"));  // this one has not looked since
  file.copyTo(folder / "b.yard");
  YardFile copy = YardFile::open(folder / "b.yard");
  EXPECT_EQ(copy.yard(), other.yard());
  EXPECT_THAT(copy.verify(), IsEmpty());
  EXPECT_TRUE(copy.undo().has_value());
  EXPECT_EQ(copy.yard().settings.name, "Hill");
  EXPECT_EQ(YardFile::open(folder / "a.yard").yard().settings.name, "Vale");
}

TEST(YardFile, ACopyNeverReplacesAFile) {
  const test::TemporaryFolder folder;
  const YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  const Yard before = YardFile::create(folder / "b.yard", Yard{}).yard();
  EXPECT_THROW(file.copyTo(folder / "b.yard"), StoreError);
  EXPECT_THROW(file.copyTo(folder / "a.yard"), StoreError);
  EXPECT_EQ(YardFile::open(folder / "b.yard").yard(), before);
  EXPECT_EQ(file.yard(), twoDrifts());
}

TEST(YardFile, CommitIsThereAfterReopening) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  file.commit(renameTo(file.yard(), "Hill"));
  EXPECT_EQ(file.yard().settings.name, "Hill");
  EXPECT_EQ(file.revision(), 1);
  const YardFile again = YardFile::open(folder / "a.yard");
  EXPECT_EQ(again.yard(), file.yard());
  EXPECT_EQ(again.revision(), 1);
}

TEST(YardFile, UndoAndRedoSurviveReopening) {
  const test::TemporaryFolder folder;
  const Yard first = twoDrifts();
  Yard second, third;
  {
    YardFile file = YardFile::create(folder / "a.yard", first);
    file.commit(renameTo(file.yard(), "Hill"));
    second = file.yard();
    file.commit(renameTo(file.yard(), "Dale"));
    third = file.yard();
  }
  {
    YardFile file = YardFile::open(folder / "a.yard");
    EXPECT_THAT(file.undoLabel(), Optional(std::string("Rename to Dale")));
    EXPECT_THAT(file.undo(), Optional(std::string("Rename to Dale")));
    EXPECT_EQ(file.yard(), second);
    EXPECT_THAT(file.undo(), Optional(std::string("Rename to Hill")));
    EXPECT_EQ(file.undo(), std::nullopt);
    EXPECT_EQ(file.yard(), first);
  }
  YardFile file = YardFile::open(folder / "a.yard");
  EXPECT_EQ(file.yard(), first);
  EXPECT_THAT(file.redoLabel(), Optional(std::string("Rename to Hill")));
  EXPECT_TRUE(file.redo() && file.redo());
  EXPECT_EQ(file.redo(), std::nullopt);
  EXPECT_EQ(file.yard(), third);
  EXPECT_THAT(file.verify(), IsEmpty());
}

TEST(YardFile, NewCommitDropsWhatCouldBeRedone) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  for (const char* name : {"A", "B", "C"}) file.commit(renameTo(file.yard(), name));
  file.undo();
  file.undo();
  file.commit(renameTo(file.yard(), "D"));
  EXPECT_EQ(file.redoLabel(), std::nullopt);
  std::vector<std::string> labels;
  std::vector<std::int64_t> numbers;
  for (const HistoryEntry& entry : file.history()) {
    labels.push_back(entry.label);
    numbers.push_back(entry.number);
    EXPECT_FALSE(entry.undone);
  }
  EXPECT_THAT(labels, ElementsAre("Rename to A", "Rename to D"));
  EXPECT_THAT(numbers, ElementsAre(1, 2));
  EXPECT_THAT(file.verify(), IsEmpty());
}

// The yard, and no more than codes issued since beside it: those stay.
void expectTakenBackTo(const Yard& yard, Yard found) {
  for (const PlanCode& code : yard.planCodes) {
    const PlanCode* kept = found.planCodes.find(code.id);
    ASSERT_NE(kept, nullptr);
    EXPECT_EQ(*kept, code);
  }
  found.planCodes = yard.planCodes;
  EXPECT_EQ(found, yard);
}

// Rows written one by one must come to the same as the yard in memory, whatever the edit.
TEST(YardFile, AnEditCanBecomeOneWithTheLast) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  const std::string first = file.yard().settings.name;
  file.commit(renameTo(file.yard(), "Hill"));
  for (const char* name : {"Vale", "Dale"}) {
    file.commitIntoLast(renameTo(file.yard(), name));
    EXPECT_EQ(YardFile::open(folder / "a.yard").yard().settings.name, name) << "at once";
    EXPECT_EQ(file.history().size(), 1u);
  }
  EXPECT_EQ(file.lastEdit(), 1);
  EXPECT_THAT(file.verify(), IsEmpty());
  EXPECT_TRUE(file.undo().has_value());
  EXPECT_EQ(file.yard().settings.name, first);
  EXPECT_TRUE(file.redo().has_value());
  EXPECT_EQ(YardFile::open(folder / "a.yard").yard().settings.name, "Dale");
}

TEST(YardFile, EditsThatComeToNothingLeaveNoEntry) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  const Yard first = file.yard();
  file.commit(renameTo(file.yard(), "Hill"));
  file.commitIntoLast(renameTo(file.yard(), first.settings.name));
  EXPECT_EQ(file.yard(), first);
  EXPECT_FALSE(file.undoLabel().has_value());
  EXPECT_THAT(file.history(), IsEmpty());
  EXPECT_THAT(file.verify(), IsEmpty());
  file.commitIntoLast(renameTo(file.yard(), "Vale"));  // there is none to be one with
  EXPECT_EQ(file.history().size(), 1u);
}

TEST(YardFile, AnEditOfTheLastIsRefusedWholeWhereAnotherProgramHasWritten) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  file.commit(renameTo(file.yard(), "Hill"));
  YardFile other = YardFile::open(folder / "a.yard");
  other.commit(renameTo(other.yard(), "Vale"));
  EXPECT_THROW(file.commitIntoLast(renameTo(file.yard(), "Dale")), StoreError);
  EXPECT_EQ(file.yard().settings.name, "Hill");
  EXPECT_EQ(YardFile::open(folder / "a.yard").history().size(), 2u);
}

TEST(YardFile, RandomEditsReadBackEqualAndUndo) {
  for (unsigned seed = 1; seed <= 12; ++seed) {
    SCOPED_TRACE(seed);
    const test::TemporaryFolder folder;
    test::Random random(seed);
    YardFile file = YardFile::create(folder / "a.yard", Yard{});
    for (int i = 0; i <= 5; ++i) file.putBlob(test::randomPicture(i));
    std::vector<Yard> yards{file.yard()};
    yards.push_back(test::randomYard(random));
    for (int i = 0; i < 3; ++i) yards.push_back(test::randomNext(yards.back(), random));
    for (std::size_t i = 1; i < yards.size(); ++i) {
      file.commit(difference(yards[i - 1], yards[i], "Step"));
      for (int p = 0; p <= 5; ++p) file.putBlob(test::randomPicture(p));
      EXPECT_EQ(YardFile::open(file.path()).yard(), yards[i]);
    }
    EXPECT_THAT(file.verify(), IsEmpty());
    for (std::size_t i = yards.size() - 1; i-- > 0;) {
      file.undo();
      expectTakenBackTo(yards[i], YardFile::open(file.path()).yard());
    }
    EXPECT_THAT(file.verify(), IsEmpty());
  }
}

TEST(YardFile, AnIdSeenOnceIsNeverGivenAgain) {
  const test::TemporaryFolder folder;
  Id<Tree> id;
  {
    YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
    EXPECT_EQ(file.ids().next(), largestId(file.yard()) + 1);
    for (int i = 0; i < 9; ++i) id = file.ids().take<Tree>();
    Tree tree;
    tree.id = id;
    Draft add(file.yard());
    add.put(tree);
    file.commit(add.finish("Add tree"));
    Draft remove(file.yard());
    remove.remove(id);
    file.commit(remove.finish("Remove tree"));
    file.forgetHistory();
  }
  EXPECT_GT(YardFile::open(folder / "a.yard").ids().next(), id.value());
}

TEST(YardFile, AnIdGivenByHandIsNeverGivenAgain) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  Drift drift = *file.yard().drifts.begin();
  drift.plants.push_back({Id<Plant>(900), {1, 2}});
  Draft draft(file.yard());
  draft.put(drift);
  file.commit(draft.finish("Add plant"));
  EXPECT_EQ(file.ids().next(), 901);
}

TEST(YardFile, ForgettingHistoryKeepsTheYard) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  file.commit(renameTo(file.yard(), "Hill"));
  file.commit(renameTo(file.yard(), "Dale"));
  file.undo();
  const Yard before = file.yard();
  file.forgetHistory();
  EXPECT_EQ(file.yard(), before);
  EXPECT_THAT(file.history(), IsEmpty());
  EXPECT_EQ(file.undoLabel(), std::nullopt);
  EXPECT_EQ(file.redoLabel(), std::nullopt);
  EXPECT_EQ(file.undo(), std::nullopt);
  EXPECT_EQ(YardFile::open(file.path()).yard(), before);
}

TEST(YardFile, APlantCanGoFromOneDriftToAnother) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  Drift first = *file.yard().drifts.begin();
  Drift second = *std::next(file.yard().drifts.begin());
  second.plants.insert(second.plants.begin(), first.plants[2]);
  first.plants.erase(first.plants.begin() + 2);
  Draft draft(file.yard());
  draft.put(first);
  draft.put(second);
  file.commit(draft.finish("Move plant"));
  EXPECT_EQ(YardFile::open(file.path()).yard(), draft.yard());
  file.undo();
  EXPECT_EQ(YardFile::open(file.path()).yard(), twoDrifts());
}

TEST(YardFile, AChangeSetThatTouchesAnObjectTwiceIsKeptWhole) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  Tree tree;
  tree.id = file.ids().take<Tree>();
  Tree taller = tree;
  taller.height = Length::metres(12);
  file.commit({"Add tall tree", {{std::nullopt, tree}, {tree, taller}}});
  EXPECT_EQ(YardFile::open(file.path()).yard().trees.find(tree.id)->height, Length::metres(12));
  file.undo();
  EXPECT_TRUE(YardFile::open(file.path()).yard().trees.empty());
  EXPECT_THAT(file.verify(), IsEmpty());
}

TEST(YardFile, AnEditForAnotherYardChangesNothing) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  const ChangeSet edit = renameTo(file.yard(), "Hill");
  file.commit(edit);
  EXPECT_THROW(file.commit(edit), EditConflict);
  EXPECT_EQ(file.revision(), 1);
  file.commit(renameTo(file.yard(), "Dale"));
  EXPECT_EQ(file.history().size(), 2u);
}

// A file never holds what would not read back, so such an edit is refused and nothing is lost.
TEST(YardFile, RefusesWhatAFileCannotHold) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  std::vector<Object> objects;
  Tree tree;
  tree.id = Id<Tree>(70);
  tree.height = Length::metres(std::numeric_limits<double>::infinity());
  objects.emplace_back(tree);
  Bed bed;
  bed.id = Id<Bed>(71);
  bed.outline.outer = {{0, 0}, {4, 4}, {4, 0}, {0, 4}};
  objects.emplace_back(bed);
  Paving withoutId;
  withoutId.outline = rectangle({0, 0}, {1, 1});
  objects.emplace_back(withoutId);
  PlanCode code;
  code.id = Id<PlanCode>(72);
  code.code = "\xff";
  objects.emplace_back(code);
  for (const Object& object : objects)
    EXPECT_THROW(file.commit({"Add", {{std::nullopt, object}}}), StoreError) << object.index();
  EXPECT_EQ(file.yard(), twoDrifts());
  EXPECT_EQ(YardFile::open(file.path()).yard(), twoDrifts());
}

TEST(YardFile, AnEmptyEditIsNoEdit) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  file.commit({"Nothing", {}});
  EXPECT_EQ(file.revision(), 0);
  EXPECT_THAT(file.history(), IsEmpty());
}

TEST(YardFile, HistoryTellsWhenInUniversalTime) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", twoDrifts());
  file.commit(renameTo(file.yard(), "Hill"));
  EXPECT_THAT(file.history().front().time, testing::MatchesRegex("20..-..-..T..:..:..Z"));
}

}  // namespace
}  // namespace tussock
