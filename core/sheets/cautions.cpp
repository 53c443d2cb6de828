// SPDX-License-Identifier: MIT
#include "core/sheets/cautions.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <span>

#include <fmt/format.h>

#include "core/sheets/text_width.h"

namespace tussock {

namespace {

constexpr std::size_t kMostNamed = 8;

// State laws ask for 18 or 24 in to each side of a mark; the wider holds where none is recorded.
Length handDigWidth(const Yard& yard) {
  Length widest = Length::inches(24);
  for (const BuriedLine& line : yard.buriedLines) widest = std::max(widest, line.handDigWidth);
  return widest;
}

bool speaksOf(std::span<const std::string_view> words, std::string note) {
  std::transform(note.begin(), note.end(), note.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return std::any_of(words.begin(), words.end(),
                     [&](std::string_view word) { return note.find(word) != std::string::npos; });
}

bool hurtsHands(const ScheduleRow& row) {
  static constexpr std::array<std::string_view, 10> kWords{
      "sap", "skin", "rash", "irritat", "caustic", "glove", "cut ", "prickl", "thorn", "spin"};
  return speaksOf(kWords, row.caution) || speaksOf(kWords, row.handling);
}

// A note that tells of skin alone is no reason against eating; every other is.
bool harmsEaten(const ScheduleRow& row) {
  static constexpr std::array<std::string_view, 6> kSkin{"sap",     "skin",    "rash",
                                                         "irritat", "caustic", "milky"};
  static constexpr std::array<std::string_view, 4> kEaten{"toxic", "eat", "poison", "raw"};
  return !row.caution.empty() && (!speaksOf(kSkin, row.caution) || speaksOf(kEaten, row.caution));
}

std::string join(const std::vector<std::string>& codes) {
  std::string out;
  const std::size_t shown = std::min(codes.size(), kMostNamed);
  for (std::size_t i = 0; i < shown; ++i) out += (i == 0 ? "" : ", ") + codes[i];
  if (codes.size() > shown) out += fmt::format(" and {} more", codes.size() - shown);
  return out;
}

std::vector<std::string> codesWhere(const std::vector<ScheduleRow>& rows,
                                    bool (*is)(const ScheduleRow&)) {
  std::vector<std::string> codes;
  for (const ScheduleRow& row : rows)
    if (is(row) && std::find(codes.begin(), codes.end(), row.code) == codes.end())
      codes.push_back(row.code);
  return codes;
}

std::string ofPlants(const std::vector<ScheduleRow>& rows) {
  const auto hands = codesWhere(rows, hurtsHands), eaten = codesWhere(rows, harmsEaten);
  const auto ruled =
      codesWhere(rows, [](const ScheduleRow& row) { return !row.regulated.empty(); });
  std::string out;
  if (!hands.empty()) out += fmt::format(" Wear gloves: sap or skin caution for {}.", join(hands));
  if (!eaten.empty()) out += fmt::format(" Do not eat: caution noted for {}.", join(eaten));
  if (!ruled.empty())
    out +=
        fmt::format(" Regulated in some places: {}; ask your state before planting.", join(ruled));
  return out;
}

}  // namespace

std::vector<std::string> cautionLines(const Yard& yard, const std::vector<ScheduleRow>& rows,
                                      const std::string& key, double widthMm) {
  const bool american =
      !yard.settings.state.empty() || yard.settings.units == UnitSystem::FeetInches;
  const std::string call =
      american ? "in the US call 811" : "ask who locates them (in the US call 811)";
  const std::string text = fmt::format(
      "Before digging have buried lines marked: {}, and wait for the marks; private lines are not "
      "marked for you. Dig by hand within {} of any mark.{} Local codes and licensed practice "
      "govern.",
      call, formatPlantSize(handDigWidth(yard), yard.settings.units), ofPlants(rows));
  std::vector<std::string> lines;
  for (const std::string& paragraph : {key, text})
    if (!paragraph.empty())
      for (std::string& line : wrapped(paragraph, TextSize::Note, Face::Regular, widthMm))
        lines.push_back(std::move(line));
  return lines;
}

}  // namespace tussock
