// SPDX-License-Identifier: MIT
#include "core/catalog/source_names.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include "core/catalog/resources.h"

namespace tussock {

namespace {

constexpr std::string_view kMark = "**", kAfter = "** - ";

// Line ends and runs of blanks as one blank.
std::string onOneLine(std::string_view text) {
  std::string line;
  for (const char c : text) {
    const bool blank = c == ' ' || c == '\n' || c == '\r' || c == '\t';
    if (!blank)
      line += c;
    else if (!line.empty() && line.back() != ' ')
      line += ' ';
  }
  while (line.ends_with(' ')) line.pop_back();
  return line;
}

std::size_t endOfEntry(std::string_view markdown, std::size_t from) {
  std::size_t end = markdown.size();
  for (const std::string_view next : std::array<std::string_view, 4>{"**", "\n- ", "\n\n", "\n#"})
    end = std::min(end, markdown.find(next, from));
  return end;
}

}  // namespace

SourceNames readSourceNames(std::string_view markdown) {
  SourceNames names;
  for (std::size_t at = markdown.find(kMark); at != std::string_view::npos;) {
    const std::size_t key = at + kMark.size();
    const std::size_t after = markdown.find(kMark, key);
    if (after == std::string_view::npos) break;
    at = markdown.find(kMark, after + kMark.size());
    if (markdown.substr(after, kAfter.size()) != kAfter) continue;
    const std::size_t from = after + kAfter.size();
    names.emplace(markdown.substr(key, after - key),
                  onOneLine(markdown.substr(from, endOfEntry(markdown, from) - from)));
  }
  return names;
}

std::string shortTitle(std::string_view explanation) {
  constexpr std::size_t kMost = 36;
  std::size_t end = explanation.size();
  for (const std::string_view mark : {" (", "; ", ": ", "@"})
    end = std::min(end, explanation.find(mark));
  // A full stop ends a sentence; after a capital it is an initial's.
  for (std::size_t at = explanation.find(". "); at < end; at = explanation.find(". ", at + 1))
    if (at > 0 && explanation[at - 1] >= 'a' && explanation[at - 1] <= 'z') end = at;
  if (end > kMost) {
    const std::size_t before = explanation.rfind(", ", kMost), after = explanation.find(", ");
    end = std::min(end, before != std::string_view::npos ? before : after);
  }
  while (end > 0 && (explanation[end - 1] == '.' || explanation[end - 1] == ' ')) --end;
  return std::string(explanation.substr(0, end));
}

const SourceNames& shippedSourceNames() {
  static const SourceNames names = [] {
    try {
      return readSourceNames(readFile(resourceFolder() / "plants-sources.md"));
    } catch (const std::runtime_error&) {
      return SourceNames{};  // the keys alone are shown then
    }
  }();
  return names;
}

}  // namespace tussock
