// SPDX-License-Identifier: MIT
#include "app/cli/command_line.h"

#include <filesystem>
#include <fstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/catalog/resources.h"
#include "core/store/yard_file.h"
#include "tests/app/cli/cli_fixture.h"

namespace tussock {
namespace {

using test::Outcome;
using test::run;
using testing::HasSubstr;
using testing::StartsWith;

class CommandLine : public test::CliTest {};

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

TEST_F(CommandLine, NumbersOutOfRangeAreToldWithTheRange) {
  const std::string yard = example();
  const Outcome fine = run({"sun", yard, "--cell", "0.001", "--out", path("fine.csv")});
  EXPECT_EQ(fine.code, ExitCode::Usage);
  EXPECT_THAT(fine.err, HasSubstr("--cell: '0.001' is not a number from 0.01 to 100"));
  const Outcome word = run({"sun", yard, "--step", "often", "--out", path("fine.csv")});
  EXPECT_THAT(word.err, HasSubstr("--step: 'often' is not a number from 1 to 60"));
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
