// SPDX-License-Identifier: MIT
// Comma-separated values (RFC 4180) as rows of text, with the line each row begins on. A byte order
// mark and empty lines are passed over; either line ending will do, and another separator.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace tussock {

struct TableRow {
  std::size_t line = 0;  // counted from 1
  std::vector<std::string> cells;
};

struct Table {
  std::vector<TableRow> rows;
  // Lines with a quotation mark that is never closed, or stands inside a field by itself; reading
  // goes on with the line after.
  std::vector<std::size_t> badQuotes;
};
[[nodiscard]] Table readTable(std::string_view csv, char separator = ',');

// The same without holding them all: each row in turn. Gives the lines with bad quotes.
using RowTaker = std::function<void(TableRow row)>;
std::vector<std::size_t> forEachRow(std::string_view csv, const RowTaker& take,
                                    char separator = ',');

// The lines that these count, each with its end: a line feed, or, in a text that has none, a
// carriage return, as old programs ended lines.
[[nodiscard]] std::vector<std::string_view> linesOf(std::string_view text);

inline constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";  // of UTF-8
[[nodiscard]] bool isUtf8(std::string_view text);
// By its mark, or a zero byte beside the first letter.
[[nodiscard]] bool isUtf16(std::string_view text);

}  // namespace tussock
