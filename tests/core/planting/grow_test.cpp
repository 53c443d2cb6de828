// SPDX-License-Identifier: MIT
#include "core/planting/grow.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

TEST(Counts, StepThroughTheOddNumbers) {
  EXPECT_EQ(nextCount(1), 3);
  EXPECT_EQ(nextCount(7), 9);
  EXPECT_EQ(nextCount(6), 7);
  EXPECT_EQ(nextCount(0), 1);
  EXPECT_EQ(previousCount(9), 7);
  EXPECT_EQ(previousCount(8), 7);
  EXPECT_EQ(previousCount(1), 1);
}

}  // namespace
}  // namespace tussock
