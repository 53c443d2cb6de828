// SPDX-License-Identifier: MIT
#include "core/store/yard_file.h"

#include <gmock/gmock.h>

#include "core/edit/draft.h"
#include "tests/support/random_yard.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::Optional;

Yard twoDrifts() {
  return test::YardBuilder()
      .bed("Front", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))")
      .drift("Echinacea purpurea", test::row(5, 0.4, {1, 1}))
      .drift("Carex vulpinoidea", test::row(7, 0.3, {1, 2}))
      .build();
}

ChangeSet renameTo(const Yard& yard, const std::string& name) {
  Draft draft(yard);
  Settings settings = yard.settings;
  settings.name = name;
  draft.put(settings);
  return draft.finish("Rename to " + name);
}

TEST(YardFile, HoldsTheYardItWasMadeWith) {
  const test::TemporaryFolder folder;
  const Yard yard = twoDrifts();
  EXPECT_EQ(YardFile::create(folder / "a.yard", yard).yard(), yard);
  const YardFile file = YardFile::open(folder / "a.yard");
  EXPECT_EQ(file.yard(), yard);
  EXPECT_EQ(file.revision(), 0);
  EXPECT_THAT(file.verify(), IsEmpty());
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

// Rows written one by one must come to the same as the yard in memory, whatever the edit.
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
      EXPECT_EQ(YardFile::open(file.path()).yard(), yards[i]);
    }
    EXPECT_THAT(file.verify(), IsEmpty());
  }
}

}  // namespace
}  // namespace tussock
