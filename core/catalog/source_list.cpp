// SPDX-License-Identifier: MIT
#include "core/catalog/source_list.h"

#include <algorithm>
#include <utility>

namespace tussock {

namespace {

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

}  // namespace

std::optional<std::vector<FactSource>> sourcesFrom(std::string_view cell) {
  std::vector<FactSource> sources;
  while (!cell.empty()) {
    std::string_view group = withoutBlanks(takeUpTo(cell, ';'));
    if (group.empty()) continue;
    if (group.find(':') == std::string_view::npos) return std::nullopt;
    const std::string keys(withoutBlanks(takeUpTo(group, ':')));
    if (keys.empty()) return std::nullopt;
    while (!group.empty())
      if (const std::string_view field = withoutBlanks(takeUpTo(group, ' ')); !field.empty())
        sources.push_back({std::string(field), keys});
  }
  return sources;
}

std::string sourcesText(const std::vector<FactSource>& sources) {
  std::vector<std::pair<std::string, std::string>> groups;
  for (const FactSource& source : sources) {
    auto at = std::find_if(groups.begin(), groups.end(),
                           [&](const auto& group) { return group.first == source.keys; });
    if (at == groups.end()) at = groups.insert(groups.end(), {source.keys, ""});
    at->second.append(" ").append(source.field);
  }
  std::string text;
  for (const auto& [keys, fields] : groups)
    text.append(text.empty() ? "" : "; ").append(keys).append(":").append(fields);
  return text;
}

std::string_view keysOf(const std::vector<FactSource>& sources, std::string_view column) {
  const auto at = std::find_if(sources.begin(), sources.end(),
                               [&](const FactSource& source) { return source.field == column; });
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
