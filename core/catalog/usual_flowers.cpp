// SPDX-License-Identifier: MIT
#include "core/catalog/usual_flowers.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/catalog/search.h"

namespace tussock {

namespace {

struct UsualColour {
  std::string_view word;
  Rgb colour;
};
constexpr std::array<UsualColour, 17> kUsualColours{{{"blue", {0x86, 0x90, 0xD3}},
                                                     {"bronze", {0xA9, 0x74, 0x4F}},
                                                     {"brown", {0x8B, 0x73, 0x40}},
                                                     {"cream", {0xF3, 0xED, 0xD6}},
                                                     {"gold", {0xC8, 0x96, 0x3E}},
                                                     {"green", {0xA9, 0xA6, 0x6A}},
                                                     {"lavender", {0xC3, 0xBD, 0xDD}},
                                                     {"magenta", {0xA5, 0x32, 0x87}},
                                                     {"maroon", {0x62, 0x34, 0x35}},
                                                     {"orange", {0xF0, 0x82, 0x2B}},
                                                     {"pink", {0xD2, 0x8C, 0xB6}},
                                                     {"purple", {0x8E, 0x5F, 0xA8}},
                                                     {"red", {0xC8, 0x24, 0x2C}},
                                                     {"tan", {0xC2, 0xB0, 0x7C}},
                                                     {"violet", {0x8A, 0x7F, 0xC0}},
                                                     {"white", {0xF6, 0xF3, 0xEE}},
                                                     {"yellow", {0xF3, 0xC6, 0x21}}}};

const UsualColour* usualColourIn(std::string_view words) {
  for (const std::string& word : searchWords(words))
    if (const auto at = std::ranges::find(kUsualColours, word, &UsualColour::word);
        at != kUsualColours.end())
      return &*at;
  return nullptr;
}

}  // namespace

std::optional<Rgb> usualFlowerColour(std::string_view words) {
  const UsualColour* usual = usualColourIn(words);
  return usual ? std::optional(usual->colour) : std::nullopt;
}

FlowerForm usualFlowerForm(Habit habit) {
  switch (habit) {
    case Habit::Forb:
      return FlowerForm::Daisy;
    case Habit::Shrub:
      return FlowerForm::Umbel;
    case Habit::Vine:
    case Habit::Bulb:
      return FlowerForm::Bell;
    case Habit::Grass:
    case Habit::Sedge:
    case Habit::Fern:
      return FlowerForm::None;
  }
  return FlowerForm::None;
}

std::optional<Rgb> flowerColourOf(const Species& species) {
  if (species.flowerColour || !species.bloomWeeks()) return species.flowerColour;
  return usualFlowerColour(species.flowerColourWord);
}

FlowerForm flowerFormOf(const Species& species) {
  const bool shown = species.bloomWeeks() && flowerColourOf(species);
  return species.flowerForm == FlowerForm::None && shown ? usualFlowerForm(species.habit)
                                                         : species.flowerForm;
}

std::string standInWords(const Species& species, std::string_view column) {
  if (column == "flower_hex" && !species.flowerColour && species.bloomWeeks())
    if (const UsualColour* usual = usualColourIn(species.flowerColourWord))
      return fmt::format("#{:02X}{:02X}{:02X}, as usual for {}", usual->colour.red,
                         usual->colour.green, usual->colour.blue, usual->word);
  if (const FlowerForm form = flowerFormOf(species);
      column == "flower_form" && form != species.flowerForm)
    return fmt::format("{}, as usual for a {}", wordOf(form), wordOf(species.habit));
  return {};
}

}  // namespace tussock
