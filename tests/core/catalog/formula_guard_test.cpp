// SPDX-License-Identifier: MIT
// The starts that a spreadsheet runs: OWASP, CSV Injection.
#include "core/catalog/formula_guard.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(FormulaGuard, SetsAnApostropheBeforeWhatWouldRun) {
  for (const char* text : {"=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\tA1", "\rA1", "\nA1",
                           "＝1+1", "＋1+1", "－1+1", "＠SUM(A1)"})
    EXPECT_EQ(guarded(text), std::string("'") + text);
}

// "You also need to take care of the field separator and quotes": where a program splits at
// semicolons or tabs, what follows one is a cell of its own.
TEST(FormulaGuard, GuardsWhatIsACellToProgramsThatSplitElsewhere) {
  EXPECT_EQ(guarded("x;=1+1;y"), "x;'=1+1;y");
  EXPECT_EQ(guarded("=a;@b"), "'=a;'@b");
  EXPECT_EQ(guarded("a\t=1"), "a\t'=1");
  EXPECT_EQ(guarded("a\n=1"), "a\n'=1");
  EXPECT_EQ(guarded("\t=1"), "'\t'=1");
  EXPECT_EQ(guarded("a;\"=1\""), "a;\"'=1\"");
  EXPECT_EQ(guarded("a; ; =1"), "a; ; '=1");
}

TEST(FormulaGuard, LeavesTextAndNumbersAsTheyAre) {
  for (const char* text : {"", "Aster", "-3.5", "+3.5", "-3e5", "'Purple Dome'", "a=b", "#8A7FC0",
                           "full;part", "3;-5", "one; two", "a;", ";"})
    EXPECT_EQ(guarded(text), text);
}

TEST(FormulaGuard, GivesBackWhatWasWritten) {
  for (const char* text :
       {"=1", "'=1", "''=1", "'Purple Dome'", "-3.5", "'-3.5", "", "'", "Aster", "x;=1;y",
        "x;'=1;''=2", "=a;@b", "\t=1", "'\t'=1", "a;\"=1\"", ";;=1", "a;'", "-5;=1", "a;\t\n;'=1"})
    EXPECT_EQ(unguarded(guarded(text)), text);
}

}  // namespace
}  // namespace tussock
