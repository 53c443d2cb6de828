// SPDX-License-Identifier: MIT
// `tussock sun`: the table, the picture, and what is said where no map can be made.
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

class SunCommand : public test::CliTest {};

std::string noteIn(const nlohmann::json& about, const std::string& name) {
  for (const auto& note : about["notes"])
    if (note["name"] == name) return note["value"];
  return {};
}

TEST_F(SunCommand, WritesTableAndPicture) {
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

TEST_F(SunCommand, MapsAMonthTheWorstOneAndTheBedsAlone) {
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

TEST_F(SunCommand, RefusesCellsLargerThanTheGround) {
  const Outcome outcome = run({"sun", example(), "--cell", "100", "--out", path("one.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("--cell is 100 m, and the ground is"));
  EXPECT_FALSE(std::filesystem::exists(path("one.csv")));
}

// A lot line that goes and comes back encloses nothing.
TEST_F(SunCommand, RefusesGroundWithoutWidth) {
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

TEST_F(SunCommand, GrowsTheTreesFirst) {
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
TEST_F(SunCommand, SaysWhichCellsWouldDo) {
  const std::string yard = example();
  const Outcome outcome = run({"sun", yard, "--cell", "0.01", "--out", path("fine.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("cells of 0.01 m"));
  EXPECT_THAT(outcome.err, HasSubstr("larger cells, of 0.0"));
  EXPECT_FALSE(std::filesystem::exists(path("fine.csv")));
}

TEST_F(SunCommand, RefusesYearsItIsNotExactIn) {
  const std::string yard = example();
  const Outcome outcome = run({"sun", yard, "--date", "1820-06-21", "--out", path("old.csv")});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("from 1950 to 2050"));
  EXPECT_FALSE(std::filesystem::exists(path("old.csv")));
}

}  // namespace
}  // namespace tussock
