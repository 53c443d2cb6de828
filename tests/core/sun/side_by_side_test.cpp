// SPDX-License-Identifier: MIT
#include "core/sun/side_by_side.h"

#include <new>
#include <stdexcept>

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(SideBySide, BothHaveEndedWhenItReturns) {
  int here = 0, there = 0;
  sideBySide([&] { here = 1; }, [&] { there = 2; });
  EXPECT_EQ(here + there, 3);
}

TEST(SideBySide, WhatTheHelperThrowsReachesTheCaller) {
  bool finished = false;
  EXPECT_THROW(sideBySide([&] { finished = true; }, [] { throw std::bad_alloc(); }),
               std::bad_alloc);
  EXPECT_TRUE(finished);
}

TEST(SideBySide, TheCallersOwnFailureGoesFirst) {
  bool finished = false;
  const auto failing = [&] {
    finished = true;
    throw std::bad_alloc();
  };
  EXPECT_THROW(sideBySide([] { throw std::invalid_argument("cell"); }, failing),
               std::invalid_argument);
  EXPECT_TRUE(finished);
}

}  // namespace
}  // namespace tussock
