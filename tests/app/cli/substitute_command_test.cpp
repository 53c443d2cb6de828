// SPDX-License-Identifier: MIT
// Another species for one that cannot be had, on the command line.
#include <algorithm>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/edit/draft.h"
#include "core/store/yard_file.h"
#include "tests/app/cli/cli_fixture.h"
#include "tests/app/data_folder.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::Outcome;
using test::run;
using testing::HasSubstr;

class SubstituteCommand : public test::CliTest {
 protected:
  // Nine at half a metre in a bed of 10 x 10 m.
  [[nodiscard]] std::string yardWithBergamot(bool locked = false) const {
    test::YardBuilder builder;
    std::vector<Point> places;
    for (int i = 0; i < 9; ++i) places.push_back({4.0 + 0.5 * (i % 3), 4.0 + 0.5 * (i / 3)});
    builder.bed("Bed", "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))").viewing("S");
    builder.drift("Monarda fistulosa", places).spaced(0.5);
    Draft draft(builder.build());
    Drift drift = *draft.yard().drifts.begin();
    drift.locked = locked;
    draft.put(drift);
    const std::string file = path("bergamot.yard");
    (void)YardFile::create(file, draft.yard());
    return file;
  }
  static const Drift& driftIn(const Yard& yard) { return *yard.drifts.begin(); }
  static Yard read(const std::string& file) {
    return YardFile::open(file, YardFile::Access::ReadOnly).yard();
  }

 private:
  test::DataFolder dataFolder_;
};

TEST_F(SubstituteCommand, TellsTheMostAlikeAndHowManyEachWouldTake) {
  const std::string file = yardWithBergamot();
  const Outcome outcome =
      run({"substitute", file, "--species", "wild bergamot", "--count", "3", "--json"});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  const auto found = nlohmann::json::parse(outcome.out).at("substitutes");
  ASSERT_EQ(found.size(), 3u);
  for (const auto& one : found) {
    EXPECT_EQ(one.at("plants_before"), 9);
    EXPECT_EQ(one.at("plants_after").get<int>() % 2, 1);
    EXPECT_TRUE(one.at("findings_caused").is_array());
    EXPECT_NEAR(one.at("ground_before_m2").get<double>(), 1.949, 0.001) << "9 x 0.5² √3/2";
    EXPECT_GT(one.at("ground_after_m2").get<double>(), 0.0);
  }
  EXPECT_GE(found[0].at("likeness").get<double>(), found[1].at("likeness").get<double>());
  EXPECT_EQ(driftIn(read(file)).species, "Monarda fistulosa") << "only told";
}

TEST_F(SubstituteCommand, SaysWhatTheOrderIsByAndGoesByIt) {
  const std::string file = yardWithBergamot();
  const std::string out = run({"substitute", file, "--species", "Monarda fistulosa"}).out;
  EXPECT_THAT(out,
              testing::StartsWith("In order of points: likeness in height, weeks in flower, "));
  std::istringstream lines(out);
  std::vector<double> points;
  for (std::string line; std::getline(lines, line);)
    if (const auto at = line.find(" points, "); at != std::string::npos && line[0] != ' ')
      points.push_back(std::stod(line.substr(line.rfind(' ', at - 1))));
  ASSERT_EQ(points.size(), 5u) << out;
  EXPECT_TRUE(std::is_sorted(points.rbegin(), points.rend())) << out;
}

// Nine at 50 cm stand on 9 x 0.5² √3/2; the coneflower's own spacing of 45 cm takes 11 on that.
TEST_F(SubstituteCommand, PutsOneInItsPlaceInOneEditThatCanBeUndone) {
  const std::string file = yardWithBergamot();
  const Outcome outcome =
      run({"substitute", file, "--species", "Monarda fistulosa", "--with", "Echinacea purpurea"});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  const Yard after = read(file);
  EXPECT_EQ(driftIn(after).species, "Echinacea purpurea");
  EXPECT_THAT(outcome.out,
              HasSubstr(std::to_string(driftIn(after).plants.size()) + " plants in place of 9"));
  const double ground = 9.0 * 0.5 * 0.5;
  const double spacing = driftIn(after).spacing.metres();
  EXPECT_NEAR(static_cast<double>(driftIn(after).plants.size()) * spacing * spacing, ground,
              2.0 * spacing * spacing)
      << "the same ground, to the next odd number";
  ASSERT_EQ(run({"history", file, "--undo", "1"}).code, ExitCode::Done);
  EXPECT_EQ(driftIn(read(file)).species, "Monarda fistulosa");
  EXPECT_EQ(driftIn(read(file)).plants.size(), 9u);
}

// Against what the check itself finds before and after. Its texts begin with a title.
TEST_F(SubstituteCommand, TellsTheFindingsOfTheOneChosen) {
  const std::string file = yardWithBergamot();
  const std::string before = run({"check", file, "--json"}).out;
  const Outcome outcome =
      run({"substitute", file, "--species", "Monarda fistulosa", "--with", "Lobelia cardinalis"});
  ASSERT_EQ(outcome.code, ExitCode::Done) << outcome.err;
  const std::string after = run({"check", file, "--json"}).out;
  const std::string mark = "  finding: ";
  std::istringstream lines(outcome.out);
  std::size_t told = 0;
  for (std::string line; std::getline(lines, line);) {
    if (!line.starts_with(mark)) continue;
    ++told;
    EXPECT_THAT(after, HasSubstr(line.substr(mark.size())));
    EXPECT_THAT(before, testing::Not(HasSubstr(line.substr(mark.size()))));
  }
  EXPECT_GT(told, 0u) << "cardinal flower blooms in other weeks than bergamot";
}

TEST_F(SubstituteCommand, LeavesLockedDriftsAndSaysSo) {
  const std::string file = yardWithBergamot(true);
  const Outcome outcome =
      run({"substitute", file, "--species", "Monarda fistulosa", "--with", "Echinacea purpurea"});
  EXPECT_EQ(outcome.code, ExitCode::File);
  EXPECT_THAT(outcome.err, HasSubstr("locked"));
  EXPECT_EQ(driftIn(read(file)).species, "Monarda fistulosa");
}

TEST_F(SubstituteCommand, AsksForWhatItNeeds) {
  const std::string file = yardWithBergamot();
  for (const std::vector<std::string>& more :
       {std::vector<std::string>{},
        {"--species", "zzzz"},
        {"--species", "Echinacea purpurea"},
        {"--species", "Monarda fistulosa", "--with", "zzzz"},
        {"--species", "Monarda fistulosa", "--with", "Coreopsis"},
        {"--species", "Monarda fistulosa", "--with", "wild bergamot"},
        {"--species", "Monarda fistulosa", "--with", "Echinacea purpurea", "--json"}}) {
    std::vector<std::string> arguments{"substitute", file};
    arguments.insert(arguments.end(), more.begin(), more.end());
    EXPECT_EQ(run(arguments).code, ExitCode::Usage) << (more.empty() ? "nothing" : more.back());
  }
}

}  // namespace
}  // namespace tussock
