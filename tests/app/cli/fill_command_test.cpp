// SPDX-License-Identifier: MIT
// Filling beds from the command line: what is in the file afterwards, and what is said.
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "core/store/yard_file.h"
#include "tests/app/cli/cli_fixture.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::Outcome;
using testing::HasSubstr;
using testing::Not;

class FillCommand : public test::CliTest {
 protected:
  FillCommand() {
    test::YardBuilder builder;
    builder.bed("Walk", "POLYGON ((0 0, 6 0, 6 2.5, 0 2.5, 0 0))").viewing("S");
    builder.bed("Back", "POLYGON ((0 10, 4 10, 4 12, 0 12, 0 10))").viewing("N");
    (void)YardFile::create(path("two.yard"), builder.build());
  }
  [[nodiscard]] Outcome fill(std::vector<std::string> more, const std::string& file = "two.yard") {
    std::vector<std::string> arguments{"fill", path(file)};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return test::run(arguments);
  }
  [[nodiscard]] Yard yard(const std::string& file = "two.yard") const {
    return YardFile::open(path(file), YardFile::Access::ReadOnly).yard();
  }
  [[nodiscard]] std::size_t edits() const {
    return YardFile::open(path("two.yard"), YardFile::Access::ReadOnly).history().size();
  }
};

TEST_F(FillCommand, PlantsTheBedInOneEditAndTellsTheScore) {
  const Outcome outcome = fill({"--bed", "Walk"});
  EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("Fill Walk: "));
  EXPECT_THAT(outcome.out, HasSubstr("proposed from the plant facts"));
  EXPECT_THAT(outcome.out, HasSubstr("Height for depth"));
  EXPECT_THAT(outcome.out, HasSubstr("All, by weight"));
  EXPECT_THAT(outcome.out, HasSubstr("Plants a square metre, main layer"));
  EXPECT_EQ(outcome.err, "");  // no progress but on a terminal
  EXPECT_EQ(edits(), 1u);
  const Yard after = yard();
  EXPECT_GT(after.drifts.size(), 5u);
  for (const Drift& drift : after.drifts) EXPECT_EQ(after.beds.find(drift.bed)->name, "Walk");
}

TEST_F(FillCommand, GivesTheSameBedForTheSameSeed) {
  std::filesystem::copy_file(path("two.yard"), path("again.yard"));
  std::filesystem::copy_file(path("two.yard"), path("other.yard"));
  ASSERT_EQ(fill({"--bed", "Walk", "--seed", "3"}).code, ExitCode::Done);
  ASSERT_EQ(fill({"--bed", "Walk", "--seed", "3"}, "again.yard").code, ExitCode::Done);
  ASSERT_EQ(fill({"--bed", "Walk", "--seed", "4"}, "other.yard").code, ExitCode::Done);
  EXPECT_EQ(yard(), yard("again.yard"));
  EXPECT_NE(yard(), yard("other.yard"));
}

