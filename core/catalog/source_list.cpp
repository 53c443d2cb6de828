// SPDX-License-Identifier: MIT
#include "core/catalog/source_list.h"

#include <algorithm>
#include <utility>

namespace tussock {

namespace {

bool isBlank(char c) {
  return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

std::string_view withoutBlanks(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

// The part before the mark, which is taken off `text` with it.
std::string_view takeUpTo(std::string_view& text, char mark) {
  const std::size_t end = std::min(text.find(mark), text.size());
  const std::string_view part = text.substr(0, end);
  text.remove_prefix(std::min(end + 1, text.size()));
  return part;
}

// Whether the column is its field, or one of several.
bool tellsOf(const FactSource& source, std::string_view column) {
  const std::string& fields = source.field;
  for (std::size_t at = fields.find(column); at != std::string::npos;
       at = fields.find(column, at + 1)) {
    const std::size_t end = at + column.size();
    if ((at == 0 || fields[at - 1] == ' ') && (end == fields.size() || fields[end] == ' '))
      return true;
  }
  return false;
}

}  // namespace

bool forEachSource(std::string_view cell, const SourceTaker& take) {
  while (!cell.empty()) {
    std::string_view group = withoutBlanks(takeUpTo(cell, ';'));
    if (group.empty()) continue;
    if (group.find(':') == std::string_view::npos) return false;
    const std::string_view keys = withoutBlanks(takeUpTo(group, ':'));
    if (keys.empty()) return false;
    for (std::size_t from = 0; from < group.size();) {
      while (from < group.size() && isBlank(group[from])) ++from;
      std::size_t to = from;
      while (to < group.size() && !isBlank(group[to])) ++to;
      if (to > from) take(group.substr(from, to - from), keys);
      from = to;
    }
  }
  return true;
}

std::optional<std::vector<FactSource>> sourcesFrom(std::string_view cell) {
  std::vector<FactSource> sources;
  const bool read = forEachSource(cell, [&](std::string_view field, std::string_view keys) {
    sources.push_back({std::string(field), std::string(keys)});
  });
  return read ? std::optional(std::move(sources)) : std::nullopt;
}

void addTo(std::vector<FactSource>& groups, std::string_view field, std::string_view keys) {
  for (FactSource& group : groups)
    if (group.keys == keys) {
      group.field.append(" ").append(field);
      return;
    }
  groups.push_back({std::string(field), std::string(keys)});
}

std::string sourcesText(const std::vector<FactSource>& sources) {
  std::vector<FactSource> groups;
  for (const FactSource& source : sources) addTo(groups, source.field, source.keys);
  std::string text;
  for (const FactSource& group : groups)
    text.append(text.empty() ? "" : "; ").append(group.keys).append(": ").append(group.field);
  return text;
}

std::string_view keysOf(const std::vector<FactSource>& sources, std::string_view column) {
  const auto at = std::find_if(sources.begin(), sources.end(),
                               [&](const FactSource& source) { return tellsOf(source, column); });
  return at == sources.end() ? std::string_view() : std::string_view(at->keys);
}

std::string asOwn(std::string_view keys) {
  std::string own(kOwnKey);
  if (!keys.empty()) own.append(" ").append(keys);
  return own;
}

std::string_view withoutOwn(std::string_view keys) {
  return isOwn(keys) ? withoutBlanks(keys.substr(kOwnKey.size())) : keys;
}

bool isOwn(std::string_view keys) {
  return keys == kOwnKey || (keys.starts_with(kOwnKey) && keys[kOwnKey.size()] == ' ');
}

}  // namespace tussock
