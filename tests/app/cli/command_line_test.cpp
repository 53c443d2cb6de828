// SPDX-License-Identifier: MIT
#include "app/cli/command_line.h"

#include <filesystem>
#include <fstream>
#include <QImage>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/catalog/resources.h"
#include "core/store/yard_file.h"
#include "tests/app/cli/cli_fixture.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::Outcome;
using test::run;
using testing::HasSubstr;
using testing::StartsWith;

class CommandLine : public test::CliTest {
 protected:
  [[nodiscard]] std::string example() const {
    EXPECT_EQ(run({"example", path("example.yard")}).code, ExitCode::Done);
    return path("example.yard");
  }
};

TEST_F(CommandLine, OpensAWindowForAYardFileOnly) {
  EXPECT_TRUE(asksForWindow({}));
  EXPECT_TRUE(asksForWindow({"garden.yard"}));
  write("plain", "");
  EXPECT_TRUE(asksForWindow({path("plain")}));
  for (const std::vector<std::string>& arguments : {std::vector<std::string>{"check", "x.yard"},
                                                    {"check"},
                                                    {"--help"},
                                                    {"--bogus"},
                                                    {"chek"},
                                                    {"chek", "x.yard"},
                                                    {"a.yard", "b.yard"},
                                                    {""}})
    EXPECT_FALSE(asksForWindow(arguments)) << arguments.front();
}

TEST_F(CommandLine, AMisspeltCommandIsWrongUsage) {
  EXPECT_EQ(run({"chek", "x.yard"}).code, ExitCode::Usage);
  EXPECT_EQ(run({"--bogus"}).code, ExitCode::Usage);
  EXPECT_EQ(run({"a.yard", "b.yard"}).code, ExitCode::Usage);
}

// A yard is never written over by what is made from it, under another name either.
TEST_F(CommandLine, TheYardItselfIsNeverWrittenOver) {
  const std::string yard = example(), link = path("plan.csv");
  std::filesystem::create_symlink(yard, link);
  for (const auto& arguments :
       {std::vector<std::string>{"export", yard, link}, {"sun", yard, "--out", link}}) {
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Usage) << arguments.front();
    EXPECT_THAT(outcome.err, HasSubstr("is a yard, and no yard is written over"))
        << arguments.front();
  }
  std::filesystem::create_symlink(yard, path("plan.pdf"));
  EXPECT_EQ(run({"plan", yard, "--out", path("plan.pdf")}).code, ExitCode::Usage);
  EXPECT_EQ(run({"verify", yard}).code, ExitCode::Done);
}

TEST_F(CommandLine, NoOtherYardIsWrittenOverEither) {
  const std::string yard = example(), other = path("other.csv"), named = path("new.yard");
  ASSERT_EQ(run({"new", path("other.yard"), "--lat", "41.66", "--lon", "-91.53"}).code,
            ExitCode::Done);
  std::filesystem::rename(path("other.yard"), other);
  for (const auto& arguments : {std::vector<std::string>{"plants", "--write-all", other},
                                {"plants", "--write-own", other},
                                {"plants", yard, "--write-all", other},
                                {"export", yard, other},
                                {"sun", yard, "--out", other},
                                {"plants", "--write-all", named},
                                {"plants", "--write-own", named}}) {
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Usage) << testing::PrintToString(arguments);
    EXPECT_THAT(outcome.err, HasSubstr("Name another file")) << testing::PrintToString(arguments);
  }
  EXPECT_FALSE(std::filesystem::exists(named));
  EXPECT_EQ(run({"verify", other}).code, ExitCode::Done);
  std::filesystem::rename(other, path("sun.csv-metadata.json"));
  EXPECT_EQ(run({"sun", yard, "--out", path("sun.csv")}).code, ExitCode::Usage);
  EXPECT_FALSE(std::filesystem::exists(path("sun.csv"))) << "half of what was asked";
  EXPECT_EQ(run({"verify", path("sun.csv-metadata.json")}).code, ExitCode::Done);
}

TEST_F(CommandLine, SheetsAsSvgAreNamed) {
  const Outcome outcome = run({"plan", example(), "--out", path("plan.svg")});
  EXPECT_THAT(outcome.err, HasSubstr("plan-01.svg to "));
  EXPECT_TRUE(std::filesystem::exists(path("plan-01.svg")));
}

