// SPDX-License-Identifier: MIT
// The plants on the command line: searched, ranked for a bed or a point, and the user's own among
// them, as in the window.
#include <filesystem>
#include <fstream>
#include <QDir>
#include <QFileInfo>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "app/document/personal_plants.h"
#include "core/catalog/own_plants.h"
#include "core/catalog/resources.h"
#include "core/store/yard_file.h"
#include "tests/app/cli/cli_fixture.h"
#include "tests/app/data_folder.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::Outcome;
using test::run;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

class PlantsCommand : public test::CliTest {
 protected:
  PlantsCommand() {
    test::YardBuilder builder;
    builder.bed("Walk", "POLYGON ((0 0, 6 0, 6 2.5, 0 2.5, 0 0))").viewing("S");
    (void)YardFile::create(file(), builder.build());
  }
  [[nodiscard]] std::string file() const { return path("one.yard"); }
  [[nodiscard]] Yard yard() const {
    return YardFile::open(file(), YardFile::Access::ReadOnly).yard();
  }
  static nlohmann::json plants(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "plants");
    arguments.emplace_back("--json");
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
    return nlohmann::json::parse(outcome.out).at("plants");
  }
  void keepPersonal(const std::string& csv) const {
    const QString at = personalPlantsPath();
    QDir().mkpath(QFileInfo(at).path());
    std::ofstream(at.toStdString(), std::ios::binary) << csv;
  }

 private:
  test::DataFolder dataFolder_;
};

constexpr auto kOwnPlant =
    "botanical_name,family,common_name,layer_form,height_min_cm,height_max_cm,spread_cm,"
    "spacing_cm,sun,moisture\n"
    "Rosa gardeniana,Rosaceae,gate rose,shrub,90,120,80,80,full,medium\n";

TEST_F(PlantsCommand, EveryWordSearchedForMustBeMet) {
  const auto found = plants({"--search", "tall dry fall"});
  EXPECT_GT(found.size(), 2u);
  EXPECT_LT(found.size(), 60u);
  EXPECT_EQ(plants({"--search", "Aster novae-angliae"}).front().at("botanical_name"),
            "Symphyotrichum novae-angliae")
      << "by its synonym";
  EXPECT_TRUE(plants({"--search", "zzzz"}).empty());
}

// Rushes (Juncaceae) and sedges (Cyperaceae) are two families (USDA PLANTS).
TEST_F(PlantsCommand, ARushIsNoSedge) {
  for (const auto& one : plants({"--search", "sedge"}))
    EXPECT_THAT(one.at("botanical_name").get<std::string>(), StartsWith("Carex"));
  EXPECT_EQ(plants({"--search", "rush"}).front().at("botanical_name"), "Juncus effusus");
}

TEST_F(PlantsCommand, RanksForABedAndSaysWhyNot) {
  const auto fits = plants({file(), "--bed", "Walk"});
  ASSERT_GT(fits.size(), 10u);
  for (std::size_t i = 1; i < fits.size(); ++i)
    EXPECT_GE(fits[i - 1].at("points").get<double>(), fits[i].at("points").get<double>());
  EXPECT_FALSE(fits.front().at("reasons").empty());
  const auto leftOut = plants({file(), "--bed", "Walk", "--left-out"});
  EXPECT_FALSE(leftOut.front().at("why_not").empty());
  EXPECT_EQ(plants({file(), "--bed", "Walk", "--all"}).size(), fits.size() + leftOut.size());
  EXPECT_EQ(plants({file(), "--bed", "Walk", "--count", "3"}).size(), 3u);
  EXPECT_FALSE(plants({file(), "--at", "1", "-1"}).empty());
}

TEST_F(PlantsCommand, SaysWhatIsListedOfHowMany) {
  const auto told = [&](std::vector<std::string> more) {
    more.insert(more.begin(), {"plants", file(), "--bed", "Walk", "--count", "2"});
    return run(more).err;
  };
  EXPECT_THAT(told({}), HasSubstr(" species suit the place (the first 2 are shown)."));
  EXPECT_THAT(told({"--left-out"}),
              HasSubstr(" species do not suit the place; each is listed with what speaks against "
                        "it (the first 2 are shown)."));
  EXPECT_THAT(told({"--all"}), HasSubstr("those that suit the place, then, after \"not\", those"));
  EXPECT_THAT(run({"plants", file(), "--bed", "Walk", "--left-out"}).out, StartsWith("not  "));
  const std::string help = run({"plants", "--help"}).out;
  EXPECT_THAT(help, HasSubstr("list only the species that do not suit"));
}

