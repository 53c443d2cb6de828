// SPDX-License-Identifier: MIT
#include "core/planting/fill_terms.h"

#include <array>

namespace tussock {

namespace {

constexpr std::string_view kCommon = "common practice";
constexpr std::string_view kSantamour =
    "Santamour, Trees for urban planting (METRIA 7, 1990), written for street trees";

constexpr std::array<TermFacts, kFillTerms> kTerms{{
    {FillTerm::Height, 4.0, "Height for depth",
     "Low plants towards the viewers, tall ones behind or in the middle of an island; see-through "
     "plants may stand forward",
     "University of Florida IFAS Extension EP449 (layers); see-through plants: common practice"},
    {FillTerm::LowEdge, 1.5, "Low edge", "A low band along the edge that people look from",
     "cues to care (Nassauer 1995); heights are common practice"},
    {FillTerm::Sun, 4.0, "Sun", "Each drift gets the hours of sun its species asks for",
     "sun classes as in the yard's profile"},
    {FillTerm::Moisture, 2.5, "Moisture",
     "Each drift stands in ground as moist as it likes, beside others that like the same",
     "the plant facts; plants of like needs together: common practice"},
    {FillTerm::OddCounts, 2.0, "Odd counts", "Drifts of 1, 3, 5, 7, ... plants", kCommon},
    {FillTerm::DriftSize, 1.0, "Drift size", "Drifts as large as the bed and the slider ask for",
     kCommon},
    {FillTerm::Proportions, 1.5, "Proportions", "Drifts 2.5 to 5 times as long as wide",
     "long, not block-shaped (Jekyll, Colour Schemes for the Flower Garden); the figures are "
     "common practice"},
    {FillTerm::Slant, 1.0, "Slant", "Drifts at 20 to 45 degrees to the viewing side", kCommon},
    {FillTerm::Interlocking, 1.5, "Interlocking", "Each drift touches two others and more",
     kCommon},
    {FillTerm::Apart, 3.0, "Same species apart", "Drifts of one species do not touch", kCommon},
    {FillTerm::Repetition, 1.5, "Repetition",
     "Drifts of a species that comes again stand at even distances, most of all in a formal bed",
     kCommon},
    {FillTerm::Shares, 1.5, "Shares", "No species, genus or family more than its share",
     kSantamour},
    {FillTerm::DiseaseMass, 2.0, "Disease-prone masses",
     "Plants of a disease-prone species that touch stay few", kCommon},
    {FillTerm::Grasses, 0.5, "Grasses", "About a fifth to a half of the plants grasses and sedges",
     kCommon},
    {FillTerm::Spreaders, 1.5, "Strong and weak neighbours",
     "Strong spreaders do not stand beside weak plants", kCommon},
    {FillTerm::Support, 1.0, "Support", "What leans stands beside grasses or sturdy neighbours",
     kCommon},
    {FillTerm::Bloom, 2.0, "Bloom",
     "Something in flower through the season in each part of the bed",
     "Xerces Society: three species in flower in each third of the season; by parts: common "
     "practice"},
    {FillTerm::Colour, 1.0, "Colour",
     "Neighbours in flower together are near or opposite on the colour wheel", kCommon},
}};

constexpr bool inOrder() {
  for (std::size_t i = 0; i < kTerms.size(); ++i)
    if (static_cast<std::size_t>(kTerms[i].term) != i) return false;
  return true;
}
static_assert(inOrder());

}  // namespace

const TermFacts& factsOf(FillTerm term) {
  return kTerms[static_cast<std::size_t>(term)];
}

}  // namespace tussock
