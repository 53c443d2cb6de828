// SPDX-License-Identifier: MIT
#include "core/catalog/search.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <utility>

#include "core/catalog/season_weeks.h"

namespace tussock {

namespace {

// Design heights that people call tall and low; common practice.
constexpr Length kTall = Length::centimetres(120);
constexpr Length kLow = Length::centimetres(45);

// How a word is met goes before where: in the genus, another name, the family, or else.
constexpr std::uint8_t kWhole = 12, kStart = 8, kInside = 4;
constexpr std::uint8_t kGenus = 3, kName = 2, kFamily = 1, kRest = 0;

// Unicode's Latin-1 Supplement from U+00C0 to U+00FF as plain letters; a blank where there is none.
constexpr std::string_view kPlainLatin =
    "aaaaaaaceeeeiiiidnooooo ouuuuy saaaaaaaceeeeiiiidnooooo ouuuuy y";

char lowered(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool isWordLetter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<signed char>(c) < 0;
}

std::string plain(std::string_view text) {
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool latin = text[i] == '\xC3' && i + 1 < text.size();
    if (latin) {
      result += kPlainLatin[static_cast<unsigned char>(text[++i]) & 0x3FU];
    } else if (text[i] == '\'') {
      continue;  // "St. John's wort" is typed as johns
    } else {
      const char c = lowered(text[i]);
      result += isWordLetter(c) ? c : ' ';
    }
  }
  return result;
}

using Marks = std::vector<std::string>;

void mark(Marks& marks, std::string_view word) {
  marks.emplace_back(word);
}

void markNeeds(Marks& marks, const Species& species) {
  for (const SunNeed need : species.sun)
    mark(marks, need == SunNeed::Full ? "sun" : wordOf(need)), mark(marks, wordOf(need));
  for (const Moisture moisture : species.moisture) mark(marks, wordOf(moisture));
}

// Seasons by whole months: March to May, June to August, September to November, and half a year
// later south of the equator.
void markSeasons(Marks& marks, const Species& species, Hemisphere where) {
  auto blooms = [&](int first) {
    for (int month = first; month < first + 3; ++month)
      if (species.bloomsInMonth(where == Hemisphere::North ? month : halfAYearFromMonth(month)))
        return true;
    return false;
  };
  if (blooms(3)) mark(marks, "spring");
  if (blooms(6)) mark(marks, "summer");
  if (blooms(9)) mark(marks, "fall"), mark(marks, "autumn");
}

constexpr std::array<std::string_view, 12> kMonthWords{
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};

// Whole and by its first three letters; September also by four.
void markMonths(Marks& marks, const Species& species) {
  for (int month = 1; month <= 12; ++month) {
    if (!species.bloomsInMonth(month)) continue;
    const std::string_view word = kMonthWords[static_cast<std::size_t>(month - 1)];
    mark(marks, word), mark(marks, word.substr(0, 3));
    if (month == 9) mark(marks, word.substr(0, 4));
  }
}

// "butterfly" of butterflies, "finch" of finches, "bee" of bees; any other word as it is.
std::string singular(const std::string& word) {
  constexpr std::size_t kLeast = 4;
  if (word.size() < kLeast || !word.ends_with('s') || word.ends_with("ss")) return word;
  if (word.ends_with("ies")) return word.substr(0, word.size() - 3) + 'y';
  for (const char* ending : {"ches", "shes", "xes", "sses"})
    if (word.ends_with(ending)) return word.substr(0, word.size() - 2);
  return word.substr(0, word.size() - 1);
}

// "monarch", "butterfly": whole words of what lives on it, one for all, of four letters and more.
void markGuests(Marks& marks, const Species& species) {
  constexpr std::size_t kLeast = 4;
  for (const std::string& word : searchWords(species.hostNote + ' ' + species.nectarNote))
    if (word.size() >= kLeast) mark(marks, singular(word));
}

// Each once: an index holds a species once a word.
void dropDoubles(Marks& marks) {
  std::sort(marks.begin(), marks.end());
  marks.erase(std::unique(marks.begin(), marks.end()), marks.end());
}

Marks marksOf(const Species& species, Hemisphere where) {
  Marks marks;
  if (species.height() >= kTall) mark(marks, "tall");
  if (species.height() <= kLow) mark(marks, "low"), mark(marks, "short");
  if (species.winterLeaf == WinterLeaf::Evergreen) mark(marks, "evergreen");
  markNeeds(marks, species);
  markSeasons(marks, species, where);
  if (species.usualLayer() == Layer::Ground) mark(marks, "groundcover");
  markMonths(marks, species);
  markGuests(marks, species);
  dropDoubles(marks);
  return marks;
}

// Rushes are kept with the sedges, as grass-like plants, but nobody looks for them by that name.
std::string_view formWord(const Species& species) {
  return species.family == "Juncaceae" ? "rush" : wordOf(species.habit);
}

struct PlacedWord {
  std::string word;
  std::uint8_t place;
};

// The best place of a word first.
std::vector<PlacedWord> wordsOf(const Species& species) {
  std::string names = species.botanicalName + ' ' + species.commonName + ' ' + species.spanishName;
  for (const auto* others : {&species.synonyms, &species.otherNames})
    for (const std::string& name : *others) names.append(" ").append(name);
  std::vector<PlacedWord> words;
  const auto add = [&](const std::string& text, std::uint8_t place) {
    for (std::string& word : searchWords(text)) words.push_back({std::move(word), place});
  };
  add(species.genus, kGenus);
  add(names + ' ' + species.usdaSymbol, kName);
  add(species.family, kFamily);
  add(species.flowerColourWord + ' ' + std::string(formWord(species)), kRest);
  return words;
}

// With the fewest letters that stand for it.
struct JoinedWord {
  std::string word;
  std::size_t least;
};

// "beebalm" of "bee balm", "joepyeweed" of "joe-pye weed": each two to four neighbours of each
// common name. One letter beyond the first word is not yet the next: "asters" is not "aster suave".
std::vector<JoinedWord> joinedWordsOf(const Species& species) {
  constexpr std::size_t kMost = 4, kBeyond = 2;
  std::vector<JoinedWord> joined;
  const auto add = [&](const std::string& name) {
    const std::vector<std::string> words = searchWords(name);
    for (std::size_t i = 0; i < words.size(); ++i) {
      std::string one = words[i];
      for (std::size_t j = i + 1; j < words.size() && j < i + kMost; ++j)
        joined.push_back({one += words[j], words[i].size() + kBeyond});
    }
  };
  add(species.commonName);
  add(species.spanishName);
  for (const std::string& name : species.otherNames) add(name);
  return joined;
}

}  // namespace