TEST_F(CommandLine, EditsToUndoAreCountedFromOne) {
  const Outcome outcome = run({"history", example(), "--undo", "-1"});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("Give 1 or more"));
}

TEST_F(CommandLine, RefusesAPlanOfHundredsOfSheets) {
  const Outcome outcome = run({"plan", example(), "--scale", "1:1", "--out", path("big.pdf")});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("sheets"));
  EXPECT_FALSE(std::filesystem::exists(path("big.pdf")));
}

TEST_F(CommandLine, HelpNamesEveryCommandAndExitsDone) {
  const Outcome help = run({"--help"});
  EXPECT_EQ(help.code, ExitCode::Done);
  for (const char* name :
       {"example", "new", "import", "export", "sun", "check", "plan", "history", "verify"})
    EXPECT_THAT(help.out, HasSubstr(name));
  const Outcome word = run({"help"});
  EXPECT_EQ(word.code, ExitCode::Done);
  EXPECT_EQ(word.out, help.out);
  EXPECT_FALSE(asksForWindow({"help"}));
  EXPECT_EQ(run({"help", "sun"}).out, run({"sun", "--help"}).out);
}

TEST_F(CommandLine, NewWritesTheSettingsGiven) {
  const Outcome made = run({"new", path("a.yard"), "--lat", "38.4", "--lon", "-86.9", "--zone",
                            "America/Chicago", "--state", "IN", "--hardiness", "6b", "--last-frost",
                            "04-20", "--first-frost", "10-18"});
  ASSERT_EQ(made.code, ExitCode::Done) << made.err;
  const YardFile file = YardFile::open(path("a.yard"), YardFile::Access::ReadOnly);
  const Settings& settings = file.yard().settings;
  EXPECT_NEAR(settings.latitude.degrees(), 38.4, 1e-12);
  EXPECT_NEAR(settings.longitude.degrees(), -86.9, 1e-12);
  EXPECT_EQ(settings.hardinessZone, "6b");
  EXPECT_EQ(settings.lastFrost, std::chrono::April / 20);
}

TEST_F(CommandLine, WrongUsageIsTwoAndMakesNoFile) {
  for (const std::vector<std::string>& arguments :
       {std::vector<std::string>{"new", path("b.yard"), "--lat", "98", "--lon", "0"},
        {"new", path("b.yard"), "--lat", "38", "--lon", "0", "--last-frost", "20 April",
         "--first-frost", "10-18"},
        {"new", path("b.yard"), "--lat", "38", "--lon", "0", "--last-frost", "04-20"},
        {"new", path("b.yard"), "--lat", "38", "--lon", "0", "--last-frost", "10-18",
         "--first-frost", "04-20"},
        {"new", path("b.yard"), "--lat", "-38", "--lon", "0", "--last-frost", "04-20",
         "--first-frost", "10-18"},
        {"new", path("b.yard"), "--lat", "38", "--lon", "0", "--hardiness", "99"},
        {"new", path("b.yard"), "--lat", "38", "--lon", "0", "--state", "ZZ"},
        {"new", path("b.yard"), "--lat", "38", "--lon", "0", "--zone", "Nowhere/Atall"},
        {"new", path("b.yard"), "--lat", "north", "--lon", "0"},
        {"plant", path("b.yard")},
        {"check"}}) {
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Usage) << outcome.err;
    EXPECT_FALSE(outcome.err.empty());
  }
  EXPECT_FALSE(std::filesystem::exists(path("b.yard")));
}

TEST_F(CommandLine, AFileThatIsNoYardIsThree) {
  write("notes.yard", "not a yard at all");
  for (const char* command : {"check", "verify", "history"}) {
    EXPECT_EQ(run({command, path("notes.yard")}).code, ExitCode::File);
    EXPECT_EQ(run({command, path("absent.yard")}).code, ExitCode::File);
  }
  EXPECT_EQ(readFile(path("notes.yard")), "not a yard at all");
}

TEST_F(CommandLine, NeverWritesOverAYard) {
  const std::string yard = example();
  const std::string before = readFile(yard);
  EXPECT_EQ(run({"example", yard}).code, ExitCode::File);
  EXPECT_EQ(run({"new", yard, "--lat", "1", "--lon", "1"}).code, ExitCode::File);
  EXPECT_EQ(readFile(yard), before);
}

