// SPDX-License-Identifier: MIT
#include "core/sheets/cautions.h"

#include <algorithm>
#include <array>
#include <cctype>

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

bool irritates(std::string note) {
  std::transform(note.begin(), note.end(), note.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  static constexpr std::array<std::string_view, 5> kWords{"sap", "skin", "rash", "irritat",
                                                          "caustic"};
  return std::any_of(kWords.begin(), kWords.end(),
                     [&](std::string_view word) { return note.find(word) != std::string::npos; });
}

std::string join(const std::vector<std::string>& codes) {
  std::string out;
  const std::size_t shown = std::min(codes.size(), kMostNamed);
  for (std::size_t i = 0; i < shown; ++i) out += (i == 0 ? "" : ", ") + codes[i];
  if (codes.size() > shown) out += fmt::format(" and {} more", codes.size() - shown);
  return out;
}

std::string gloves(const std::vector<ScheduleRow>& rows) {
  std::vector<std::string> skin, eaten;
  for (const ScheduleRow& row : rows) {
    if (row.caution.empty()) continue;
    auto& list = irritates(row.caution) ? skin : eaten;
    if (std::find(list.begin(), list.end(), row.code) == list.end()) list.push_back(row.code);
  }
  std::string out;
  if (!skin.empty()) out += fmt::format(" Wear gloves: sap or skin caution for {}.", join(skin));
  if (!eaten.empty()) out += fmt::format(" Do not eat: caution noted for {}.", join(eaten));
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
      call, formatPlantSize(handDigWidth(yard), yard.settings.units), gloves(rows));
  std::vector<std::string> lines;
  for (const std::string& paragraph : {key, text})
    if (!paragraph.empty())
      for (std::string& line : wrapped(paragraph, TextSize::Note, Face::Regular, widthMm))
        lines.push_back(std::move(line));
  return lines;
}

}  // namespace tussock
