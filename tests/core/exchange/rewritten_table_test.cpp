// SPDX-License-Identifier: MIT
// A table of one's own plants written anew loses nothing that it holds beside them.
#include "core/exchange/rewritten_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

using testing::IsEmpty;

OwnPlantsReading readMine(std::string_view csv) {
  return readOwnPlants(csv, "mine.csv", test::tinyCatalogue());
}

// What cannot be used may be all there is of someone's work: it stays as it was typed.
TEST(RewrittenTable, RowsAtFaultStayByteForByteWhenTheRestIsWritten) {
  const std::string before = "notes,botanical_name,spacing_cm\r\nold,Monarda fistulosa,60\r\n" +
                             std::string("left,Ratibida pinnata,wide \n\n") +
                             "a,\"Acer nowhere\",\"1,200\"";
  const OwnPlantsReading reading = readMine(before);
  ASSERT_TRUE(reading.canBeRewritten) << reading.errors.size();
  ASSERT_EQ(reading.plants.size(), 1u);
  std::vector<OwnSpecies> plants = reading.plants;
  plants.front().facts = {{"spacing_cm", "75"}};
  EXPECT_EQ(rewrittenTable(plants, before, reading),
            "notes,botanical_name,spacing_cm\r\n,Monarda fistulosa,75\r\n"
            "left,Ratibida pinnata,wide \n\na,\"Acer nowhere\",\"1,200\"");
  const OwnPlantsReading again = readMine(rewrittenTable(plants, before, reading));
  EXPECT_EQ(again.plants, plants);
  EXPECT_EQ(again.errors.size(), reading.errors.size());
}

TEST(RewrittenTable, ARowAtFaultGetsACellForAColumnThatComes) {
  const std::string before =
      "botanical_name,spacing_cm\nRatibida pinnata,wide\nAcer nowhere,1,2\n\"open,3\n";
  const OwnPlantsReading reading = readMine(before);
  ASSERT_TRUE(reading.canBeRewritten);
  const std::vector<OwnSpecies> plants{{{}, "Monarda fistulosa", {{"notes", "here"}}}};
  EXPECT_EQ(rewrittenTable(plants, before, reading),
            "botanical_name,spacing_cm,notes\r\nMonarda fistulosa,,here\r\n"
            "Ratibida pinnata,wide,\nAcer nowhere,1,2\n\"open,3\n")
      << "a row that is out of step stays so";
}

TEST(RewrittenTable, OneWhoseRowsCannotBeReadIsNone) {
  EXPECT_TRUE(readMine("botanical_name,colour\nMonarda fistulosa,red\n").canBeRewritten);
  EXPECT_FALSE(readMine("").canBeRewritten);
  EXPECT_FALSE(readMine("spacing_cm\n60\n").canBeRewritten);
  EXPECT_THAT(readMine("botanical_name;notes\nMonarda fistulosa;a\n").rowsLeft, IsEmpty());
}

// Columns that are not of the plant table, one without a name and one that comes twice among them.
TEST(RewrittenTable, ColumnsThatAreNotKnownStayWithTheirPlants) {
  const std::string before =
      "where bought,botanical_name,spacing_cm,,spacing_cm\n"
      "\"fair, May\",Monarda fistulosa,60,x,61\n,Zizia aurea,50,,\nbin,Liatris spicata,wide,,\n";
  const OwnPlantsReading reading = readMine(before);
  ASSERT_TRUE(reading.canBeRewritten);
  std::vector<OwnSpecies> plants = reading.plants;
  ASSERT_EQ(plants.size(), 2u);
  plants.front().facts = {{"notes", "here"}, {"spacing_cm", "75"}};
  EXPECT_EQ(rewrittenTable(plants, before, reading),
            "where bought,botanical_name,spacing_cm,,spacing_cm,notes\r\n"
            "\"fair, May\",Monarda fistulosa,75,x,61,here\r\n,Zizia aurea,50,,,\r\n"
            "bin,Liatris spicata,wide,,,\n");
}

TEST(RewrittenTable, ARowWithNothingElseStaysUntilItsPlantComes) {
  const std::string before = "botanical_name,shelf,spacing_cm\nZizia aurea,3,\n";
  const OwnPlantsReading reading = readMine(before);
  ASSERT_TRUE(reading.plants.empty());
  const std::vector<OwnSpecies> other{{{}, "Monarda fistulosa", {{"spacing_cm", "66"}}}};
  EXPECT_EQ(rewrittenTable(other, before, reading),
            "botanical_name,shelf,spacing_cm\r\nMonarda fistulosa,,66\r\nZizia aurea,3,\n");
  const std::vector<OwnSpecies> same{{{}, "Zizia aurea", {{"spacing_cm", "66"}}}};
  EXPECT_EQ(rewrittenTable(same, before, reading),
            "botanical_name,shelf,spacing_cm\r\nZizia aurea,3,66\r\n");
}

TEST(RewrittenTable, APlantThatGoesTakesItsCellsWithIt) {
  const std::string before =
      "botanical_name,shelf,spacing_cm\nMonarda fistulosa,3,66\nZizia aurea,,50\n";
  const OwnPlantsReading reading = readMine(before);
  ASSERT_EQ(reading.plants.size(), 2u);
  EXPECT_TRUE(losesOtherCells({reading.plants.back()}, before, reading));
  EXPECT_FALSE(losesOtherCells({reading.plants.front()}, before, reading));
}

}  // namespace
}  // namespace tussock
