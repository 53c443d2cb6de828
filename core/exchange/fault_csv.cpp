// SPDX-License-Identifier: MIT
#include "core/exchange/fault_csv.h"

#include "core/exchange/csv.h"

namespace tussock {

std::string faultsCsv(const std::vector<CatalogueError>& errors) {
  std::string csv = csvRecord({"file", "line", "column", "value", "expected"});
  for (const CatalogueError& error : errors)
    csv += csvRecord({error.file, error.line == 0 ? "" : std::to_string(error.line), error.column,
                      error.value, error.told.empty() ? error.expected : error.told});
  return csv;
}

std::string faultsText(const std::vector<CatalogueError>& errors) {
  std::string text;
  for (const CatalogueError& error : errors) text += error.text() + '\n';
  return text;
}

}  // namespace tussock