TEST_F(PlantsCommand, SaysThatAPointIsOutsideOfTheSunMap) {
  const Outcome far = run({"plants", file(), "--at", "5000", "-3000", "--count", "1"});
  EXPECT_EQ(far.code, ExitCode::Done);
  EXPECT_THAT(far.err, HasSubstr("5000, -3000 lies outside of what the sun map knows"));
  EXPECT_THAT(run({"plants", file(), "--at", "1", "-1", "--count", "1"}).err,
              Not(HasSubstr("outside")));
}

TEST_F(PlantsCommand, WordsWithoutAnOptionAreTakenForASearchMeant) {
  for (const std::vector<std::string>& arguments :
       {std::vector<std::string>{"plants", file(), "tall", "dry", "fall"},
        {"plants", "tall", "dry", "fall"}}) {
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Usage);
    EXPECT_THAT(outcome.err, HasSubstr("--search 'tall dry fall'"));
  }
  const Outcome unknown = run({"plants", file(), "--tall"});
  EXPECT_EQ(unknown.code, ExitCode::Usage);
  EXPECT_THAT(unknown.err, AllOf(HasSubstr("--tall"), Not(HasSubstr("--search"))));
}

TEST_F(PlantsCommand, WhereDeerAreAboutWhatTheyEatIsLeftOut) {
  const std::string yard = path("deer.yard");
  ASSERT_EQ(run({"new", yard, "--lat", "38.4", "--lon", "-86.9", "--deer"}).code, ExitCode::Done);
  bool eaten = false;
  for (const auto& one : plants({yard, "--at", "0", "0", "--left-out"}))
    for (const auto& why : one.at("why_not")) eaten = eaten || why == "deer eat it";
  EXPECT_TRUE(eaten);
}

TEST_F(PlantsCommand, AsksForWhatItNeeds) {
  EXPECT_EQ(run({"plants", "--bed", "Walk"}).code, ExitCode::Usage);
  EXPECT_EQ(run({"plants", file(), "--bed", "Nowhere"}).code, ExitCode::Usage);
  EXPECT_EQ(run({"plants", file(), "--left-out"}).code, ExitCode::Usage);
  EXPECT_THAT(run({"plants", file(), "--all"}).err, HasSubstr("--all needs a place"));
  EXPECT_EQ(run({"plants", file(), "--at", "nan", "3"}).code, ExitCode::Usage);
  EXPECT_THAT(run({"plants", "--bring-in", path(".")}).err, HasSubstr("is a folder"));
}

TEST_F(PlantsCommand, TheUsersOwnPlantsAreSearchedAndRanked) {
  keepPersonal(kOwnPlant);
  EXPECT_EQ(plants({"--search", "gate rose"}).front().at("botanical_name"), "Rosa gardeniana");
  EXPECT_EQ(plants({file(), "--bed", "Walk", "--search", "gardeniana"}).size(), 1u);
}

TEST_F(PlantsCommand, APersonalPlantFilledInIsCarriedByTheYard) {
  keepPersonal(kOwnPlant);
  write("list.txt", "gate rose\n");
  const Outcome filled =
      run({"fill", file(), "--bed", "Walk", "--plants", path("list.txt"), "--time", "5"});
  EXPECT_EQ(filled.code, ExitCode::Done) << filled.err;
  const Yard kept = yard();
  ASSERT_NE(findOwn(kept, "Rosa gardeniana"), nullptr);
  keepPersonal("botanical_name\n");  // a machine without it
  EXPECT_EQ(plants({file(), "--search", "gate rose"}).size(), 1u);
  EXPECT_THAT(run({"check", file()}).out, Not(HasSubstr("not in the plant facts")));
}

TEST_F(PlantsCommand, APersonalValueGoesBeforeThePublishedOneInEveryCommand) {
  keepPersonal("botanical_name,spacing_cm\nMonarda fistulosa,120\n");
  write("list.txt", "Monarda fistulosa\n");
  ASSERT_EQ(
      run({"fill", file(), "--bed", "Walk", "--plants", path("list.txt"), "--time", "5"}).code,
      ExitCode::Done);
  for (const Drift& drift : yard().drifts) EXPECT_NEAR(drift.spacing.metres(), 1.2, 1e-9);
}