TEST_F(FillCommand, PlantsFromAListInAFile) {
  write("list.txt", "# for the walk\nMonarda fistulosa, 40 %\nlittle bluestem, 60\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  double bergamot = 0.0, all = 0.0;
  for (const Drift& drift : yard().drifts) {
    all += static_cast<double>(drift.plants.size());
    if (drift.species == "Monarda fistulosa") bergamot += static_cast<double>(drift.plants.size());
  }
  EXPECT_NEAR(bergamot / all, 0.4, 0.1);
}

TEST_F(FillCommand, PlantsAMatrixBetweenTheDrifts) {
  write("list.txt", "Carex pensylvanica, matrix 40 %\nMonarda fistulosa\nlittle bluestem\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  std::vector<std::string> matrices;
  for (const Drift& drift : yard().drifts)
    if (drift.pattern == Pattern::Matrix) matrices.push_back(drift.species);
  EXPECT_EQ(matrices, std::vector<std::string>{"Carex pensylvanica"});
}

TEST_F(FillCommand, SaysWhichLineOfAListIsWrong) {
  write("list.txt", "Monarda fistulosa\nMonarda fistulosaa\n");
  const Outcome unknown = fill({"--bed", "Walk", "--plants", path("list.txt")});
  EXPECT_EQ(unknown.code, ExitCode::File);
  EXPECT_THAT(unknown.err, HasSubstr("line 2: 'Monarda fistulosaa'"));
  write("list.txt", "Monarda fistulosa, lots\n");
  EXPECT_THAT(fill({"--bed", "Walk", "--plants", path("list.txt")}).err,
              HasSubstr("line 1: 'lots', which is no share"));
  write("list.txt", "\n# nothing\n");
  EXPECT_THAT(fill({"--bed", "Walk", "--plants", path("list.txt")}).err,
              HasSubstr("names no species"));
  EXPECT_EQ(edits(), 0u);
}

TEST_F(FillCommand, TellsAllLinesOfAListThatAreWrongAtOnce) {
  write("list.txt",
        "Monarda fistulosaa\nZizia aurea, lots  # many\nZizia aurea\nRudbeckia fulgida 70%\n"
        "Carex pensylvanica matrix 40 %\nbee balm\nCoreopsis\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  EXPECT_EQ(outcome.code, ExitCode::File);
  EXPECT_THAT(outcome.err, HasSubstr("line 1: 'Monarda fistulosaa', which the plant facts do not"));
  EXPECT_THAT(outcome.err, HasSubstr("line 2: 'lots', which is no share"));
  EXPECT_THAT(outcome.err, Not(HasSubstr("line 3")));
  EXPECT_THAT(outcome.err, HasSubstr("before the share: 'Rudbeckia fulgida, 70%'."));
  EXPECT_THAT(outcome.err, HasSubstr("before the share: 'Carex pensylvanica, matrix 40 %'."));
  EXPECT_THAT(outcome.err, HasSubstr("line 6: 'bee balm', which may mean Monarda bradburiana "
                                     "(eastern beebalm), Monarda didyma"));
  EXPECT_THAT(outcome.err, HasSubstr("line 7: 'Coreopsis', which may mean Coreopsis lanceolata"));
  EXPECT_EQ(edits(), 0u);
}

TEST_F(FillCommand, OfManyWrongLinesNamesSomeAndCountsTheRest) {
  std::string list;
  for (int i = 0; i < 25; ++i) list += "Nowhere plant\n";
  write("list.txt", list);
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  EXPECT_THAT(outcome.err, HasSubstr("line 10: "));
  EXPECT_THAT(outcome.err, Not(HasSubstr("line 11: ")));
  EXPECT_THAT(outcome.err, HasSubstr("and 15 more lines with faults"));
}

TEST_F(FillCommand, TakesWhatFollowsACrossHatchInAListForAComment) {
  write("list.txt",
        "Monarda fistulosa, 40 %  # by the gate\nlittle bluestem # 60 %\n   # nothing\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  for (const Drift& drift : yard().drifts)
    EXPECT_TRUE(drift.species == "Monarda fistulosa" || drift.species == "Schizachyrium scoparium")
        << drift.species;
}

// As a list whose shares come to more than the whole: three quarters and one, none left out.
TEST_F(FillCommand, TakesAShareAboveTheWholeInProportion) {
  write("list.txt", "# for the walk\nMonarda fistulosa, 150 %\nlittle bluestem, 50 %\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("The shares of the list come to 200 %"));
  EXPECT_THAT(outcome.out, Not(HasSubstr("150 %"))) << "once is enough";
  double bergamot = 0.0, all = 0.0;
  for (const Drift& drift : yard().drifts) {
    all += static_cast<double>(drift.plants.size());
    if (drift.species == "Monarda fistulosa") bergamot += static_cast<double>(drift.plants.size());
  }
  EXPECT_NEAR(bergamot / all, 0.75, 0.1);
}

TEST_F(FillCommand, RefusesWhatIsNoShareAtAll) {
  for (const char* share : {"-20 %", "0 %", "nan", "inf", "1e9 %"}) {
    write("list.txt", std::string("Monarda fistulosa, ") + share + "\n");
    EXPECT_THAT(fill({"--bed", "Walk", "--plants", path("list.txt")}).err,
                HasSubstr("which is no share"))
        << share;
  }
  EXPECT_EQ(edits(), 0u);
}

TEST_F(FillCommand, KeepsEveryPlantWhenOnlyTheEmptyPartIsFilled) {
  ASSERT_EQ(fill({"--bed", "Walk"}).code, ExitCode::Done);
  Yard before = yard();
  {
    YardFile file = YardFile::open(path("two.yard"));
    Draft draft(file.yard());
    std::size_t taken = 0;
    for (const Drift& drift : file.yard().drifts)
      if (taken++ % 2 == 0) draft.remove(drift.id);
    file.commit(draft.finish("Thin out"));
    before = file.yard();
  }
  const Outcome outcome = fill({"--bed", "Walk", "--only-empty"});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  const Yard after = yard();
  EXPECT_GT(after.drifts.size(), before.drifts.size());
  for (const Drift& drift : before.drifts) {
    ASSERT_NE(after.drifts.find(drift.id), nullptr);
    EXPECT_EQ(*after.drifts.find(drift.id), drift);
  }
}

TEST_F(FillCommand, PlantsOneSpeciesAnewAndLeavesTheOthers) {
  ASSERT_EQ(fill({"--bed", "Walk"}).code, ExitCode::Done);
  const Yard before = yard();
  const std::string species = before.drifts.begin()->species;
  const Outcome outcome = fill({"--bed", "Walk", "--species", species, "--seed", "9"});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  EXPECT_THAT(outcome.out, testing::StartsWith("Refill "));
  EXPECT_THAT(outcome.out, HasSubstr(" in Walk: "));
  const Yard after = yard();
  for (const Drift& drift : before.drifts)
    if (drift.species != species) {
      EXPECT_EQ(*after.drifts.find(drift.id), drift);
    }
  for (const Drift& drift : after.drifts)
    if (before.drifts.find(drift.id) == nullptr) {
      EXPECT_EQ(drift.species, species);
    }
}

TEST_F(FillCommand, SaysWhatIsWrongWithTheArguments) {
  EXPECT_THAT(fill({}).err, HasSubstr("Say which bed with --bed: 'Walk', 'Back'."));
  const Outcome unknown = fill({"--bed", "Wall"});
  EXPECT_EQ(unknown.code, ExitCode::Usage);
  EXPECT_THAT(unknown.err, HasSubstr("No bed is named 'Wall'. The yard has 'Walk', 'Back'."));
  EXPECT_EQ(fill({"--bed", "Walk", "--wildness", "2"}).code, ExitCode::Usage);
  EXPECT_EQ(fill({"--bed", "Walk", "--only-empty", "--species", "Zizia aurea"}).code,
            ExitCode::Usage);
  EXPECT_THAT(fill({"--bed", "Walk", "--species", "Zizias"}).err, HasSubstr("do not know"));
  EXPECT_EQ(fill({"--bed", "Walk"}, "none.yard").code, ExitCode::File);
}

TEST_F(FillCommand, OfAYardWithoutBedsSaysWhatToDo) {
  (void)YardFile::create(path("bare.yard"), Yard());
  const Outcome outcome = fill({}, "bare.yard");
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("This yard has no bed."));
}

// A fern of the woods in full sun: nothing fits, nothing is written.
TEST_F(FillCommand, WritesNothingWhenNothingSuits) {
  write("list.txt", "Tiarella cordifolia\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  EXPECT_EQ(outcome.code, ExitCode::File);
  EXPECT_THAT(outcome.err, HasSubstr("Nothing was planted."));
  EXPECT_THAT(outcome.err, HasSubstr("Nothing on the list suits"));
  EXPECT_EQ(edits(), 0u);
}

TEST_F(FillCommand, PrintsWhatItPlantedSpeciesBySpecies) {
  write("list.txt", "Monarda fistulosa\nlittle bluestem\nAntennaria plantaginifolia\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  std::map<std::string, std::pair<std::size_t, std::size_t>> planted;
  for (const Drift& drift : yard().drifts) {
    planted[drift.species].first += drift.plants.size();
    ++planted[drift.species].second;
  }
  ASSERT_EQ(planted.size(), 3U);
  std::istringstream lines(outcome.out);
  std::size_t found = 0;
  for (std::string line; std::getline(lines, line);)
    for (const auto& [species, count] : planted)
      if (line.find("  " + species + ' ') != std::string::npos) {
        std::istringstream numbers(line.substr(line.find(species) + species.size()));
        std::size_t plants = 0, drifts = 0;
        numbers >> plants >> drifts;
        EXPECT_EQ(plants, count.first) << line;
        EXPECT_EQ(drifts, count.second) << line;
        ++found;
      }
  EXPECT_EQ(found, 3U) << outcome.out;
  EXPECT_LT(outcome.out.find("Main layer"), outcome.out.find("Ground layer"));
  EXPECT_THAT(outcome.out, Not(HasSubstr("Bulbs")));
}

// A carpet of few plants is far under the published density, and it is said why.
TEST_F(FillCommand, MarksPublishedFiguresThatAreNotMet) {
  write("list.txt", "Monarda fistulosa\nlittle bluestem\nAntennaria plantaginifolia\n");
  const Outcome outcome = fill({"--bed", "Walk", "--plants", path("list.txt")});
  std::istringstream lines(outcome.out);
  std::string line;
  while (std::getline(lines, line) && !line.starts_with("Plants a square metre, ground")) continue;
  EXPECT_THAT(line, HasSubstr(", below the published 15 to 20; here its plants cover "));
}

TEST_F(FillCommand, ASpeciesThatDoesNotStandThereIsWrongUsage) {
  const Outcome outcome = fill({"--bed", "Walk", "--species", "Zizia aurea"});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("Golden Alexanders does not stand in “Walk”"));
  EXPECT_THAT(outcome.err, HasSubstr("--only-empty"));
  EXPECT_EQ(edits(), 0u);
}

}  // namespace
}  // namespace tussock
