// SPDX-License-Identifier: MIT
#include "core/catalog/own_cells.h"

#include <algorithm>

#include "core/catalog/source_list.h"

namespace tussock {

OwnCells::OwnCells(const OwnSpecies& own) : own_(own) {
  facts_.reserve(own.facts.size());
  for (const OwnFact& fact : own.facts)
    if (!fact.value.empty() && fact.column != "botanical_name") facts_.push_back(&fact);
  const auto before = [](const OwnFact* a, const OwnFact* b) { return a->column < b->column; };
  if (!std::is_sorted(facts_.begin(), facts_.end(), before))
    std::stable_sort(facts_.begin(), facts_.end(), before);
  std::reverse(facts_.begin(), facts_.end());
  const auto same = [](const OwnFact* a, const OwnFact* b) { return a->column == b->column; };
  facts_.erase(std::unique(facts_.begin(), facts_.end(), same), facts_.end());
  std::reverse(facts_.begin(), facts_.end());
}

std::string_view OwnCells::text(std::string_view column) const {
  if (column == "botanical_name") return own_.botanicalName;
  if (column == "sources") return {};
  const auto at = std::lower_bound(
      facts_.begin(), facts_.end(), column,
      [](const OwnFact* fact, std::string_view name) { return fact->column < name; });
  if (at != facts_.end() && (*at)->column == column) return (*at)->value;
  return column == "genus" ? genusOf(own_.botanicalName) : std::string_view();
}

std::vector<std::string_view> OwnCells::columns() const {
  std::vector<std::string_view> columns;
  columns.reserve(facts_.size());
  for (const OwnFact* fact : facts_)
    if (fact->column != "sources") columns.push_back(fact->column);
  return columns;
}

void OwnCells::addSources(std::vector<FactSource>& sources) const {
  std::vector<FactSource> keys;
  for (const OwnFact* fact : facts_)
    if (fact->column == "sources") keys = sourcesFrom(fact->value).value_or(keys);
  for (const std::string_view column : columns())
    sources.push_back({std::string(column), asOwn(keysOf(keys, column))});
}

}  // namespace tussock