std::vector<std::string> searchWords(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : plain(text) + " ") {
    if (c != ' ') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  return words;
}

SearchIndex::SearchIndex(const std::vector<Species>& species, Hemisphere where)
    : size_(species.size()) {
  ByWord words, joined, marks;
  std::unordered_map<std::string, std::size_t> least;
  const auto note = [](ByWord& by, std::string word, const Posting& posting) {
    auto& postings = by[std::move(word)];
    if (postings.empty() || postings.back().species != posting.species) postings.push_back(posting);
  };
  for (std::uint32_t i = 0; i < species.size(); ++i) {
    for (auto& [word, place] : wordsOf(species[i])) note(words, std::move(word), {i, place});
    for (auto& [word, letters] : joinedWordsOf(species[i])) {
      auto& fewest = least.try_emplace(word, letters).first->second;
      fewest = std::min(fewest, letters);
      note(joined, std::move(word), {i, kName});
    }
    for (std::string& word : marksOf(species[i], where)) note(marks, std::move(word), {i, kRest});
  }
  words_ = inOrder(std::move(words));
  joined_ = inOrder(std::move(joined));
  for (Entry& entry : joined_) entry.least = least.at(entry.word);
  marks_ = inOrder(std::move(marks));
}

std::vector<SearchIndex::Entry> SearchIndex::inOrder(ByWord words) {
  std::vector<Entry> entries;
  entries.reserve(words.size());
  for (auto& [word, postings] : words) entries.push_back({word, std::move(postings), 0});
  std::ranges::sort(entries, {}, &Entry::word);
  return entries;
}

