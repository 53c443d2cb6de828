// SPDX-License-Identifier: MIT
#include "core/exchange/csv.h"

#include "core/catalog/formula_guard.h"

namespace tussock {

namespace {

std::string cellOf(const std::string& field) {
  const std::string safe = guarded(field);
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
