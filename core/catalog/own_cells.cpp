// SPDX-License-Identifier: MIT
#include "core/catalog/own_cells.h"

#include "core/catalog/row_cells.h"
#include "core/catalog/source_list.h"

namespace tussock {

OwnCells::OwnCells(const OwnSpecies& own) : own_(own) {
  for (const OwnFact& fact : own.facts) {
    if (fact.value.empty()) continue;
    const std::size_t at = plantColumnAt(fact.column);
    if (at < values_.size())
      values_[at] = fact.value;
    else
      strange_.push_back(fact.column);
  }
}

std::string_view OwnCells::text(std::string_view column) const {
  if (column == "botanical_name") return own_.botanicalName;
  const std::size_t at = plantColumnAt(column);
  if (at >= values_.size() || column == "sources") return {};
  if (values_[at].empty() && column == "genus") return genusOf(own_.botanicalName);
  return trimmedCell(values_[at]);
}

std::vector<FactSource> OwnCells::sources() const {
  static const std::size_t kSources = plantColumnAt("sources");
  std::array<std::string_view, kPlantColumns.size()> keys{};
  forEachSource(values_[kSources], [&](std::string_view field, std::string_view theirs) {
    if (const std::size_t at = plantColumnAt(field); at < keys.size() && keys[at].empty())
      keys[at] = theirs;
  });
  std::vector<FactSource> sources;
  for (std::size_t at = 1; at < values_.size(); ++at)
    if (!values_[at].empty() && at != kSources) addTo(sources, kPlantColumns[at], keys[at]);
  for (FactSource& source : sources) source.keys = asOwn(source.keys);
  return sources;
}

}  // namespace tussock
