// SPDX-License-Identifier: MIT
// Sizes, weeks in flower and zones of the plant table against pages of botanic gardens and
// universities, the page named with each row.
#include <algorithm>
#include <cstdlib>

#include <gtest/gtest.h>

#include "tests/support/shipped_plant.h"

namespace tussock {
namespace {

using test::shippedPlant;

struct PrintedRange {
  double low, high;
};

// As printed, in inches, months and zones. No months where the page gives only a season.
struct GardenPage {
  const char* species;
  PrintedRange height, spread;
  int firstMonth, lastMonth;
  int coldest, warmest;
  const char* source;
};

constexpr auto kMissouriPage = "Missouri Botanical Garden, Plant Finder",
               kNewEnglandPage = "Native Plant Trust, Garden Plant Finder",
               kLuriePage = "Lurie Garden, Chicago, plant page",
               kOhioPage = "Ohio State University, plant page",
               kMassachusettsPage = "UMass Stockbridge School, plant page",
               kCrystalPage = "Crystal Bridges Museum, plants of the grounds";

class PublishedPage : public testing::TestWithParam<GardenPage> {};

TEST_P(PublishedPage, HasHeightsThatMeetThoseOfTheTable) {
  const Species& species = shippedPlant(GetParam().species);
  EXPECT_LE(species.heightLow, Length::inches(GetParam().height.high)) << GetParam().source;
  EXPECT_GE(species.heightHigh, Length::inches(GetParam().height.low)) << GetParam().source;
}

// An inch of rounding at either end.
TEST_P(PublishedPage, HasTheSpreadOfTheTableWithinItsOwn) {
  const Species& species = shippedPlant(GetParam().species);
  const Length inch = Length::inches(1);
  EXPECT_GE(species.spread + inch, Length::inches(GetParam().spread.low)) << GetParam().source;
  EXPECT_LE(species.spread - inch, Length::inches(GetParam().spread.high)) << GetParam().source;
}

TEST_P(PublishedPage, HasAtLeastHalfOfTheMonthsInFlower) {
  const GardenPage& page = GetParam();
  if (page.firstMonth == 0) return;
  const auto months = shippedPlant(page.species).bloomMonths();
  ASSERT_TRUE(months);
  const int both =
      std::min(months->last, page.lastMonth) - std::max(months->first, page.firstMonth) + 1;
  EXPECT_GE(2 * both, months->last - months->first + 1) << page.source;
}

TEST_P(PublishedPage, HasTheZonesToWithinOne) {
  const GardenPage& page = GetParam();
  const Species& species = shippedPlant(page.species);
  EXPECT_LE(std::abs(species.zoneLow - page.coldest), 1) << page.source;
  EXPECT_LE(std::abs(species.zoneHigh - page.warmest), 1) << page.source;
}

INSTANTIATE_TEST_SUITE_P(
    Read, PublishedPage,
    testing::Values(
        GardenPage{"Thalictrum thalictroides", {6, 9}, {6, 9}, 4, 5, 4, 8, kMissouriPage},
        GardenPage{"Filipendula rubra", {72, 96}, {36, 48}, 6, 8, 3, 8, kMissouriPage},
        GardenPage{"Phlox pilosa", {12, 18}, {12, 18}, 5, 7, 4, 9, kMissouriPage},
        GardenPage{"Campanula rotundifolia", {12, 18}, {6, 12}, 6, 9, 3, 6, kMissouriPage},
        GardenPage{"Erythronium americanum", {2, 5}, {4, 10}, 0, 0, 3, 9, kNewEnglandPage},
        GardenPage{"Eurybia macrophylla", {24, 48}, {24, 48}, 0, 0, 3, 8, kLuriePage},
        GardenPage{"Echinacea purpurea", {24, 60}, {18, 24}, 6, 8, 3, 8, kOhioPage},
        GardenPage{"Lindera benzoin", {72, 144}, {72, 144}, 3, 3, 4, 9, kMassachusettsPage},
        GardenPage{"Amsonia hubrichtii", {30, 40}, {36, 36}, 4, 5, 5, 9, kCrystalPage}));

}  // namespace
}  // namespace tussock
