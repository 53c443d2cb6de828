// SPDX-License-Identifier: MIT
#include "core/catalog/fact_choices.h"

#include <algorithm>
#include <array>

namespace tussock {

namespace {

constexpr std::array<FactWord, 7> kHabits{{{"forb", "forb"},
                                           {"grass", "grass"},
                                           {"sedge", "sedge or rush"},
                                           {"fern", "fern"},
                                           {"shrub", "shrub"},
                                           {"vine", "vine"},
                                           {"bulb", "bulb or spring ephemeral"}}};
constexpr std::array<FactWord, 7> kForms{{{"none", "none"},
                                          {"daisy", "daisy"},
                                          {"spire", "spire"},
                                          {"umbel", "umbel"},
                                          {"globe", "globe"},
                                          {"bell", "bell"},
                                          {"plume", "plume"}}};
constexpr std::array<FactWord, 3> kBodies{
    {{"solid", "solid"}, {"see-through", "see-through"}, {"unknown", "not known"}}};
constexpr std::array<FactWord, 3> kSun{
    {{"full", "full sun"}, {"part", "part shade"}, {"shade", "shade"}}};
constexpr std::array<FactWord, 4> kMoisture{
    {{"dry", "dry"}, {"medium", "medium"}, {"moist", "moist"}, {"wet", "wet"}}};
constexpr std::array<FactWord, 5> kSoil{{{"sand", "sand"},
                                         {"loam", "loam"},
                                         {"silt", "silt"},
                                         {"clay", "clay"},
                                         {"unknown", "not known"}}};
constexpr std::array<FactWord, 5> kLife{{{"annual", "annual"},
                                         {"biennial", "biennial"},
                                         {"short-lived perennial", "short-lived perennial"},
                                         {"long-lived perennial", "long-lived perennial"},
                                         {"unknown", "not known"}}};
constexpr std::array<FactWord, 8> kSpread{{{"clump", "stays a clump"},
                                           {"taproot", "stays on its taproot"},
                                           {"rhizome-slow", "creeps slowly by rhizomes"},
                                           {"rhizome-fast", "runs by rhizomes"},
                                           {"stolon", "runs by stolons"},
                                           {"self-seeds", "seeds itself"},
                                           {"self-seeds-fast", "seeds itself freely"},
                                           {"unknown", "not known"}}};
constexpr std::array<FactWord, 4> kStrength{
    {{"low", "gentle"}, {"medium", "middling"}, {"high", "strong"}, {"unknown", "not known"}}};
constexpr std::array<FactWord, 4> kWinter{{{"evergreen", "evergreen"},
                                           {"semi-evergreen", "half evergreen"},
                                           {"deciduous", "bare or died down"},
                                           {"unknown", "not known"}}};
constexpr std::array<FactWord, 3> kAnswers{
    {{"yes", "yes"}, {"no", "no"}, {"unknown", "not known"}}};
constexpr std::array<FactWord, 5> kSizes{{{"seed", "seed"},
                                          {"plug", "plug"},
                                          {"quart", "quart"},
                                          {"gallon", "gallon"},
                                          {"existing", "existing"}}};

struct ColumnWords {
  std::string_view column;
  std::span<const FactWord> words;
};
const std::array<ColumnWords, 15> kColumns{{{"layer_form", kHabits},
                                            {"flower_form", kForms},
                                            {"body", kBodies},
                                            {"sun", kSun},
                                            {"moisture", kMoisture},
                                            {"soil", kSoil},
                                            {"life_span", kLife},
                                            {"habit_of_spread", kSpread},
                                            {"competitiveness", kStrength},
                                            {"winter_leaf", kWinter},
                                            {"deer_resistant", kAnswers},
                                            {"rabbit_resistant", kAnswers},
                                            {"needs_support_or_flops", kAnswers},
                                            {"light_to_germinate", kAnswers},
                                            {"sizes_sold", kSizes}}};
constexpr std::array<std::string_view, 4> kSeveral{"sun", "moisture", "soil", "sizes_sold"};

}  // namespace

std::span<const FactWord> factWords(std::string_view column) {
  for (const ColumnWords& one : kColumns)
    if (one.column == column) return one.words;
  return {};
}

bool holdsSeveral(std::string_view column) {
  return std::find(kSeveral.begin(), kSeveral.end(), column) != kSeveral.end();
}

}  // namespace tussock
