// SPDX-License-Identifier: MIT
#include "core/model/skyline_text.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

std::vector<std::pair<double, double>> degreesOf(const SkylineRead& read) {
  std::vector<std::pair<double, double>> pairs;
  for (const SkylinePoint& point : read.points)
    pairs.emplace_back(point.azimuth.degrees(), point.elevation.degrees());
  return pairs;
}

// Whole degrees stay whole through radians to within rounding.
void expectPairs(const SkylineRead& read, const std::vector<std::pair<double, double>>& wanted) {
  EXPECT_EQ(read.trouble, "");
  const auto found = degreesOf(read);
  ASSERT_EQ(found.size(), wanted.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    EXPECT_NEAR(found[i].first, wanted[i].first, 1e-9);
    EXPECT_NEAR(found[i].second, wanted[i].second, 1e-9);
  }
}

TEST(SkylineText, ReadsWhatSpreadsheetsAndPeopleWrite) {
  const std::vector<std::pair<double, double>> wanted{{90, 12.5}, {180, 3}};
  for (const char* text :
       {"90, 12.5\n180, 3", "90,12.5\n180,3\n", "90\t12.5\r\n180\t3\r\n", "90 12.5\n180 3",
        "90;12,5\n180;3,0", "180, 3\n90, 12.5", "azimuth,elevation\n90,12.5\n\n# hill\n180,3",
        "90\u00B0 12.5\u00B0\n180\u00B0 3\u00B0"})
    expectPairs(parseSkyline(text), wanted);
}

TEST(SkylineText, AnEmptyTextIsAnOpenHorizon) {
  expectPairs(parseSkyline(""), {});
  expectPairs(parseSkyline(" \n\n"), {});
}

TEST(SkylineText, SaysWhichLineIsWrong) {
  const auto trouble = [](const char* text) { return parseSkyline(text).trouble; };
  EXPECT_TRUE(trouble("90, 12\nhill, 4").starts_with("Line 2: \u201chill, 4\u201d"));
  EXPECT_TRUE(trouble("# far\n400, 12").starts_with("Line 2: the azimuth"));
  EXPECT_TRUE(trouble("-1, 12").starts_with("Line 1: the azimuth"));
  EXPECT_TRUE(trouble("90, 90").starts_with("Line 1: the elevation"));
  EXPECT_TRUE(trouble("90, nan").starts_with("Line 1"));
  EXPECT_TRUE(trouble("90").starts_with("Line 1"));
  EXPECT_TRUE(trouble("0, 5\n360, 6").starts_with("Azimuth 0\u00B0 is told twice"));
  EXPECT_TRUE(parseSkyline("90, 12\nhill, 4").points.empty());
}

TEST(SkylineText, WhatIsWrittenReadsBack) {
  const auto read = parseSkyline("0,1.25\n137.5,22\n300,0");
  expectPairs(parseSkyline(formatSkyline(read.points)), degreesOf(read));
  EXPECT_EQ(formatSkyline(read.points), "0, 1.25\n137.5, 22\n300, 0");
}

}  // namespace
}  // namespace tussock
