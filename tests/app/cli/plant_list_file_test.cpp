// SPDX-License-Identifier: MIT
// Plant lists as people save them: typed, or as spreadsheets write them (RFC 4180, with the
// semicolons and tabs that they put there in many countries).
#include "app/cli/plant_list_file.h"

#include <stdexcept>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/app/cli/cli_fixture.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

class PlantListFiles : public test::CliTest {
 protected:
  [[nodiscard]] std::vector<ListedSpecies> listOf(const std::string& text) const {
    write("list.csv", text);
    return readPlantList(path("list.csv"), facts()).plants;
  }
  [[nodiscard]] std::string faultOf(const std::string& text) const {
    try {
      (void)listOf(text);
    } catch (const std::runtime_error& error) {
      return error.what();
    }
    return {};
  }
  static const Catalogue& facts() {
    static const Catalogue catalogue = readShippedCatalogue().catalogue;
    return catalogue;
  }
  const std::vector<ListedSpecies> both_{{"Monarda fistulosa", 0.4}, {"Zizia aurea", 0.0}};
};

TEST_F(PlantListFiles, AByteOrderMarkIsPassedOver) {
  EXPECT_EQ(listOf("\xEF\xBB\xBFMonarda fistulosa, 40 %\nZizia aurea\n"), both_);
}

TEST_F(PlantListFiles, Utf16IsRefusedWithWhatToDo) {
  const std::string wide("\xFF\xFEM\0o\0n\0", 8);
  EXPECT_THAT(faultOf(wide), AllOf(HasSubstr("UTF-16"), HasSubstr("Save it as UTF-8.")));
  const std::string unmarked("M\0o\0n\0", 6);
  EXPECT_THAT(faultOf(unmarked), HasSubstr("Save it as UTF-8."));
}

TEST_F(PlantListFiles, WhatASpreadsheetSavesIsTaken) {
  for (const char* text : {
           "Monarda fistulosa;40 %\nZizia aurea;\n",
           "Monarda fistulosa\t40 %\r\nZizia aurea\t\r\n",
           "\"Monarda fistulosa\",\"40 %\"\n\"Zizia aurea\",\n",
           "\"Monarda fistulosa, 40 %\"\nZizia aurea\n",
           "Species,Share\nMonarda fistulosa,40%\nZizia aurea,\n",
           "\"Botanical name\";\"Share (%)\"\n\"Monarda fistulosa\";\"40,0\"\n\"Zizia "
           "aurea\";\"\"\n",
           "share\tspecies\n40 %\tMonarda fistulosa\n\tZizia aurea\n",
           "common_name,botanical_name,percent\nbergamot,Monarda fistulosa,40\ngolden "
           "alexanders,,\n,,\n",
           "# for the walk\nspecies\nMonarda fistulosa\t, 40 %  # by the gate\nZizia aurea\n",
           "Monarda fistulosa, 40\rZizia aurea\r",
       })
    EXPECT_EQ(listOf(text), both_) << text << faultOf(text);
}

TEST_F(PlantListFiles, ADecimalCommaIsReadWhereItCanBeNothingElse) {
  EXPECT_DOUBLE_EQ(listOf("Monarda fistulosa;12,5 %\n").front().share, 0.125);
  EXPECT_DOUBLE_EQ(listOf("Monarda fistulosa,\"12,5 %\"\n").front().share, 0.125);
}

// 0.3 is what a spreadsheet has for 30 %; here bare numbers are per cent.
TEST_F(PlantListFiles, ANumberThatMayMeanTwoSharesIsRefused) {
  EXPECT_THAT(faultOf("Zizia aurea\nMonarda fistulosa, 0.3\n"),
              AllOf(HasSubstr("line 2: '0.3'"), HasSubstr("Write '30 %' or '0.3 %'.")));
  EXPECT_THAT(faultOf("Monarda fistulosa, 1\n"), HasSubstr("Write '100 %' or '1 %'."));
  EXPECT_THAT(faultOf("Carex pensylvanica, matrix 0.4\n"),
              HasSubstr("Write 'matrix 40 %' or 'matrix 0.4 %'."));
  EXPECT_DOUBLE_EQ(listOf("Monarda fistulosa, 0.3 %\n").front().share, 0.003);
  EXPECT_DOUBLE_EQ(listOf("Monarda fistulosa, 1.5\n").front().share, 0.015);
}

TEST_F(PlantListFiles, WhatIsNoListIsToldOfItsLine) {
  EXPECT_THAT(faultOf("Monarda \"fistulosa, 40 %\nZizia aurea\n"),
              AllOf(HasSubstr("line 1"), HasSubstr("quotation mark"), Not(HasSubstr("line 2"))));
  EXPECT_THAT(faultOf("code,species\nMF,Monarda fistulosa\n"), HasSubstr("line 1: 'code'"));
  EXPECT_THAT(faultOf("Zizia aurea\nspecies,share\n"), HasSubstr("line 2: 'species'"));
  EXPECT_THAT(faultOf("Zizia aurea,20 %,5\n"), HasSubstr("line 1: '20 %, 5', which is no share"));
  EXPECT_THAT(faultOf("species,share\n"), HasSubstr("names no species"));
}

}  // namespace
}  // namespace tussock
