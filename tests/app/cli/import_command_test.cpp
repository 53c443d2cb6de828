// SPDX-License-Identifier: MIT
// Sites from GeoJSON on the command line, into a new yard and into one that is there.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/store/yard_file.h"
#include "tests/app/cli/cli_fixture.h"

namespace tussock {
namespace {

using test::Outcome;
using test::run;
using testing::HasSubstr;

class ImportCommand : public test::CliTest {};

TEST_F(ImportCommand, AnImportTellsHowManyPlantsCameIn) {
  ASSERT_EQ(run({"export", example(), path("site.geojson")}).code, ExitCode::Done);
  ASSERT_EQ(run({"new", path("other.yard"), "--lat", "38.4", "--lon", "-86.9"}).code,
            ExitCode::Done);
  std::size_t plants = 0;
  const YardFile file = YardFile::open(path("example.yard"), YardFile::Access::ReadOnly);
  for (const Drift& drift : file.yard().drifts) plants += drift.plants.size();
  EXPECT_THAT(run({"import", path("other.yard"), path("site.geojson")}).out,
              HasSubstr("with " + std::to_string(plants) + " plants"));
}

TEST_F(ImportCommand, ImportThatAddsNothingIsNotDone) {
  const std::string yard = path("e.yard");
  ASSERT_EQ(run({"new", yard, "--lat", "38.4", "--lon", "-86.9"}).code, ExitCode::Done);
  write("none.geojson", R"({"type":"FeatureCollection","features":[]})");
  EXPECT_EQ(run({"import", yard, path("none.geojson")}).code, ExitCode::File);
}

// A bow tie may be meant in two ways; the bed beside it comes in.
TEST_F(ImportCommand, ASiteWithABedThatCrossesItselfIsNotAllDone) {
  write("site.geojson",
        R"({"type":"FeatureCollection","features":[)"
        R"({"type":"Feature","properties":{"kind":"bed","name":"Bow"},"geometry":)"
        R"({"type":"Polygon","coordinates":[[[-86.9,38.4],[-86.8999,38.4001],[-86.8999,38.4],)"
        R"([-86.9,38.4001],[-86.9,38.4]]]}},)"
        R"({"type":"Feature","properties":{"kind":"bed","name":"Plain"},"geometry":)"
        R"({"type":"Polygon","coordinates":[[[-86.9,38.4],[-86.8999,38.4],[-86.8999,38.4001],)"
        R"([-86.9,38.4]]]}}]})");
  const std::string yard = path("bow.yard");
  for (const auto& arguments : {std::vector<std::string>{"new", yard, "--lat", "38.4", "--lon",
                                                         "-86.9", "--site", path("site.geojson")},
                                {"import", yard, path("site.geojson")}}) {
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Findings) << arguments.front();
    EXPECT_THAT(outcome.err, HasSubstr("Feature 1 (bed Bow): left out: its outline crosses"));
  }
  EXPECT_EQ(YardFile::open(yard, YardFile::Access::ReadOnly).yard().beds.size(), 2u);
}

TEST_F(ImportCommand, AnExportedYardComesBackWhole) {
  const std::string yard = example();
  ASSERT_EQ(run({"export", yard, path("out.geojson")}).code, ExitCode::Done);
  ASSERT_EQ(
      run({"new", path("d.yard"), "--lat", "38.4", "--lon", "-86.9", "--site", path("out.geojson")})
          .code,
      ExitCode::Done);
  const YardFile a = YardFile::open(yard, YardFile::Access::ReadOnly);
  const YardFile b = YardFile::open(path("d.yard"), YardFile::Access::ReadOnly);
  EXPECT_EQ(a.yard().beds.size(), b.yard().beds.size());
  EXPECT_EQ(a.yard().drifts.size(), b.yard().drifts.size());
  EXPECT_EQ(a.yard().trees.size(), b.yard().trees.size());
}

}  // namespace
}  // namespace tussock
