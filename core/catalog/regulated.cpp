// SPDX-License-Identifier: MIT
#include "core/catalog/regulated.h"

#include <cctype>

#include "core/catalog/native_record.h"

namespace tussock {

namespace {

bool isLetter(char c) {
  return std::isalpha(static_cast<unsigned char>(c)) != 0;
}

bool hasWord(std::string_view text, std::string_view word) {
  for (std::size_t at = text.find(word); at != std::string_view::npos;
       at = text.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    const bool begins = at == 0 || !isLetter(text[at - 1]);
    const bool ends = end == text.size() || !isLetter(text[end]);
    const bool west = word == "Virginia" && text.substr(0, at).ends_with("West ");
    if (begins && ends && !west) return true;
  }
  return false;
}

}  // namespace

bool isRegulatedIn(const Species& species, std::string_view state) {
  if (state.empty() || species.regulated.empty()) return false;
  if (hasWord(species.regulated, state)) return true;
  const std::string_view name = stateName(state);
  return !name.empty() && hasWord(species.regulated, name);
}

}  // namespace tussock
