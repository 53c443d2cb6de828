// SPDX-License-Identifier: MIT
// Against R vegan 2.6-4 (Debian r-cran-vegan 2.6-4+dfsg-1): diversity() and specnumber() of its
// data sets BCI (tree counts of Barro Colorado Island; Condit et al. 2002) and dune (Jongman et al.
// 1987), whose counts are in tests/data/vegan-counts.csv.
#include "core/catalog/diversity.h"

#include <map>

#include <gtest/gtest.h>

#include "core/catalog/resources.h"
#include "core/catalog/table.h"

namespace tussock {
namespace {

using Site = std::pair<std::string, int>;

std::map<Site, std::vector<double>> readCounts() {
  const Table table = readTable(readFile(std::string(TUSSOCK_TEST_DATA) + "/vegan-counts.csv"));
  std::map<Site, std::vector<double>> counts;
  for (std::size_t i = 1; i < table.rows.size(); ++i) {
    const auto& cells = table.rows[i].cells;
    counts[{cells[0], std::stoi(cells[1])}].push_back(std::stod(cells[2]));
  }
  return counts;
}

Diversity at(const char* dataSet, int site) {
  static const auto counts = readCounts();
  return diversityOf(counts.at({dataSet, site}));
}

TEST(Diversity, AgreesWithVeganOnBarroColorado) {
  const double shannon[] = {4.018411662, 3.848471168, 3.814059505, 3.976562988, 3.969940300};
  const int richness[] = {93, 84, 90, 94, 101};
  for (int plot = 1; plot <= 5; ++plot) {
    EXPECT_NEAR(at("BCI", plot).shannon, shannon[plot - 1], 1e-8) << plot;
    EXPECT_EQ(at("BCI", plot).richness, richness[plot - 1]) << plot;
  }
  const double simpson[] = {0.9746293048, 0.9683392786, 0.9646077558};
  const double inverse[] = {39.41555381, 31.58487732, 28.25477791};
  const double evenness[] = {0.88655785, 0.86856924, 0.84760463};  // H / ln S
  for (int plot = 1; plot <= 3; ++plot) {
    EXPECT_NEAR(at("BCI", plot).simpson, simpson[plot - 1], 1e-8) << plot;
    EXPECT_NEAR(at("BCI", plot).inverseSimpson, inverse[plot - 1], 1e-7) << plot;
    EXPECT_NEAR(at("BCI", plot).evenness, evenness[plot - 1], 1e-7) << plot;
  }
}

TEST(Diversity, AgreesWithVeganOnTheDunes) {
  const double shannon[] = {1.4404817, 2.2525163, 2.1937493, 2.4267788};
  const int richness[] = {5, 10, 10, 13};
  const double simpson[] = {0.7345679012, 0.8900226757, 0.87875, 0.9007407407};
  const double inverse[] = {3.767441860, 9.092783505, 8.247422680, 10.074626866};
  for (int site = 1; site <= 4; ++site) {
    EXPECT_NEAR(at("dune", site).shannon, shannon[site - 1], 1e-7) << site;
    EXPECT_EQ(at("dune", site).richness, richness[site - 1]) << site;
    EXPECT_NEAR(at("dune", site).simpson, simpson[site - 1], 1e-7) << site;
    EXPECT_NEAR(at("dune", site).inverseSimpson, inverse[site - 1], 1e-7) << site;
  }
}

// vegan again: cover shares 30, 30, 30 and 10.
TEST(Diversity, TakesSharesAsWellAsCounts) {
  const Diversity d = diversityOf({30.0, 30.0, 30.0, 10.0});
  EXPECT_NEAR(d.shannon, 1.31383403319, 1e-10);
  EXPECT_NEAR(d.simpson, 0.72, 1e-12);
  EXPECT_NEAR(d.inverseSimpson, 3.57142857143, 1e-10);
  EXPECT_NEAR(diversityOf({0.3, 0.3, 0.3, 0.1}).shannon, d.shannon, 1e-12);
}

TEST(Diversity, OfNothingAndOfOneKind) {
  EXPECT_EQ(diversityOf({}).richness, 0);
  EXPECT_EQ(diversityOf({0.0, -1.0}).inverseSimpson, 0.0);
  const Diversity one = diversityOf({7.0, 0.0});
  EXPECT_EQ(one.richness, 1);
  EXPECT_EQ(one.shannon, 0.0);
  EXPECT_EQ(one.simpson, 0.0);
  EXPECT_EQ(one.evenness, 1.0);
}

}  // namespace
}  // namespace tussock
