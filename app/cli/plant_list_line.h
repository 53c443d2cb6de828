// SPDX-License-Identifier: MIT
// A line of a plant list, as it is typed or as a spreadsheet saves it: a name and a share, parted
// by a comma, a semicolon or a tab, in quotation marks or not; and the heading a table may have.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tussock {

struct PlantListLine {
  std::string name;
  std::optional<std::string> share;  // as it stands; none where nothing does
  bool badQuotes = false;
};

class PlantListLines {
 public:
  // Without its comment; empty where nothing else stands there.
  [[nodiscard]] static std::string withoutComment(std::string_view line);
  // Nothing for a heading, which is looked for in the first line only, and where nothing stands
  // between the separators.
  [[nodiscard]] std::optional<PlantListLine> read(const std::string& line);

 private:
  std::vector<std::size_t> names_;  // columns, the first that is filled counts
  std::optional<char> heading_;     // what parts its columns, and so those of the lines after it
  bool begun_ = false;

  [[nodiscard]] bool takeHeading(const std::vector<std::string>& cells);
  [[nodiscard]] bool isName(std::size_t column, const PlantListLine& read) const;
};

[[nodiscard]] std::string trimmed(std::string_view text);

}  // namespace tussock