TEST_F(PlantsCommand, WhatIsWrongWithThePersonalFileIsToldAndTheRestIsUsed) {
  keepPersonal("botanical_name,spacing_cm\nMonarda fistulosa,wide\nEchinacea purpurea,66\n");
  const Outcome outcome = run({"plants", "--search", "echinacea"});
  EXPECT_EQ(outcome.code, ExitCode::Done);
  EXPECT_THAT(outcome.err, AllOf(HasSubstr("line 2, spacing_cm"), Not(HasSubstr("line 3"))));
}

TEST_F(PlantsCommand, ANameThatTwoPlantsShareIsAskedAbout) {
  keepPersonal(
      "botanical_name,family,common_name,layer_form,height_min_cm,height_max_cm,spread_cm,"
      "spacing_cm,sun,moisture\n"
      "Monarda gardeniana,Lamiaceae,wild bergamot,forb,90,120,80,80,full,medium\n");
  write("list.txt", "Wild Bergamot\n");
  const Outcome outcome =
      run({"fill", file(), "--bed", "Walk", "--plants", path("list.txt"), "--time", "5"});
  EXPECT_EQ(outcome.code, ExitCode::File);
  EXPECT_THAT(outcome.err, AllOf(HasSubstr("line 1"), HasSubstr("Monarda fistulosa"),
                                 HasSubstr("Monarda gardeniana")));
}

