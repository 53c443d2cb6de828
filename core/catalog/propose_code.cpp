// SPDX-License-Identifier: MIT
#include <algorithm>

#include <fmt/format.h>

#include "core/catalog/fit.h"

namespace tussock {

namespace {

constexpr std::string_view kHybridSign = "×";

// Up to three letters A to Z; hyphens and accents fall out.
std::string threeLetters(std::string_view word) {
  std::string letters;
  for (const char c : word) {
    if (letters.size() == 3) break;
    if (c >= 'a' && c <= 'z') letters += static_cast<char>(c - 'a' + 'A');
    if (c >= 'A' && c <= 'Z') letters += c;
  }
  return letters;
}

std::vector<std::string_view> wordsOf(std::string_view name) {
  std::vector<std::string_view> words;
  while (!name.empty()) {
    const std::string_view word = name.substr(0, name.find(' '));
    name.remove_prefix(std::min(name.size(), word.size() + 1));
    if (!word.empty() && word != kHybridSign && word != "x") words.push_back(word);
  }
  return words;
}

std::string sixLetters(std::string_view botanicalName) {
  std::string code;
  for (const std::string_view word : wordsOf(botanicalName)) {
    code += threeLetters(word);
    if (code.size() >= 6) break;
  }
  code.resize(6, 'X');  // short names are filled up
  return code;
}

}  // namespace

std::string proposeCode(std::string_view botanicalName, const std::vector<std::string>& taken) {
  const std::string code = sixLetters(botanicalName);
  auto isFree = [&](const std::string& candidate) {
    return std::find(taken.begin(), taken.end(), candidate) == taken.end();
  };
  if (isFree(code)) return code;
  for (std::size_t number = 2;; ++number) {
    const std::string digits = fmt::format("{}", number);
    const std::size_t kept = digits.size() < code.size() ? code.size() - digits.size() : 0;
    std::string candidate = code.substr(0, kept) + digits;
    if (isFree(candidate)) return candidate;
  }
}

}  // namespace tussock
