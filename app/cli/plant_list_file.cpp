// SPDX-License-Identifier: MIT
#include "app/cli/plant_list_file.h"

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

class Lines {
 public:
  Lines(const std::filesystem::path& path, const Catalogue& facts) : path_(path), facts_(facts) {}

  [[nodiscard]] ListedSpecies read(const std::string& line, std::size_t number) {
    const auto comma = line.find(',');
    const std::string name = trimmed(std::string_view(line).substr(0, comma));
    const auto [species, trouble] = speciesNamed(name, facts_);
    if (species == nullptr) fail(number, name, trouble);
    ListedSpecies listed{species->botanicalName, 0.0};
    if (comma == std::string::npos) return listed;
    std::string text = trimmed(std::string_view(line).substr(comma + 1));
    constexpr std::string_view kMatrix = "matrix";
    if (text.starts_with(kMatrix)) {
      listed.matrix = true;
      text = trimmed(std::string_view(text).substr(kMatrix.size()));
      if (text.empty()) return listed;
    }
    const auto share = shareFrom(text);
    if (!share)
      fail(number, text,
           "which is no share. Give it in per cent, such as 20 %, after the word matrix for a "
           "plant between the drifts.");
    listed.share = *share;
    if (listed.share > 1.0) noteOver(number, text);
    return listed;
  }
  [[nodiscard]] std::vector<std::string> takeNotes() { return std::move(notes_); }

 private:
  void noteOver(std::size_t line, const std::string& share) {
    notes_.push_back(fmt::format(
        "{}, line {}: '{}' is more than the whole; the shares of the list are taken in proportion. "
        "Give shares that come to 100 % together for just what you write.",
        path_.string(), line, share));
  }
  [[noreturn]] void fail(std::size_t line, const std::string& found,
                         const std::string& what) const {
    throw std::runtime_error(
        fmt::format("{}, line {}: '{}', {}", path_.string(), line, found, what));
  }
  const std::filesystem::path& path_;
  const Catalogue& facts_;
  std::vector<std::string> notes_;
};

}  // namespace

SpeciesByName speciesNamed(std::string_view name, const Catalogue& facts) {
  const auto found = facts.named(name);
  if (found.size() == 1) return {found.front(), {}};
  if (found.empty())
    return {nullptr, "which the plant facts do not know. Check the spelling of its name."};
  std::string names;
  for (const Species* species : found)
    names.append(names.empty() ? "" : " or ").append(species->botanicalName);
  return {nullptr, "which may mean " + names + ". Write the botanical name."};
}

PlantListFile readPlantList(const std::filesystem::path& path, const Catalogue& facts) {
  std::istringstream text(readFile(path));
  Lines lines(path, facts);
  std::vector<ListedSpecies> list;
  std::string line;
  for (std::size_t number = 1; std::getline(text, line); ++number) {
    line = trimmed(line);
    if (!line.empty() && line.front() != '#') list.push_back(lines.read(line, number));
  }
  if (list.empty())
    throw std::runtime_error(path.string() +
                             " names no species. Write a botanical or common name on each line.");
  return {std::move(list), lines.takeNotes()};
}

}  // namespace tussock
