// SPDX-License-Identifier: MIT
#include "app/cli/plant_list_file.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <sstream>
#include <stdexcept>
#include <utility>

#include <fmt/format.h>

#include "core/catalog/resources.h"

namespace tussock {

namespace {

std::string trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r");
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(" \t\r") - first + 1));
}

// "20 %" or "20": per cent. More than the whole is taken, as shares of lists are that come to more.
std::optional<double> shareFrom(std::string text) {
  if (text.ends_with('%')) text = trimmed(std::string_view(text).substr(0, text.size() - 1));
  double percent = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), percent);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  constexpr double kMost = 1e6;  // no slip of the hand any more
  if (!(percent > 0.0 && percent <= kMost)) return std::nullopt;
  return percent / 100.0;
}

struct ShareText {
  bool matrix = false;
  std::optional<double> share;
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
  read.share = shareFrom(text);
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

// Up to a # at the start or after a blank.
std::string withoutComment(const std::string& line) {
  for (auto mark = line.find('#'); mark != std::string::npos; mark = line.find('#', mark + 1))
    if (mark == 0 || line[mark - 1] == ' ' || line[mark - 1] == '\t')
      return trimmed(std::string_view(line).substr(0, mark));
  return trimmed(line);
}

class Lines {
 public:
  Lines(const std::filesystem::path& path, const Catalogue& facts) : path_(path), facts_(facts) {}

  void read(const std::string& line, std::size_t number) {
    const auto comma = line.find(',');
    const std::string name = trimmed(std::string_view(line).substr(0, comma));
    const auto [species, trouble] = speciesNamed(name, facts_);
    const ShareText after = comma == std::string::npos
                                ? ShareText{}
                                : shareTextFrom(trimmed(std::string_view(line).substr(comma + 1)));
    if (species == nullptr) noteUnknown(number, name, trouble);
    const bool nothing = comma != std::string::npos && !after.matrix && !after.share;
    if (nothing || !after.wrong.empty()) fault(number, after.wrong, kNoShare);
    if (species == nullptr) return;
    if (after.share > 1.0) noteOver(number, trimmed(std::string_view(line).substr(comma + 1)));
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

  void noteUnknown(std::size_t line, const std::string& name, const std::string& trouble) {
    const std::string meant = withComma(name);
    fault(line, name,
          meant.empty() ? trouble
                        : fmt::format("which the plant facts do not know. Put a comma before the "
                                      "share: '{}'.",
                                      meant));
  }
  void noteOver(std::size_t line, const std::string& share) {
    list_.notes.push_back(fmt::format(
        "{}, line {}: '{}' is more than the whole; the shares of the list are taken in proportion. "
        "Give shares that come to 100 % together for just what you write.",
        path_.string(), line, share));
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
  std::istringstream text(readFile(path));
  Lines lines(path, facts);
  std::string line;
  for (std::size_t number = 1; std::getline(text, line); ++number) {
    line = withoutComment(line);
    if (!line.empty()) lines.read(line, number);
  }
  return lines.finish();
}

}  // namespace tussock