void SearchIndex::takeStarts(const std::vector<Entry>& entries, const std::string& word,
                             Scores& scores) {
  const auto before = [](const Entry& entry, const std::string& text) { return entry.word < text; };
  for (auto at = std::lower_bound(entries.begin(), entries.end(), word, before);
       at != entries.end() && at->word.starts_with(word); ++at)
    if (at->word == word || word.size() >= at->least)
      take(*at, at->word == word ? kWhole : kStart, scores);
}

void SearchIndex::take(const Entry& entry, std::uint8_t met, Scores& scores) {
  for (const Posting& posting : entry.postings) {
    std::uint8_t& score = scores[posting.species];
    score = std::max(score, static_cast<std::uint8_t>(met + posting.place));
  }
}

const SearchIndex::Entry* SearchIndex::entryOf(const std::vector<Entry>& entries,
                                               const std::string& word) {
  const auto found = std::ranges::lower_bound(entries, word, {}, &Entry::word);
  return found != entries.end() && found->word == word ? &*found : nullptr;
}

// What ends in s is a plural where the word without it is known: of "asters", not of "iris".
std::vector<std::string> SearchIndex::formsOf(const std::string& word) const {
  std::vector<std::string> forms{word};
  const auto offer = [&](std::string form) {
    const bool known = entryOf(words_, form) || entryOf(joined_, form) || entryOf(marks_, form);
    if (known && std::ranges::find(forms, form) == forms.end()) forms.push_back(std::move(form));
  };
  offer(singular(word));
  constexpr std::size_t kLeast = 6;  // "irises", not "lilies" (LILI is a USDA symbol)
  if (word.size() >= kLeast && word.ends_with("es") && !word.ends_with("ies"))
    offer(word.substr(0, word.size() - 2));
  return forms;
}

void SearchIndex::takeForm(const std::string& word, Scores& scores) const {
  constexpr std::size_t kLongEnoughInside = 4;
  takeStarts(words_, word, scores);
  takeStarts(joined_, word, scores);
  // What a plant is (tall, sun) does not go before a name that begins so (sunflower).
  if (const Entry* mark = entryOf(marks_, word)) take(*mark, kStart, scores);
  if (word.size() < kLongEnoughInside) return;
  for (const Entry& entry : words_)
    if (entry.word.find(word) != std::string::npos) take(entry, kInside, scores);
}

SearchIndex::Scores SearchIndex::scoresOf(const std::string& word) const {
  Scores scores(size_, 0);
  for (const std::string& form : formsOf(word)) takeForm(form, scores);
  return scores;
}

// "part shade" and "part sun" are one class, not two to be met together.
static std::vector<std::string> wordsAsked(std::string_view text) {
  std::vector<std::string> words = searchWords(text);
  for (std::size_t i = 1; i < words.size(); ++i)
    if ((words[i - 1] == "part" || words[i - 1] == "partial") &&
        (words[i] == "shade" || words[i] == "sun")) {
      words[i - 1] = "part";
      words.erase(words.begin() + static_cast<std::ptrdiff_t>(i));
    }
  return words;
}

std::vector<std::size_t> SearchIndex::find(std::string_view text) const {
  std::vector<std::size_t> found(size_);
  std::iota(found.begin(), found.end(), std::size_t{0});
  std::vector<int> totals(size_, 0);
  for (const std::string& word : wordsAsked(text)) {
    const Scores scores = scoresOf(word);
    std::erase_if(found, [&](std::size_t i) { return scores[i] == 0; });
    for (const std::size_t i : found) totals[i] += scores[i];
  }
  std::stable_sort(found.begin(), found.end(),
                   [&](std::size_t a, std::size_t b) { return totals[a] > totals[b]; });
  return found;
}

}  // namespace tussock
