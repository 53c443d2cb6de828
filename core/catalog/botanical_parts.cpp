// SPDX-License-Identifier: MIT
#include "core/catalog/botanical_parts.h"

#include <algorithm>
#include <array>

namespace tussock {

namespace {

bool isUprightWord(std::string_view word) {
  static constexpr std::array<std::string_view, 6> kWords{"var.", "subsp.", "f.",
                                                          "sp.",  "spp.",   "×"};
  return std::find(kWords.begin(), kWords.end(), word) != kWords.end();
}

}  // namespace

std::vector<BotanicalPart> botanicalParts(std::string_view name) {
  std::vector<BotanicalPart> parts;
  bool quoted = false;
  while (!name.empty()) {
    const std::size_t end = std::min(name.find(' '), name.size());
    const std::string word(name.substr(0, end));
    name.remove_prefix(std::min(end + 1, name.size()));
    if (word.empty()) continue;
    quoted = quoted || word.front() == '\'';
    const bool italic = !quoted && !isUprightWord(word);
    if (word.back() == '\'') quoted = false;
    if (!parts.empty() && parts.back().italic == italic) {
      parts.back().text += " " + word;
    } else {
      parts.push_back({word, italic});
    }
  }
  return parts;
}

}  // namespace tussock
