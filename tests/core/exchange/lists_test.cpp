// SPDX-License-Identifier: MIT
#include "core/exchange/lists.h"

#include <gtest/gtest.h>

#include "core/catalog/plan_codes.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

TEST(Lists, ScheduleHasALineForEachSpeciesAndSize) {
  Species bergamot;
  bergamot.botanicalName = "Monarda fistulosa";
  bergamot.commonName = "wild bergamot";
  Yard yard = test::YardBuilder()
                  .bed("A", "POLYGON((0 0,9 0,9 4,0 4,0 0))")
                  .drift("Monarda fistulosa", test::row(3, 0.4, {0.5, 0.5}))
                  .drift("Monarda fistulosa", test::row(5, 0.5, {0.5, 1.5}))
                  .spaced(0.5)
                  .build();
  yard.planCodes = yard.planCodes.with({Id<PlanCode>(900), "Monarda fistulosa", "MONFIS"});
  EXPECT_EQ(scheduleCsv(yard, Catalogue({bergamot})),
            "code,quantity,drifts,botanical_name,common_name,size,spacing\r\n"
            "MONFIS,8,2,Monarda fistulosa,wild bergamot,plug,40 cm to 50 cm\r\n"
            ",8,,Total to plant,,,\r\n"
            ",0,,Total existing,,,\r\n");
}

TEST(Lists, WhatIsToBePlantedAndWhatStandsThereAreSummedApart) {
  const Yard yard = test::YardBuilder()
                        .bed("A", "POLYGON((0 0,9 0,9 4,0 4,0 0))")
                        .drift("Monarda fistulosa", test::row(3, 0.4, {0.5, 0.5}))
                        .drift("Monarda fistulosa", test::row(2, 0.4, {0.5, 1.5}))
                        .existing()
                        .build();
  const std::string csv = scheduleCsv(yard, Catalogue());
  EXPECT_NE(csv.find("\r\n,3,,Total to plant,,,\r\n,2,,Total existing,,,\r\n"), std::string::npos)
      << csv;
}

TEST(Lists, CodesNotGivenYetAreThoseOfThePlan) {
  const Yard yard = test::YardBuilder()
                        .bed("A", "POLYGON((0 0,9 0,9 4,0 4,0 0))")
                        .drift("Monarda fistulosa", test::row(3, 0.4, {0.5, 0.5}))
                        .build();
  const std::string csv = scheduleCsv(yard, Catalogue());
  EXPECT_NE(csv.find("\r\n" + codeOf(withCodes(yard), "Monarda fistulosa") + ",3,"),
            std::string::npos)
      << csv;
  EXPECT_NE(csv.find("\r\nMONFIS,"), std::string::npos) << csv;
}

}  // namespace
}  // namespace tussock
