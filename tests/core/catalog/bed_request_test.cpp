// SPDX-License-Identifier: MIT
#include "core/catalog/bed_request.h"

#include <gtest/gtest.h>

#include "tests/support/run_check.h"
#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

class BedRequest : public testing::Test {
 protected:
  BedRequest() {
    test::YardBuilder builder;
    builder.bed("Bed", test::kSquareBed).moisture(Moisture::Dry);
    builder.drift(test::kAster, test::row(3, 0.4, {2, 2}));
    bed_ = builder.lastBed();
    yard_ = builder.build();
  }

  Catalogue facts_ = test::tinyCatalogue();
  Yard yard_;
  Id<Bed> bed_;
};

TEST_F(BedRequest, HoldsThePlaceAndWhatIsPlanted) {
  const RankRequest request = requestFor(yard_, facts_, *yard_.beds.find(bed_), 5.5);
  EXPECT_EQ(request.place.sunHours, 5.5);
  EXPECT_EQ(request.place.moisture, Moisture::Dry);
  ASSERT_EQ(request.planted.size(), 1u);
  EXPECT_DOUBLE_EQ(request.planted.front().amount, 3.0);
  EXPECT_FALSE(request.season.empty());
}

TEST_F(BedRequest, APointHasWhatItsBedHas) {
  const RankRequest inside = requestAt(yard_, facts_, {3, 3}, std::nullopt);
  EXPECT_EQ(inside.place.moisture, Moisture::Dry);
  EXPECT_EQ(inside.planted.size(), 1u);
  const RankRequest outside = requestAt(yard_, facts_, {300, 3}, std::nullopt);
  EXPECT_FALSE(outside.place.moisture);
  EXPECT_TRUE(outside.planted.empty());
}

}  // namespace
}  // namespace tussock
