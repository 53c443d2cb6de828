// SPDX-License-Identifier: MIT
// The starts that a spreadsheet runs: OWASP, CSV Injection.
#include "core/catalog/formula_guard.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(FormulaGuard, SetsAnApostropheBeforeWhatWouldRun) {
  for (const char* text : {"=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "\n=1",
                           "＝1+1", "＋1+1", "－1+1", "＠SUM(A1)"})
    EXPECT_EQ(guarded(text), std::string("'") + text);
}

TEST(FormulaGuard, LeavesTextAndNumbersAsTheyAre) {
  for (const char* text : {"", "Aster", "-3.5", "+3.5", "-3e5", "'Purple Dome'", "a=b", "#8A7FC0"})
    EXPECT_EQ(guarded(text), text);
}

TEST(FormulaGuard, GivesBackWhatWasWritten) {
  for (const char* text : {"=1", "'=1", "''=1", "'Purple Dome'", "-3.5", "'-3.5", "", "'", "Aster"})
    EXPECT_EQ(unguarded(guarded(text)), text);
}

}  // namespace
}  // namespace tussock
