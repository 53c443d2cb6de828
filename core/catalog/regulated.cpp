// SPDX-License-Identifier: MIT
#include "core/catalog/regulated.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace tussock {

namespace {

// United States Postal Service, Publication 28, Appendix B.
constexpr std::array<std::pair<std::string_view, std::string_view>, 51> kStates{
    {{"AL", "Alabama"},        {"AK", "Alaska"},         {"AZ", "Arizona"},
     {"AR", "Arkansas"},       {"CA", "California"},     {"CO", "Colorado"},
     {"CT", "Connecticut"},    {"DE", "Delaware"},       {"DC", "District of Columbia"},
     {"FL", "Florida"},        {"GA", "Georgia"},        {"HI", "Hawaii"},
     {"ID", "Idaho"},          {"IL", "Illinois"},       {"IN", "Indiana"},
     {"IA", "Iowa"},           {"KS", "Kansas"},         {"KY", "Kentucky"},
     {"LA", "Louisiana"},      {"ME", "Maine"},          {"MD", "Maryland"},
     {"MA", "Massachusetts"},  {"MI", "Michigan"},       {"MN", "Minnesota"},
     {"MS", "Mississippi"},    {"MO", "Missouri"},       {"MT", "Montana"},
     {"NE", "Nebraska"},       {"NV", "Nevada"},         {"NH", "New Hampshire"},
     {"NJ", "New Jersey"},     {"NM", "New Mexico"},     {"NY", "New York"},
     {"NC", "North Carolina"}, {"ND", "North Dakota"},   {"OH", "Ohio"},
     {"OK", "Oklahoma"},       {"OR", "Oregon"},         {"PA", "Pennsylvania"},
     {"RI", "Rhode Island"},   {"SC", "South Carolina"}, {"SD", "South Dakota"},
     {"TN", "Tennessee"},      {"TX", "Texas"},          {"UT", "Utah"},
     {"VT", "Vermont"},        {"VA", "Virginia"},       {"WA", "Washington"},
     {"WV", "West Virginia"},  {"WI", "Wisconsin"},      {"WY", "Wyoming"}}};

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
  const auto at = std::find_if(kStates.begin(), kStates.end(),
                               [&](const auto& one) { return one.first == state; });
  return at != kStates.end() && hasWord(species.regulated, at->second);
}

}  // namespace tussock
