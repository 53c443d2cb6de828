// SPDX-License-Identifier: MIT
#include "core/exchange/csv.h"

#include <charconv>

namespace tussock {

namespace {

bool isNumber(std::string_view field) {
  if (field.starts_with('+')) field.remove_prefix(1);
  double value = 0.0;
  const auto [end, error] = std::from_chars(field.data(), field.data() + field.size(), value);
  return error == std::errc{} && end == field.data() + field.size();
}

// What spreadsheets take for the start of a formula (OWASP, CSV Injection). A plain number such as
// -3.5 stays one.
bool runsAsFormula(std::string_view field) {
  constexpr std::string_view kStarts = "=+-@\t\r";
  return !field.empty() && kStarts.find(field.front()) != std::string_view::npos &&
         !isNumber(field);
}

std::string cellOf(const std::string& field) {
  const std::string safe = runsAsFormula(field) ? "'" + field : field;
  if (safe.find_first_of(",\"\r\n") == std::string::npos) return safe;
  std::string quoted = "\"";
  for (const char c : safe) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

}  // namespace

std::string csvRecord(const std::vector<std::string>& fields) {
  std::string record;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (i > 0) record += ',';
    record += cellOf(fields[i]);
  }
  return record + "\r\n";
}

}  // namespace tussock
