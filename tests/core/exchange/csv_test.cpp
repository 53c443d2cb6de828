// SPDX-License-Identifier: MIT
#include "core/exchange/csv.h"

#include <gtest/gtest.h>

#include "core/catalog/table.h"

namespace tussock {
namespace {

TEST(Csv, EndsRecordsAndQuotesAsTheStandardSays) {  // RFC 4180, section 2
  EXPECT_EQ(csvRecord({"a", "b c", ""}), "a,b c,\r\n");
  EXPECT_EQ(csvRecord({"a,b", "say \"so\"", "two\nlines"}),
            "\"a,b\",\"say \"\"so\"\"\",\"two\nlines\"\r\n");
}

TEST(Csv, MakesFormulasHarmless) {  // OWASP, CSV Injection
  EXPECT_EQ(csvRecord({"=1+1"}), "'=1+1\r\n");
  EXPECT_EQ(csvRecord({"@SUM(A1)"}), "'@SUM(A1)\r\n");
  EXPECT_EQ(csvRecord({"+cmd|' /C calc'!A0"}), "'+cmd|' /C calc'!A0\r\n");
  EXPECT_EQ(csvRecord({"-2+3"}), "'-2+3\r\n");
  EXPECT_EQ(csvRecord({"=HYPERLINK(\"x\")"}), "\"'=HYPERLINK(\"\"x\"\")\"\r\n");
}

TEST(Csv, LeavesNumbersAlone) {
  EXPECT_EQ(csvRecord({"-3.5", "+7", "1e-3", "-0"}), "-3.5,+7,1e-3,-0\r\n");
}

TEST(Csv, ReadsBackAsWritten) {
  const std::vector<std::string> fields{"a,b", "say \"so\"", "two\r\nlines", "", "Schöne Ecke"};
  const Table table = readTable(csvRecord(fields) + csvRecord({"next"}));
  ASSERT_EQ(table.rows.size(), 2u);
  EXPECT_EQ(table.rows[0].cells, fields);
  EXPECT_EQ(table.rows[1].line, 3u);
}

}  // namespace
}  // namespace tussock