TEST_F(CommandLine, CheckOfTheExampleFindsAFewThings) {
  const std::string yard = example();
  const Outcome text = run({"check", yard});
  EXPECT_EQ(text.code, ExitCode::Findings);
  const Outcome json = run({"check", yard, "--json"});
  EXPECT_EQ(json.code, ExitCode::Findings);
  const auto findings = nlohmann::json::parse(json.out).at("findings");
  EXPECT_GE(findings.size(), 1u);
  EXPECT_LE(findings.size(), 12u);
  for (const auto& finding : findings)
    for (const char* field : {"check", "severity", "subjects", "place", "measured", "required",
                              "unit", "source", "text", "accepted"})
      EXPECT_TRUE(finding.contains(field)) << field;
}

TEST_F(CommandLine, UndoAndRedoGoThroughTheFile) {
  const std::string yard = path("c.yard");
  ASSERT_EQ(run({"new", yard, "--lat", "38.4", "--lon", "-86.9"}).code, ExitCode::Done);
  write("bed.geojson", R"({"type":"FeatureCollection","features":[{"type":"Feature",
    "properties":{"kind":"bed","name":"Gate bed","viewing":"S"},"geometry":{"type":"Polygon",
    "coordinates":[[[-86.9,38.4],[-86.89995,38.4],[-86.89995,38.40003],[-86.9,38.40003],
    [-86.9,38.4]]]}}]})");
  const Outcome imported = run({"import", yard, path("bed.geojson")});
  ASSERT_EQ(imported.code, ExitCode::Done) << imported.err;
  auto beds = [&] { return YardFile::open(yard, YardFile::Access::ReadOnly).yard().beds.size(); };
  EXPECT_EQ(beds(), 1u);
  EXPECT_THAT(run({"history", yard}).out, HasSubstr("Import"));
  EXPECT_EQ(run({"history", yard, "--undo", "1"}).code, ExitCode::Done);
  EXPECT_EQ(beds(), 0u);
  EXPECT_THAT(run({"history", yard}).out, HasSubstr("(undone)"));
  EXPECT_THAT(run({"history", yard, "--undo", "3"}).err, HasSubstr("Only 0 of 3"));
  EXPECT_EQ(run({"history", yard, "--redo", "1"}).code, ExitCode::Done);
  EXPECT_EQ(beds(), 1u);
  EXPECT_EQ(run({"history", yard, "--forget"}).code, ExitCode::Done);
  EXPECT_EQ(run({"history", yard}).out, "");
  EXPECT_EQ(run({"verify", yard}).code, ExitCode::Done);
}

TEST_F(CommandLine, ImportOfNonsenseLeavesTheYardAsItWas) {
  const std::string yard = example();
  const std::string before = readFile(yard);
  write("bad.geojson", "{\"type\": \"FeatureCollection\", \"features\": 7}");
  const Outcome outcome = run({"import", yard, path("bad.geojson")});
  EXPECT_EQ(outcome.code, ExitCode::File);
  EXPECT_THAT(outcome.err, HasSubstr("bad.geojson"));
  EXPECT_EQ(readFile(yard), before);
}

std::string noteIn(const nlohmann::json& about, const std::string& name) {
  for (const auto& note : about["notes"])
    if (note["name"] == name) return note["value"];
  return {};
}

