// SPDX-License-Identifier: MIT
#include "app/cli/plant_list_file.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <stdexcept>
#include <utility>

#include <fmt/format.h>

#include "app/cli/plant_list_line.h"
#include "core/catalog/resources.h"
#include "core/catalog/table.h"

namespace tussock {

namespace {

struct ShareRead {
  std::optional<double> share;
  bool ambiguous = false;  // 0.3 may mean a part of the whole
};

// "20 %" or "20": per cent. More than the whole is taken, as shares of lists are that come to more.
// A comma can only stand there for a decimal point.
ShareRead shareFrom(std::string text) {
  const bool marked = text.ends_with('%');
  if (marked) text = trimmed(std::string_view(text).substr(0, text.size() - 1));
  if (const auto comma = text.find(','); comma != std::string::npos) text[comma] = '.';
  double percent = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), percent);
  if (error != std::errc() || end != text.data() + text.size()) return {};
  constexpr double kMost = 1e6;  // no slip of the hand any more
  if (!(percent > 0.0 && percent <= kMost)) return {};
  return {percent / 100.0, !marked && percent <= 1.0};
}

struct ShareText {
  bool matrix = false;
  std::optional<double> share;
  bool ambiguous = false;
  std::string wrong;  // what is no share
};

// What follows the comma: "20 %", "matrix" or "matrix 40 %".
ShareText shareTextFrom(std::string text) {
  ShareText read;
  constexpr std::string_view kMatrix = "matrix";
  if (text.starts_with(kMatrix)) {
    read.matrix = true;
    text = trimmed(std::string_view(text).substr(kMatrix.size()));
    if (text.empty()) return read;
  }
  const ShareRead share = shareFrom(text);
  read.share = share.share, read.ambiguous = share.ambiguous;
  if (!read.share) read.wrong = text;
  return read;
}

// "Rudbeckia fulgida 70 %" as it was meant, with its comma; empty where no share ends the name.
std::string withComma(const std::string& name) {
  for (auto blank = name.find(' '); blank != std::string::npos; blank = name.find(' ', blank + 1)) {
    const std::string tail = trimmed(std::string_view(name).substr(blank));
    if (shareTextFrom(tail).wrong.empty()) return name.substr(0, blank) + ", " + tail;
  }
  return {};
}

class Lines {
 public:
  Lines(const std::filesystem::path& path, const Catalogue& facts) : path_(path), facts_(facts) {}

  void read(const std::string& text, std::size_t number) {
    const auto line = lines_.read(text);
    if (!line) return;
    if (line->badQuotes) return fault(number, line->name, kNoQuotes);
    const auto [species, trouble] = speciesNamed(line->name, facts_);
    if (species == nullptr) noteUnknown(number, line->name, trouble);
    const ShareText after = line->share ? shareTextFrom(*line->share) : ShareText{};
    if (!after.wrong.empty()) fault(number, after.wrong, kNoShare);
    if (after.ambiguous) fault(number, *line->share, whatToWrite(after));
    if (species == nullptr) return;
    list_.plants.push_back({species->botanicalName, after.share.value_or(0.0), after.matrix});
  }
  // Throws when any line is at fault.
  [[nodiscard]] PlantListFile finish() {
    if (!faults_.empty()) throw std::runtime_error(allFaults());
    if (list_.plants.empty())
      throw std::runtime_error(path_.string() +
                               " names no species. Write a botanical or common name on each line.");
    return std::move(list_);
  }

 private:
  static constexpr const char* kNoShare =
      "which is no share. Give it in per cent, such as 20 %, after the word matrix for a plant "
      "between the drifts.";
  static constexpr const char* kNoQuotes =
      "where a quotation mark is not closed, or stands inside a name. Leave it out.";

  // The share was read as per cent; as a part of the whole it is a hundred times as much.
  static std::string whatToWrite(const ShareText& read) {
    const char* matrix = read.matrix ? "matrix " : "";
    const double percent = 100.0 * *read.share;
    return fmt::format(
        "which may be a part of the whole or per cent. Write '{0}{1:g} %' or "
        "'{0}{2:g} %'.",
        matrix, 100.0 * percent, percent);
  }

  void noteUnknown(std::size_t line, const std::string& name, const std::string& trouble) {
    const std::string meant = withComma(name);
    fault(line, name,
          meant.empty() ? trouble
                        : fmt::format("which the plant facts do not know. Put a comma before the "
                                      "share: '{}'.",
                                      meant));
  }
  void fault(std::size_t line, const std::string& found, const std::string& what) {
    faults_.push_back(fmt::format("{}, line {}: '{}', {}", path_.string(), line, found, what));
  }
  [[nodiscard]] std::string allFaults() const {
    constexpr std::size_t kTold = 10;
    const std::size_t told = std::min(kTold, faults_.size());
    std::string text = fmt::format(
        "{}",
        fmt::join(faults_.begin(), faults_.begin() + static_cast<std::ptrdiff_t>(told), "\n"));
    if (faults_.size() > told)
      text += fmt::format("\nand {} more lines with faults.", faults_.size() - told);
    return text;
  }

  const std::filesystem::path& path_;
  const Catalogue& facts_;
  PlantListLines lines_;
  PlantListFile list_;
  std::vector<std::string> faults_;
};

}  // namespace

SpeciesByName speciesNamed(std::string_view name, const Catalogue& facts) {
  const auto found = facts.named(name);
  if (found.size() == 1) return {found.front(), {}};
  if (found.empty())
    return {nullptr, "which the plant facts do not know. Check the spelling of its name."};
  std::string names;
  for (const Species* species : found) {
    names.append(names.empty()             ? ""
                 : species == found.back() ? " or "
                                           : ", ")
        .append(species->botanicalName);
    if (!species->commonName.empty()) names.append(" (" + species->commonName + ")");
  }
  return {nullptr, "which may mean " + names + ". Write the botanical name."};
}

PlantListFile readPlantList(const std::filesystem::path& path, const Catalogue& facts) {
  const std::string whole = readFile(path);
  if (isUtf16(whole))
    throw std::runtime_error(path.string() +
                             " is saved as UTF-16, which cannot be read. Save it as UTF-8.");
  std::string_view text = whole;
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  Lines lines(path, facts);
  std::size_t number = 0;
  for (const std::string_view one : linesOf(text)) {
    const std::string line = PlantListLines::withoutComment(one);
    ++number;
    if (!trimmed(line).empty()) lines.read(line, number);
  }
  return lines.finish();
}

}  // namespace tussock