TEST_F(PlantsCommand, BringsInATableTellsEachBadRowAndLosesNothing) {
  write("more.csv",
        "\xEF\xBB\xBF"
        "botanical_name,spacing_cm,notes\r\nMonarda fistulosa,75,\"=1+1\"\r\n"
        "Echinacea purpurea,\"1,200\",\r\nAster laevis,-5,\r\nMonarda fistulosa,60,\r\n");
  const Outcome outcome = run({"plants", "--bring-in", path("more.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Findings);
  EXPECT_THAT(outcome.err, AllOf(HasSubstr("line 3, spacing_cm: '1,200'"), HasSubstr("line 4"),
                                 HasSubstr("line 5, botanical_name")));
  EXPECT_EQ(run({"plants", "--write-own", path("own.csv")}).code, ExitCode::Done);
  EXPECT_EQ(readFile(path("own.csv")),
            "botanical_name,spacing_cm,notes\r\nMonarda fistulosa,75,'=1+1\r\n");
  EXPECT_EQ(run({"plants", "--bring-in", path("none.csv")}).code, ExitCode::File);
}

// Monarda didyma is scarlet bee balm (Master Gardeners of Northern Virginia), Monarda fistulosa is
// bee balm beside wild bergamot (see resources/plants-sources.md).
TEST_F(PlantsCommand, FactsOfANameThatSeveralGoByAskWhichIsMeant) {
  const Outcome outcome = run({"plants", "--facts", "bee balm"});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, AllOf(HasSubstr("may mean Monarda bradburiana (eastern beebalm), "),
                                 HasSubstr("Monarda didyma (scarlet beebalm)"),
                                 HasSubstr("Monarda fistulosa (wild bergamot)")));
}

// A genus is not the one species that has it for its Spanish name.
TEST_F(PlantsCommand, FactsOfAGenusAskWhichOfItsSpeciesIsMeant) {
  for (const char* typed : {"Coreopsis", "coreopsis"}) {
    const Outcome outcome = run({"plants", "--facts", typed});
    EXPECT_EQ(outcome.code, ExitCode::Usage) << typed;
    EXPECT_THAT(outcome.err,
                AllOf(HasSubstr("Coreopsis lanceolata"), HasSubstr("Coreopsis tripteris"),
                      HasSubstr("Coreopsis verticillata"), HasSubstr("Write the botanical name")));
  }
  EXPECT_THAT(run({"plants", "--facts", "phlox"}).err, HasSubstr("may mean Phlox divaricata"));
  EXPECT_THAT(run({"plants", "--facts", "Tiarella"}).out, HasSubstr("Tiarella cordifolia"));
}

TEST_F(PlantsCommand, FactsOfANameThatIsPartOfAnothersSayWhoseItIs) {
  const Outcome outcome = run({"plants", "--facts", "purple coneflower"});
  EXPECT_EQ(outcome.code, ExitCode::Done);
  EXPECT_THAT(outcome.out, HasSubstr("Echinacea purpurea"));
  EXPECT_THAT(outcome.err, AllOf(HasSubstr("Others that 'purple coneflower' may mean"),
                                 HasSubstr("Echinacea pallida (pale purple coneflower)"),
                                 Not(HasSubstr("Echinacea purpurea"))));
  EXPECT_EQ(run({"plants", "--facts", "Monarda fistulosa"}).err, "");
}

TEST_F(PlantsCommand, APartOfARowChangesOnesOwnPlantAndKeepsItsSources) {
  keepPersonal(kOwnPlant);
  std::ofstream(path("part.csv"), std::ios::binary)
      << "botanical_name,spacing_cm,sources\nRosa gardeniana,70,FNA: spacing_cm\n";
  const Outcome outcome = run({"plants", "--bring-in", path("part.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  const Outcome sheet = run({"plants", "--facts", "Rosa gardeniana"});
  EXPECT_THAT(sheet.out, testing::ContainsRegex("spacing_cm +70 .*your own.*\\[FNA\\]"));
  EXPECT_THAT(sheet.out, testing::ContainsRegex("spread_cm +80 "));
  EXPECT_THAT(sheet.out, testing::ContainsRegex("FNA +Flora of North America"));
}

TEST_F(PlantsCommand, ATableThatGivesNothingCannotBeUsed) {
  write("head.csv", "botanical_name,spacing_cm\n");
  const Outcome outcome = run({"plants", "--bring-in", path("head.csv")});
  EXPECT_EQ(outcome.code, ExitCode::File) << "as docs/command-line.md says";
  EXPECT_THAT(outcome.err, HasSubstr("has no rows"));
  write("name.csv", "botanical_name,spacing_cm\nMonarda fistulosa,\n");
  EXPECT_THAT(run({"plants", "--bring-in", path("name.csv")}).err,
              HasSubstr("rows that say nothing new: 1."));
}

// What is not in the table brought in stays, and what gives way is told and kept.
TEST_F(PlantsCommand, BringingInOverwritesNothingSilently) {
  keepPersonal("botanical_name,spacing_cm,notes\nMonarda fistulosa,75,by the gate\n");
  write("more.csv", "botanical_name,spacing_cm\nMonarda fistulosa,80\n");
  const Outcome outcome = run({"plants", "--bring-in", path("more.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Done);
  const std::string kept = personalPlantsPath().toStdString() + ".kept";
  EXPECT_THAT(outcome.err, AllOf(HasSubstr("give way for Monarda fistulosa"), HasSubstr(kept)));
  EXPECT_THAT(readFile(kept), HasSubstr("75"));
  EXPECT_EQ(readFile(personalPlantsPath().toStdString()),
            "botanical_name,spacing_cm,notes\r\nMonarda fistulosa,80,by the gate\r\n");
  EXPECT_THAT(run({"plants", "--bring-in", path("more.csv")}).err, Not(HasSubstr("give way")))
      << "the same again";
}

// The table of one's own is no place to write another table: what cannot be used in it would go.
TEST_F(PlantsCommand, NoCommandWritesOverTheTableOfOnesOwn) {
  const std::string mine = "botanical_name,spacing_cm\nMonarda fistulosa,wide\n";
  keepPersonal(mine);
  const std::string at = personalPlantsPath().toStdString(), link = path("link.csv");
  std::filesystem::create_symlink(at, link);
  for (const auto& arguments : {std::vector<std::string>{"plants", "--write-own", at},
                                {"plants", "--write-all", at},
                                {"plants", "--write-own", link},
                                {"export", file(), at},
                                {"sun", file(), "--out", at}}) {
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Usage) << testing::PrintToString(arguments);
    EXPECT_THAT(outcome.err, HasSubstr("your own plants are kept in. Name another file"));
  }
  EXPECT_EQ(readFile(at), mine);
}

TEST_F(PlantsCommand, AColumnThatIsNotKnownStaysInTheTableOfOnesOwn) {
  keepPersonal(
      "botanical_name,spacing_cm,where bought\nMonarda fistulosa,wide,here\n"
      "Echinacea purpurea,66,there\n");
  write("more.csv", "botanical_name,spacing_cm\nZizia aurea,44\n");
  const Outcome outcome = run({"plants", "--bring-in", path("more.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  EXPECT_EQ(readFile(personalPlantsPath().toStdString()),
            "botanical_name,spacing_cm,where bought\r\nEchinacea purpurea,66,there\r\n"
            "Zizia aurea,44,\r\nMonarda fistulosa,wide,here\n");
}

TEST_F(PlantsCommand, BringsNothingIntoAFileThatItCannotReadWhole) {
  const std::string mine =
      "name,spacing_cm,where bought\nMonarda fistulosa,wide,here\n"
      "\"Echinacea purpurea,66,there\n";
  keepPersonal(mine);
  write("more.csv", "botanical_name,spacing_cm\nMonarda fistulosa,80\n");
  const Outcome outcome = run({"plants", "--bring-in", path("more.csv")});
  EXPECT_EQ(outcome.code, ExitCode::File);
  EXPECT_THAT(outcome.err,
              AllOf(HasSubstr("Nothing was changed"), HasSubstr("line 1, botanical_name"),
                    Not(HasSubstr("line 2")), Not(HasSubstr("line 3")),
                    HasSubstr(personalPlantsPath().toStdString())));
  EXPECT_EQ(readFile(personalPlantsPath().toStdString()), mine);
}

// Nothing else is lost: other rows at fault stay, and the table of before is kept beside.
TEST_F(PlantsCommand, ARightRowComesInPlaceOfOneThatCannotBeUsed) {
  const std::string mine =
      "botanical_name,spacing_cm,notes\nMonarda fistulosa,wide,here\n"
      "Aster laevis,-5,there\nEchinacea purpurea,66,\nmonarda fistulosa,1,2,3\n";
  keepPersonal(mine);
  write("more.csv", "botanical_name,spacing_cm\nMonarda fistulosa,80\n");
  const Outcome outcome = run({"plants", "--bring-in", path("more.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  const std::string at = personalPlantsPath().toStdString();
  EXPECT_THAT(outcome.err, HasSubstr("2 rows of your table that could not be used give way to what "
                                     "is brought in, and are kept in " +
                                     at + ".kept: line 2, 5"));
  EXPECT_EQ(readFile(at + ".kept"), mine);
  EXPECT_EQ(readFile(at),
            "botanical_name,spacing_cm,notes\r\nEchinacea purpurea,66,\r\n"
            "Monarda fistulosa,80,\r\nAster laevis,-5,there\n");
  const Outcome after = run({"plants", "--search", "monarda"});
  EXPECT_THAT(after.err, AllOf(Not(HasSubstr("wide")), HasSubstr("'-5'")));
}

TEST_F(PlantsCommand, WritesAllPlantsAsTheyHold) {
  keepPersonal(kOwnPlant);
  ASSERT_EQ(run({"plants", "--write-all", path("all.csv")}).code, ExitCode::Done);
  const auto back = readCatalogue(readFile(path("all.csv")), "all.csv");
  EXPECT_TRUE(back.errors.empty());
  EXPECT_EQ(back.catalogue.species().size(), readShippedCatalogue().catalogue.species().size() + 1);
}

// No rose is published here.
TEST_F(PlantsCommand, FactsSayThatAFamilyOfAnUnknownGenusWasNotChecked) {
  keepPersonal(kOwnPlant);
  EXPECT_THAT(run({"plants", "--facts", "Rosa gardeniana"}).out,
              HasSubstr("; not checked: the genus is not known here"));
  EXPECT_THAT(run({"plants", "--facts", "Monarda fistulosa"}).out, Not(HasSubstr("not checked")));
}

TEST_F(PlantsCommand, FactsDoNotCallAValueYoursThatOnlyFollowsFromYours) {
  ASSERT_GT(readShippedCatalogue().catalogue.find("Monarda didyma")->foliageHigh->metres(), 1.0);
  keepPersonal("botanical_name,height_max_cm\nMonarda didyma,100\n");
  const Outcome sheet = run({"plants", "--facts", "Monarda didyma"});
  EXPECT_THAT(sheet.out, testing::ContainsRegex("[^_]height_max_cm +100 +\\(your own\\)"));
  EXPECT_THAT(sheet.out,
              testing::ContainsRegex("foliage_height_max_cm +100 +\\(held to your height\\); "
                                     "published: [0-9]+"));
}

// The tolerances are those of resources/plants-sources.md.
TEST_F(PlantsCommand, FactsSayWhichValuesWereChosenWithinATolerance) {
  const Outcome sheet = run({"plants", "--facts", "Monarda fistulosa"});
  EXPECT_THAT(sheet.out, testing::ContainsRegex("height_max_cm +120 +\\[after [A-Z]+"));
  EXPECT_THAT(sheet.out, testing::ContainsRegex("usda_symbol +MOFI +\\[USDA\\]"));
  EXPECT_THAT(sheet.out, testing::ContainsRegex("spacing_cm +60 +\\[memory\\]"));
  EXPECT_THAT(sheet.out, HasSubstr("the range of heights meets that of the source"));
}

}  // namespace
}  // namespace tussock
