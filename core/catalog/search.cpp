// SPDX-License-Identifier: MIT
#include "core/catalog/search.h"

#include <algorithm>

namespace tussock {

namespace {

// Design heights that people call tall and low; common practice.
constexpr Length kTall = Length::centimetres(120);
constexpr Length kLow = Length::centimetres(45);

char lowered(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::string plain(std::string_view text) {
  std::string result;
  for (const char c : text) result += c == '-' ? ' ' : lowered(c);
  return result;
}

void mark(std::string& text, std::string_view word) {
  text.append(" =").append(word);
}

void markNeeds(std::string& text, const Species& species) {
  for (const SunNeed need : species.sun)
    mark(text, need == SunNeed::Full ? "sun" : wordOf(need)), mark(text, wordOf(need));
  for (const Moisture moisture : species.moisture) mark(text, wordOf(moisture));
}

// Seasons by whole months, north of the equator: March to May, June to August, September to
// November.
void markSeasons(std::string& text, const Species& species) {
  auto blooms = [&](int first) {
    for (int month = first; month < first + 3; ++month)
      if (species.bloomsInMonth(month)) return true;
    return false;
  };
  if (blooms(3)) mark(text, "spring");
  if (blooms(6)) mark(text, "summer");
  if (blooms(9)) mark(text, "fall"), mark(text, "autumn");
}

bool isMark(std::string_view text, std::string_view word) {
  std::string marked = " =";
  marked.append(word).append(" ");
  return text.find(marked) != std::string_view::npos;
}

std::optional<int> scoreOf(std::string_view text, const std::string& word) {
  constexpr std::size_t kLongEnoughInside = 4;
  if (text.starts_with(" " + word)) return 4;
  if (text.find(" " + word) != std::string_view::npos) return 3;
  if (isMark(text, word)) return 2;
  if (word.size() >= kLongEnoughInside && text.find(word) != std::string_view::npos) return 1;
  return std::nullopt;
}

}  // namespace

std::string searchTextOf(const Species& species) {
  std::string text;
  for (const std::string& part :
       {species.botanicalName, species.commonName, species.family, species.flowerColourWord,
        std::string(wordOf(species.habit)), species.usdaSymbol})
    text.append(" ").append(plain(part));
  if (species.height() >= kTall) mark(text, "tall");
  if (species.height() <= kLow) mark(text, "low");
  markNeeds(text, species);
  markSeasons(text, species);
  return text + " ";
}

std::vector<std::string> searchWords(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : plain(text) + " ") {
    if (c != ' ' && c != '\t') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  return words;
}

std::optional<int> searchScore(std::string_view searchText, const std::vector<std::string>& words) {
  int score = 0;
  for (const std::string& word : words) {
    const auto one = scoreOf(searchText, word);
    if (!one) return std::nullopt;
    score += *one;
  }
  return score;
}

}  // namespace tussock
