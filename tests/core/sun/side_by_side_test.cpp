// SPDX-License-Identifier: MIT
#include "core/sun/side_by_side.h"

#include <new>
#include <stdexcept>
#include <vector>

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

TEST(InHalves, EachPieceIsDoneOnce) {
  for (const std::size_t pieces : {0u, 1u, 2u, 3u, 10u}) {
    std::vector<int> done(pieces);
    inHalves(pieces, [&](Share share) {
      for (std::size_t i = share.first; i < pieces; i += share.stride) ++done[i];
    });
    EXPECT_EQ(done, std::vector<int>(pieces, 1));
  }
}

}  // namespace
}  // namespace tussock
