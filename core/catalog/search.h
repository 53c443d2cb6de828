// SPDX-License-Identifier: MIT
// Finding species by words, through an index of the words that occur: made once, then only asked.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/catalog/species.h"
#include "core/model/settings.h"

namespace tussock {

// Lower case without accents, split at blanks, hyphens and other marks.
[[nodiscard]] std::vector<std::string> searchWords(std::string_view text);

class SearchIndex {
 public:
  SearchIndex(const std::vector<Species>& species, Hemisphere where);

  // Positions of the species that meet every word, best first, equal ones in the order given. A
  // whole word counts most, then the start of one, then the inside of one for four letters and
  // more; alike in that, the genus, then the other names, the family, and the rest. What the plant
  // is (tall, dry, fall) is met whole and counts as a start in the rest. A plural also finds what
  // the one finds (bees, asters), where that is a word that occurs. Two to four words of a common
  // name may be written as one (beebalm, joepyeweed), from two letters of the second on. No words
  // find all.
  [[nodiscard]] std::vector<std::size_t> find(std::string_view text) const;

 private:
  struct Posting {
    std::uint32_t species = 0;
    std::uint8_t place = 0;  // the more, the nearer the name
  };
  struct Entry {
    std::string word;
    std::vector<Posting> postings;
    std::size_t least = 0;  // letters that its start must have to stand for it
  };
  using Scores = std::vector<std::uint8_t>;

  using ByWord = std::unordered_map<std::string, std::vector<Posting>>;
  static std::vector<Entry> inOrder(ByWord words);
  static void takeStarts(const std::vector<Entry>& entries, const std::string& word,
                         Scores& scores);
  static void take(const Entry& entry, std::uint8_t met, Scores& scores);
  // Null where no entry is that word.
  static const Entry* entryOf(const std::vector<Entry>& entries, const std::string& word);
  [[nodiscard]] std::vector<std::string> formsOf(const std::string& word) const;
  void takeForm(const std::string& word, Scores& scores) const;
  [[nodiscard]] Scores scoresOf(const std::string& word) const;

  std::size_t size_ = 0;
  std::vector<Entry> words_;   // in order
  std::vector<Entry> joined_;  // in order: words of a common name as one
  std::vector<Entry> marks_;   // found whole only
};

}  // namespace tussock
