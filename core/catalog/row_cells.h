// SPDX-License-Identifier: MIT
// The cells of one row by column name, read as what they should be. What cannot be read is noted
// and the row goes on, so that all its errors are told at once.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species_row.h"

namespace tussock {

[[nodiscard]] std::string_view trimmedCell(std::string_view text);  // without the blanks around it

class RowCells {
 public:
  // `line` is where the row begins, 0 for what is not from a file.
  RowCells(const CellText& cells, std::size_t line, std::string_view fileName,
           std::vector<CatalogueError>& errors)
      : cells_(cells), line_(line), fileName_(fileName), errors_(errors) {}

  [[nodiscard]] std::string_view text(std::string_view column) const { return cells_(column); }
  [[nodiscard]] std::string name(std::string_view column);  // must not be empty
  // Whole numbers from least to most; nothing, without an error, when the cell is empty.
  [[nodiscard]] std::optional<int> whole(std::string_view column, int least, int most);
  [[nodiscard]] std::optional<double> number(std::string_view column, double least, double most);
  // A length that must be there.
  [[nodiscard]] Length centimetres(std::string_view column, double least, double most);
  [[nodiscard]] std::optional<Rgb> colour(std::string_view column);

  template <NamedEnum E>
  [[nodiscard]] E word(std::string_view column, E whenEmpty) {
    const std::string_view cell = text(column);
    if (cell.empty()) return whenEmpty;
    const auto value = fromWord<E>(cell);
    if (!value) fail(column, "one of " + allWords<E>());
    return value.value_or(whenEmpty);
  }
  // Words joined with ';'.
  template <NamedEnum E>
  [[nodiscard]] std::vector<E> words(std::string_view column) {
    std::vector<E> result;
    for (const std::string& part : parts(column, ';')) {
      const auto value = fromWord<E>(part);
      if (value)
        result.push_back(*value);
      else
        return fail(column, "one or more of " + allWords<E>() + ", joined with ';'"),
               std::vector<E>{};
    }
    return result;
  }
  // The same, at least one.
  template <NamedEnum E>
  [[nodiscard]] std::vector<E> wordList(std::string_view column) {
    std::vector<E> result = words<E>(column);
    if (text(column).empty()) fail(column, "one or more of " + allWords<E>() + ", joined with ';'");
    return result;
  }
  // Cell split at the separator, blanks dropped, empty parts left out.
  [[nodiscard]] std::vector<std::string> parts(std::string_view column, char separator) const;

  void fail(std::string_view column, std::string expected);
  [[nodiscard]] bool failed() const { return !failed_.empty(); }
  // Whether two ends of a range can be compared: nothing is wrong with either alone.
  [[nodiscard]] bool sound(std::string_view low, std::string_view high) const;

 private:
  template <NamedEnum E>
  [[nodiscard]] static std::string allWords() {
    std::string all;
    for (const auto& [value, word] : EnumWords<E>::values)
      all.append(all.empty() ? "" : ", ").append(word);
    return all;
  }

  const CellText& cells_;
  std::size_t line_;
  std::string_view fileName_;
  std::vector<CatalogueError>& errors_;
  std::vector<std::string> failed_;  // columns
};

}  // namespace tussock
