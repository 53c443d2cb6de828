// SPDX-License-Identifier: MIT
#include "core/exchange/fault_csv.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

// A value that a spreadsheet would run (OWASP, CSV Injection) must not be run from a report either.
TEST(FaultCsv, ListsEveryFaultAndRunsNone) {
  const std::vector<CatalogueError> faults{
      {"mine.csv", 3, "spacing_cm", "=1+1", "a number from 1 to 3000"},
      {"mine.csv", 0, "family", "", "some text"},
      {"mine.csv", 1, "", "", "", "column 3 has no name; it is left out."}};
  EXPECT_EQ(faultsCsv(faults),
            "file,line,column,value,expected\r\n"
            "mine.csv,3,spacing_cm,'=1+1,a number from 1 to 3000\r\n"
            "mine.csv,,family,,some text\r\n"
            "mine.csv,1,,,column 3 has no name; it is left out.\r\n");
  EXPECT_EQ(faultsText(faults),
            "mine.csv, line 3, spacing_cm: '=1+1' is not a number from 1 to 3000.\n"
            "mine.csv, family: some text is missing.\n"
            "mine.csv, line 1: column 3 has no name; it is left out.\n");
}

}  // namespace
}  // namespace tussock
