// SPDX-License-Identifier: MIT
// A plan code that was issued stays issued through undo and redo: a plan that was printed with it
// must not come to name another plant.
#include "core/store/history_step.h"

#include <gmock/gmock.h>

#include "core/catalog/plan_codes.h"
#include "core/store/yard_file.h"
#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

using testing::IsEmpty;

// Genus and first letters of the epithet are the same.
constexpr auto kFirst = "Carex pensylvanica", kSecond = "Carex pendula";

class CodesInHistory : public testing::Test {
 protected:
  CodesInHistory() { (void)YardFile::create(path_, test::twoDrifts()); }
  [[nodiscard]] YardFile opened() const { return YardFile::open(path_); }
  static void plant(YardFile& file, const std::vector<std::string>& species) {
    Draft draft(file.yard());
    for (const std::string& name : species) {
      Drift drift;
      drift.id = file.ids().take<Drift>();
      drift.bed = file.yard().beds.begin()->id;
      drift.species = name;
      drift.plants = {{file.ids().take<Plant>(), {1.0, 1.0}}};
      draft.put(drift);
      takeCode(draft, name, file.ids());
    }
    file.commit(draft.finish("Plant"));
  }

  test::TemporaryFolder folder_;
  std::filesystem::path path_ = folder_ / "a.yard";
};

TEST_F(CodesInHistory, UndoTakesBackThePlantsAndNotTheCodes) {
  YardFile file = opened();
  const Yard before = file.yard();
  plant(file, {kFirst, kSecond});
  ASSERT_EQ(codeOf(file.yard(), kSecond), "CARPE2");
  file.undo();
  EXPECT_EQ(file.yard().drifts, before.drifts);
  EXPECT_EQ(codeOf(file.yard(), kFirst), "CARPEN");
  EXPECT_EQ(codeOf(file.yard(), kSecond), "CARPE2");
  EXPECT_THAT(file.verify(), IsEmpty());
}

TEST_F(CodesInHistory, WhatIsPlantedAfterAnUndoHasTheCodeItHad) {
  {
    YardFile file = opened();
    plant(file, {kFirst, kSecond});
    file.undo();
  }
  YardFile file = opened();
  plant(file, {kSecond});
  EXPECT_EQ(codeOf(file.yard(), kSecond), "CARPE2");
  EXPECT_EQ(file.redo(), std::nullopt);
  EXPECT_THAT(file.verify(), IsEmpty());
  plant(file, {kFirst});
  EXPECT_EQ(codeOf(file.yard(), kFirst), "CARPEN");
}

TEST_F(CodesInHistory, UndoAndRedoLeadBackAsOftenAsOneLikes) {
  YardFile file = opened();
  plant(file, {kFirst});
  plant(file, {kSecond});
  const Yard planted = file.yard();
  for (int round = 0; round < 3; ++round) {
    file.undo(), file.undo();
    EXPECT_THAT(opened().verify(), IsEmpty());
    file.redo(), file.redo();
    EXPECT_EQ(file.yard(), planted);
    EXPECT_THAT(opened().verify(), IsEmpty());
  }
  EXPECT_EQ(opened().yard(), planted);
}

TEST_F(CodesInHistory, ForgettingTheHistoryKeepsThem) {
  YardFile file = opened();
  plant(file, {kFirst, kSecond});
  file.undo();
  file.forgetHistory();
  EXPECT_EQ(codeOf(opened().yard(), kSecond), "CARPE2");
  plant(file, {kSecond});
  EXPECT_EQ(codeOf(opened().yard(), kSecond), "CARPE2");
}

// Releases before took the codes back; such a file is sound, and redo brings them again.
TEST_F(CodesInHistory, AFileThatTookThemBackIsSound) {
  Yard planted;
  {
    YardFile file = opened();
    plant(file, {kFirst, kSecond});
    planted = file.yard();
    file.undo();
  }
  test::runSql(path_, "DELETE FROM plan_code");
  YardFile file = opened();
  EXPECT_THAT(file.verify(), IsEmpty());
  file.redo();
  EXPECT_EQ(file.yard(), planted);
}

TEST(HistoryStep, AnythingElseIsTakenBackWhole) {
  const Yard before = test::twoDrifts();
  const ChangeSet edit = test::renameTo(before, "Hill");
  const Yard after = apply(before, edit);
  EXPECT_EQ(takenBack(after, edit), before);
  EXPECT_EQ(doneAgain(before, edit), after);
  EXPECT_THROW((void)takenBack(before, edit), EditConflict);
}

}  // namespace
}  // namespace tussock
