// SPDX-License-Identifier: MIT
// What a fill is called in the history, and what is said when nothing fits.
#include "core/planting/fill_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

TEST(FillWords, TheHistoryTellsFillingGapsAndRefillingApart) {
  Bed bed;
  bed.name = "Front";
  FillRequest request;
  EXPECT_EQ(labelOf(request, bed, test::shippedFacts()), "Fill Front");
  request.what = FillWhat::EmptyPart;
  EXPECT_EQ(labelOf(request, bed, test::shippedFacts()), "Fill the gaps of Front");
  request.what = FillWhat::OneSpecies;
  request.species = "Monarda fistulosa";
  EXPECT_EQ(labelOf(request, bed, test::shippedFacts()), "Refill wild bergamot in Front");
  request.species = "Planta ignota";
  bed.name.clear();
  EXPECT_EQ(labelOf(request, bed, test::shippedFacts()), "Refill Planta ignota in the bed");
  request.what = FillWhat::WholeBed;
  EXPECT_EQ(labelOf(request, bed, test::shippedFacts()), "Fill bed");
}

// 30 cm across and 20 cm off each edge leave nothing; without that set-back a violet of 15 cm fits.
TEST(FillWords, ASetBackThatLeavesNoRoomIsNamed) {
  const auto notesWith = [](std::optional<Length> setback) {
    test::YardBuilder builder;
    builder.bed("Strip", "POLYGON ((0 0, 3 0, 3 0.3, 0 0.3, 0 0))").viewing("S");
    Yard yard = builder.build();
    Bed bed = *yard.beds.find(builder.lastBed());
    bed.setback = setback;
    yard.beds = yard.beds.with(bed);
    FillRequest request;
    request.plants = {{"Allium cernuum", 0.0}};
    return test::filled(yard, request).result.notes;
  };
  EXPECT_THAT(notesWith(Length::metres(0.2)), Contains(HasSubstr("set-back")));
  EXPECT_THAT(notesWith(std::nullopt), Not(Contains(HasSubstr("set-back"))));
}

}  // namespace
}  // namespace tussock
