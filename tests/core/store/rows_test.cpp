// SPDX-License-Identifier: MIT
#include "core/store/rows.h"

#include <gtest/gtest.h>

#include "core/exchange/change_json.h"
#include "core/store/schema.h"
#include "tests/support/small_yards.h"

namespace tussock {
namespace {

class StoredRows : public testing::Test {
 protected:
  StoredRows() {
    database_.exec(schemaSql());
    insertSettings(database_, Settings{});
    writeRows(database_, difference(Yard{}, yard_, {}));
    first_ = *yard_.drifts.begin();
  }
  // How many rows the edit writes.
  int written(const Drift& drift) {
    Draft draft(yard_);
    draft.put(drift);
    const int before = database_.getTotalChanges();
    writeRows(database_, draft.finish("Edit"));
    EXPECT_EQ(readYard(database_), draft.yard());
    return database_.getTotalChanges() - before;
  }

  const Yard yard_ = test::twoDrifts();
  SQLite::Database database_{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
  Drift first_;
};

TEST_F(StoredRows, AreThoseOfTheYard) {
  EXPECT_EQ(readYard(database_), yard_);
}

TEST_F(StoredRows, OfOnePlantMovedAreItsOwnAndItsDrifts) {
  first_.plants[1].at = {3, 3};
  EXPECT_EQ(written(first_), 2);
}

TEST_F(StoredRows, OfOnePlantAddedAreItsOwnAndItsDrifts) {
  first_.plants.push_back({Id<Plant>(99), {3, 3}});
  EXPECT_EQ(written(first_), 2);
}

TEST_F(StoredRows, OfTheLastPlantRemovedAreItsOwnAndItsDrifts) {
  first_.plants.pop_back();
  EXPECT_EQ(written(first_), 2);
}

TEST_F(StoredRows, OfANewSpacingAreTheDriftsAlone) {
  first_.spacing = Length::metres(0.5);
  EXPECT_EQ(written(first_), 1);
}

TEST_F(StoredRows, ThatAreMissingAreNotPassedOver) {
  database_.exec("DELETE FROM plant WHERE id = " + std::to_string(first_.plants[1].id.value()));
  first_.plants[1].at = {3, 3};
  Draft draft(yard_);
  draft.put(first_);
  EXPECT_THROW(writeRows(database_, draft.finish("Edit")), FormatError);
}

}  // namespace
}  // namespace tussock
