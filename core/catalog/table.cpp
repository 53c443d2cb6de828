// SPDX-License-Identifier: MIT
#include "core/catalog/table.h"

#include <new>
#include <utility>

#include <csv.h>

namespace tussock {

namespace {

// libcsv with the line counted: it is fed line by line, and tells when a row has ended.
class LineReader {
 public:
  LineReader(const RowTaker& take, char separator) : take_(take) {
    if (csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI) != 0) throw std::bad_alloc();
    csv_set_delim(&parser_, static_cast<unsigned char>(separator));
  }
  ~LineReader() { csv_free(&parser_); }
  LineReader(const LineReader&) = delete;
  LineReader& operator=(const LineReader&) = delete;

  // False when quotation marks stand where they may not.
  [[nodiscard]] bool feed(std::string_view text, std::size_t line) {
    if (!inRow_) row_.line = line;
    inRow_ = true;
    line_ = line;
    if (csv_parse(&parser_, text.data(), text.size(), takeCell, takeRow, this) != text.size())
      return false;
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos && row_.cells.empty() &&
        !isQuoted_)
      inRow_ = false;
    else
      isQuoted_ = inRow_;
    return true;
  }
  // False when the text ended inside quotes.
  [[nodiscard]] bool finish() { return csv_fini(&parser_, takeCell, takeRow, this) == 0; }
  [[nodiscard]] std::size_t rowLine() const { return row_.line; }

 private:
  static void takeCell(void* cell, std::size_t size, void* self) {
    static_cast<LineReader*>(self)->row_.cells.emplace_back(static_cast<const char*>(cell), size);
  }
  static void takeRow(int, void* self) {
    auto& reader = *static_cast<LineReader*>(self);
    reader.take_(std::exchange(reader.row_, TableRow{reader.line_, {}}));
    reader.inRow_ = false;
    reader.isQuoted_ = false;
  }

  const RowTaker& take_;
  csv_parser parser_{};
  TableRow row_;
  std::size_t line_ = 0;
  bool inRow_ = false;
  bool isQuoted_ = false;  // the row goes on in the next line
};

// The line, counted from 0, with the wrong quotation mark; the number of lines when all is well.
std::size_t readFrom(const std::vector<std::string_view>& lines, std::size_t first,
                     const RowTaker& take, char separator) {
  LineReader reader(take, separator);
  for (std::size_t i = first; i < lines.size(); ++i)
    if (!reader.feed(lines[i], i + 1)) return reader.rowLine() - 1;
  return reader.finish() ? lines.size() : reader.rowLine() - 1;
}

// Bytes that follow the lead byte of a character, or -1 when it cannot lead.
int followers(unsigned char lead) {
  if (lead < 0x80) return 0;
  if (lead >= 0xC2 && lead <= 0xDF) return 1;
  if (lead >= 0xE0 && lead <= 0xEF) return 2;
  return lead >= 0xF0 && lead <= 0xF4 ? 3 : -1;
}

}  // namespace

std::vector<std::string_view> linesOf(std::string_view text) {
  const char ending = text.find('\n') == std::string_view::npos ? '\r' : '\n';
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const std::size_t end = text.find(ending);
    const std::size_t size = end == std::string_view::npos ? text.size() : end + 1;
    lines.push_back(text.substr(0, size));
    text.remove_prefix(size);
  }
  return lines;
}

std::vector<std::size_t> forEachRow(std::string_view csv, const RowTaker& take, char separator) {
  if (csv.starts_with(kByteOrderMark)) csv.remove_prefix(kByteOrderMark.size());
  const auto lines = linesOf(csv);
  std::vector<std::size_t> badQuotes;
  std::size_t next = 0;
  while (next < lines.size()) {
    const std::size_t stopped = readFrom(lines, next, take, separator);
    if (stopped < lines.size()) badQuotes.push_back(stopped + 1);
    next = stopped + 1;
  }
  return badQuotes;
}

Table readTable(std::string_view csv, char separator) {
  Table table;
  table.badQuotes = forEachRow(
      csv, [&](TableRow row) { table.rows.push_back(std::move(row)); }, separator);
  return table;
}

bool isUtf8(std::string_view text) {
  unsigned bits = 0;
  for (const char c : text) bits |= static_cast<unsigned char>(c);
  if (bits < 0x80) return true;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto lead = static_cast<unsigned char>(text[i]);
    const int count = followers(lead);
    if (count < 0) return false;
    for (int k = 0; k < count; ++k) {
      ++i;
      if (i >= text.size()) return false;
      const auto next = static_cast<unsigned char>(text[i]);
      if ((next & 0xC0U) != 0x80U) return false;
      // Overlong forms, surrogates and what lies past U+10FFFF (Unicode 15, table 3-7).
      if (k == 0 && ((lead == 0xE0 && next < 0xA0) || (lead == 0xED && next > 0x9F) ||
                     (lead == 0xF0 && next < 0x90) || (lead == 0xF4 && next > 0x8F)))
        return false;
    }
  }
  return true;
}

bool isUtf16(std::string_view text) {
  const bool byTurns = text.size() > 1 && (text[0] == '\0') != (text[1] == '\0');
  return text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF") || byTurns;
}

}  // namespace tussock