TEST_F(CommandLine, SunWritesTableAndPicture) {
  const std::string yard = example();
  const Outcome csv = run({"sun", yard, "--date", "2027-06-21", "--cell", "0.5", "--step", "15",
                           "--out", path("sun.csv")});
  ASSERT_EQ(csv.code, ExitCode::Done) << csv.err;
  std::istringstream lines(readFile(path("sun.csv")));
  std::string line;
  std::getline(lines, line);
  EXPECT_EQ(line, "x_m,y_m,hours,before_noon,after_noon\r");
  double most = 0.0;
  while (std::getline(lines, line)) {
    double x = 0, y = 0, hours = 0, before = 0, after = 0;
    ASSERT_EQ(std::sscanf(line.c_str(), "%lf,%lf,%lf,%lf,%lf", &x, &y, &hours, &before, &after), 5);
    EXPECT_NEAR(hours, before + after, 0.0011);
    most = std::max(most, hours);
  }
  // No place at 38.4° N has more direct sun than that day's time between true sunrise and sunset at
  // 0° altitude: 2 acos(-tan φ tan δ) = 14.7 h with δ = 23.44°.
  EXPECT_GT(most, 11.0);
  EXPECT_LT(most, 14.8);
  // W3C, Model for Tabular Data and Metadata on the Web (2015), 5.3: the file beside the table.
  const auto about = nlohmann::json::parse(readFile(path("sun.csv-metadata.json")));
  EXPECT_EQ(about["@context"], "http://www.w3.org/ns/csvw");
  EXPECT_EQ(about["url"], "sun.csv");
  EXPECT_EQ(about["tableSchema"]["columns"].size(), 5U);
  EXPECT_EQ(about["tableSchema"]["columns"][2]["name"], "hours");
  EXPECT_EQ(noteIn(about, "Days"), "21 June 2027");
  EXPECT_EQ(noteIn(about, "Cell"), "0.5 m (19.7 in)") << "of a yard in feet";
  EXPECT_THAT(noteIn(about, "Area"), HasSubstr("' "));
  EXPECT_THAT(noteIn(about, "Classes"), HasSubstr("Central Michigan University"));
  EXPECT_EQ(noteIn(about, "Step"), "15 min");
  EXPECT_EQ(noteIn(about, "Growth"), "trees as drawn");
  const Outcome png =
      run({"sun", yard, "--season", "--cell", "0.5", "--step", "30", "--out", path("sun.png")});
  ASSERT_EQ(png.code, ExitCode::Done) << png.err;
  EXPECT_GT(QImage(QString::fromStdString(path("sun.png"))).width(), 600);
  EXPECT_EQ(run({"sun", yard, "--out", path("sun.txt")}).code, ExitCode::Usage);
  EXPECT_EQ(run({"sun", yard, "--date", "soon", "--out", path("s.csv")}).code, ExitCode::Usage);
}

TEST_F(CommandLine, SunMapsAMonthTheWorstOneAndTheBedsAlone) {
  const std::string yard = example();
  struct Table {
    std::size_t rows = 0;
    double sum = 0.0;
  };
  const auto tableOf = [&](std::vector<std::string> more) {
    std::vector<std::string> words{"sun",    yard, "--cell", "0.5",
                                   "--step", "20", "--out",  path("part.csv")};
    words.insert(words.end(), more.begin(), more.end());
    const Outcome outcome = run(words);
    EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
    Table table;
    std::istringstream lines(readFile(path("part.csv")));
    double x = 0, y = 0, hours = 0;
    for (std::string line; std::getline(lines, line);)
      if (std::sscanf(line.c_str(), "%lf,%lf,%lf", &x, &y, &hours) == 3)
        ++table.rows, table.sum += hours;
    return table;
  };
  const auto days = [&] {
    return noteIn(nlohmann::json::parse(readFile(path("part.csv-metadata.json"))), "Days");
  };
  const Table season = tableOf({});
  const Table june = tableOf({"--month", "6"});
  EXPECT_THAT(days(), HasSubstr("June within the season"));
  const Table worst = tableOf({"--worst-month"});
  EXPECT_THAT(days(), HasSubstr("the month with the least sun at each place"));
  EXPECT_EQ(june.rows, season.rows);
  EXPECT_GT(june.sum, season.sum);
  EXPECT_LT(worst.sum, season.sum * 0.95);
  const Table beds = tableOf({"--beds"});
  EXPECT_GT(beds.rows, 50u);
  EXPECT_LT(beds.rows, season.rows / 2);
  EXPECT_EQ(run({"sun", yard, "--month", "6", "--worst-month", "--out", path("part.csv")}).code,
            ExitCode::Usage);
  const Outcome winter = run({"sun", yard, "--month", "1", "--out", path("part.csv")});
  EXPECT_EQ(winter.code, ExitCode::Usage);
  EXPECT_THAT(winter.err, HasSubstr("January is outside the growing season"));
}

TEST_F(CommandLine, SunRefusesCellsLargerThanTheGround) {
  const Outcome outcome = run({"sun", example(), "--cell", "100", "--out", path("one.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("--cell is 100 m, and the ground is"));
  EXPECT_FALSE(std::filesystem::exists(path("one.csv")));
}

// A lot line that goes and comes back encloses nothing.
TEST_F(CommandLine, SunRefusesGroundWithoutWidth) {
  test::YardBuilder builder;
  builder.step({0.0, 0.0}, 0.001).step({0.0, 11.0}, 0.001);
  (void)YardFile::create(path("line.yard"), builder.build());
  for (const std::vector<std::string>& cell : {std::vector<std::string>{}, {"--cell", "1"}}) {
    std::vector<std::string> arguments{"sun", path("line.yard"), "--out", path("line.csv")};
    arguments.insert(arguments.end(), cell.begin(), cell.end());
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Usage);
    EXPECT_THAT(outcome.err, HasSubstr("The ground is 0.0 m by 11.0 m: a line"));
  }
}

TEST_F(CommandLine, SunGrowsTheTreesFirst) {
  const std::string yard = example();
  const auto sumOfHours = [&](const char* years) {
    const Outcome outcome = run({"sun", yard, "--date", "2027-06-21", "--cell", "1", "--step", "20",
                                 "--grow", years, "--out", path("grown.csv")});
    EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
    std::istringstream lines(readFile(path("grown.csv")));
    double sum = 0.0, x = 0, y = 0, hours = 0;
    for (std::string line; std::getline(lines, line);)
      if (std::sscanf(line.c_str(), "%lf,%lf,%lf", &x, &y, &hours) == 3) sum += hours;
    return sum;
  };
  const double drawn = sumOfHours("0");
  EXPECT_LT(sumOfHours("15"), drawn - 1.0);
  EXPECT_EQ(noteIn(nlohmann::json::parse(readFile(path("grown.csv-metadata.json"))), "Growth"),
            "trees as they will be in 15 years; 5 of 5 have a rate");
  EXPECT_EQ(run({"sun", yard, "--grow", "-3", "--out", path("s.csv")}).code, ExitCode::Usage);
}

// Nothing is written where a map cannot be.
TEST_F(CommandLine, SunSaysWhichCellsWouldDo) {
  const std::string yard = example();
  const Outcome outcome = run({"sun", yard, "--cell", "0.01", "--out", path("fine.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("cells of 0.01 m"));
  EXPECT_THAT(outcome.err, HasSubstr("larger cells, of 0.0"));
  EXPECT_FALSE(std::filesystem::exists(path("fine.csv")));
}

TEST_F(CommandLine, NumbersOutOfRangeAreToldWithTheRange) {
  const std::string yard = example();
  const Outcome fine = run({"sun", yard, "--cell", "0.001", "--out", path("fine.csv")});
  EXPECT_EQ(fine.code, ExitCode::Usage);
  EXPECT_THAT(fine.err, HasSubstr("--cell: '0.001' is not a number from 0.01 to 100"));
  const Outcome word = run({"sun", yard, "--step", "often", "--out", path("fine.csv")});
  EXPECT_THAT(word.err, HasSubstr("--step: 'often' is not a number from 1 to 60"));
}

TEST_F(CommandLine, SunRefusesYearsItIsNotExactIn) {
  const std::string yard = example();
  const Outcome outcome = run({"sun", yard, "--date", "1820-06-21", "--out", path("old.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("from 1950 to 2050"));
  EXPECT_FALSE(std::filesystem::exists(path("old.csv")));
}

TEST_F(CommandLine, PlanAndExportsWriteTheirFiles) {
  const std::string yard = example();
  const Outcome plan = run({"plan", yard, "--out", path("plan.pdf"), "--paper", "a4"});
  ASSERT_EQ(plan.code, ExitCode::Done) << plan.err;
  EXPECT_THAT(readFile(path("plan.pdf")), StartsWith("%PDF-"));
  for (const char* name : {"out.geojson", "out.svg", "out.png", "out.csv"}) {
    const Outcome outcome = run({"export", yard, path(name)});
    EXPECT_EQ(outcome.code, ExitCode::Done) << name << ": " << outcome.err;
    EXPECT_GT(std::filesystem::file_size(path(name)), 500u) << name;
  }
  EXPECT_EQ(run({"export", yard, path("out.dwg")}).code, ExitCode::Usage);
  EXPECT_EQ(run({"plan", yard, "--out", path("p.pdf"), "--scale", "big"}).code, ExitCode::Usage);
  EXPECT_EQ(run({"plan", yard, "--out", path("p.pdf"), "--paper", "napkin"}).code, ExitCode::Usage);
  EXPECT_EQ(run({"plan", yard, "--out", path("p.pdf"), "--revision", "thirteen long"}).code,
            ExitCode::Usage);
}

}  // namespace
}  // namespace tussock
