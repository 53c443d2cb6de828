// SPDX-License-Identifier: MIT
// Hardiness zones and native states of the plant table against what others have published, the
// source named with each row.
#include <algorithm>
#include <cstdlib>

#include <gtest/gtest.h>

#include "tests/support/fact_source.h"
#include "tests/support/shipped_plant.h"

namespace tussock {
namespace {

using test::shippedPlant;

// Read from web pages, by page:
// - Farm: Heritage Flower Farm, Mukwonago, Wisconsin, "Wisconsin native" and "Prairie plants"
// - Dane: Teaching garden of the Dane County Master Gardeners, Wisconsin, plant information sheets
// - Minn: Narem and Meyer (2020), Gardening with Native Grasses in Cold Climates, University of
//   Minnesota, chapter 3
// - Umass: University of Massachusetts, Stockbridge School, plant pages
// - Ohio: Ohio State University, plant pages, after the Missouri Botanical Garden
// - Wisc: wisconsinpollinators.com, native grasses
// - Chicago: R. Hawke, Chicago Botanic Garden (2014), on garden phlox, Fine Gardening, August
// - Highlands: Highlands Mountain Garden Club, North Carolina, phlox
constexpr auto kFarm = "Heritage Flower Farm", kDane = "Dane County Master Gardeners",
               kMinnesota = "University of Minnesota", kMassachusetts = "UMass Stockbridge",
               kOhio = "Ohio State University", kWisconsin = "Wisconsin Pollinators",
               kChicago = "Chicago Botanic Garden", kHighlands = "Highlands Mountain Garden Club";

struct Zones {
  const char* species;
  int coldest, warmest;
  const char* source;
};

class HardinessZones : public testing::TestWithParam<Zones> {};

// Published ranges of one species differ by a zone at either end; the table is within that.
TEST_P(HardinessZones, AreThosePublishedToWithinAZone) {
  const Zones& published = GetParam();
  const Species& species = shippedPlant(published.species);
  EXPECT_LE(std::abs(species.zoneLow - published.coldest), 1) << published.source;
  EXPECT_LE(std::abs(species.zoneHigh - published.warmest), 1) << published.source;
}

INSTANTIATE_TEST_SUITE_P(
    Published, HardinessZones,
    testing::Values(
        Zones{"Andropogon gerardii", 3, 8, kWisconsin}, Zones{"Asclepias incarnata", 3, 9, kFarm},
        Zones{"Asclepias tuberosa", 4, 9, kFarm}, Zones{"Asclepias verticillata", 4, 10, kFarm},
        Zones{"Baptisia australis", 3, 9, kDane}, Zones{"Dalea purpurea", 3, 8, kDane},
        Zones{"Echinacea purpurea", 3, 8, kOhio}, Zones{"Eurybia divaricata", 4, 8, kFarm},
        Zones{"Hypericum kalmianum", 4, 7, kFarm}, Zones{"Iris versicolor", 3, 9, kFarm},
        Zones{"Liatris aspera", 4, 9, kFarm}, Zones{"Liatris pycnostachya", 3, 9, kFarm},
        Zones{"Liatris spicata", 4, 9, kFarm}, Zones{"Lilium superbum", 4, 8, kFarm},
        Zones{"Monarda fistulosa", 3, 9, kMassachusetts}, Zones{"Phlox divaricata", 3, 8, kFarm},
        Zones{"Phlox paniculata", 4, 8, kChicago}, Zones{"Phlox stolonifera", 4, 8, kHighlands},
        Zones{"Phlox subulata", 3, 8, kHighlands}, Zones{"Physostegia virginiana", 3, 9, kFarm},
        Zones{"Ratibida pinnata", 3, 8, kFarm}, Zones{"Rudbeckia subtomentosa", 4, 8, kFarm},
        Zones{"Rudbeckia triloba", 4, 8, kDane}, Zones{"Ruellia humilis", 3, 9, kFarm},
        Zones{"Salvia azurea", 5, 9, kFarm}, Zones{"Schizachyrium scoparium", 3, 8, kMinnesota},
        Zones{"Symphyotrichum cordifolium", 3, 8, kFarm},
        Zones{"Symphyotrichum novae-angliae", 4, 8, kFarm},
        Zones{"Symphyotrichum oblongifolium", 3, 8, kFarm}));

struct Native {
  const char* species;
  const char* state;
};

class NativeStates : public testing::TestWithParam<Native> {};

TEST_P(NativeStates, HoldTheStateThatASourceThereNames) {
  const auto& states = shippedPlant(GetParam().species).nativeStates;
  EXPECT_NE(std::find(states.begin(), states.end(), GetParam().state), states.end());
}

// Minnesota Board of Water and Soil Resources, native seed mix "Conservation - Dry Northwest".
INSTANTIATE_TEST_SUITE_P(
    Minnesota, NativeStates,
    testing::Values(Native{"Agastache foeniculum", "MN"}, Native{"Amorpha canescens", "MN"},
                    Native{"Andropogon gerardii", "MN"}, Native{"Asclepias verticillata", "MN"},
                    Native{"Bouteloua curtipendula", "MN"}, Native{"Dalea candida", "MN"},
                    Native{"Dalea purpurea", "MN"}, Native{"Elymus canadensis", "MN"},
                    Native{"Koeleria macrantha", "MN"}, Native{"Schizachyrium scoparium", "MN"},
                    Native{"Sorghastrum nutans", "MN"}, Native{"Sporobolus heterolepis", "MN"}));

// Tallgrass Prairie Center, University of Northern Iowa: Irvine Prairie, Seeding Area 9.
INSTANTIATE_TEST_SUITE_P(Iowa, NativeStates,
                         testing::Values(Native{"Asclepias syriaca", "IA"},
                                         Native{"Asclepias tuberosa", "IA"},
                                         Native{"Panicum virgatum", "IA"}));

// Illinois Department of Natural Resources, "For Your Garden" (2017-2018).
INSTANTIATE_TEST_SUITE_P(Illinois, NativeStates,
                         testing::Values(Native{"Eupatorium perfoliatum", "IL"},
                                         Native{"Liatris aspera", "IL"},
                                         Native{"Liatris pycnostachya", "IL"},
                                         Native{"Liatris spicata", "IL"}));

// "Wisconsin native" at Heritage Flower Farm, as above.
INSTANTIATE_TEST_SUITE_P(
    Wisconsin, NativeStates,
    testing::Values(Native{"Asclepias incarnata", "WI"}, Native{"Iris versicolor", "WI"},
                    Native{"Phlox divaricata", "WI"}, Native{"Physostegia virginiana", "WI"},
                    Native{"Ratibida pinnata", "WI"}, Native{"Rudbeckia subtomentosa", "WI"},
                    Native{"Rudbeckia triloba", "WI"}, Native{"Ruellia humilis", "WI"},
                    Native{"Symphyotrichum cordifolium", "WI"},
                    Native{"Symphyotrichum novae-angliae", "WI"}));

struct Recorded {
  const char* species;
  const char* key;
  const char* states;
};

class RecordedStates : public testing::TestWithParam<Recorded> {};

TEST_P(RecordedStates, AreThoseOfTheListThatIsNamed) {
  const Recorded& list = GetParam();
  const Species& species = shippedPlant(list.species);
  std::string states;
  for (const std::string& state : species.nativeStates)
    states += (states.empty() ? "" : " ") + state;
  EXPECT_EQ(states, list.states);
  EXPECT_EQ(test::sourceOf(species, "native_states"), list.key);
}

// As read in November 2026, put in order: USDA PLANTS distribution by county, in the copies of
// github.com/ampautsc/PlantFinder; Lady Bird Johnson Wildflower Center, wildflower.org/plants;
// wildflowerdaze.com; Plants of the World Online; nativeplanthub.com; Flora of North America. Of
// the rue anemone Maine is left out, where it is told to be gone.
INSTANTIATE_TEST_SUITE_P(
    OtherLists, RecordedStates,
    testing::Values(
        Recorded{"Camassia scilloides", "WFC",
                 "AL AR DC GA IA IL IN KS KY LA MD MI MO MS NC OH OK PA SC TN TX VA WI WV"},
        Recorded{"Cardamine concatenata", "USDA PLF",
                 "AL AR CT DC DE FL GA IA IL IN KS KY LA MA MD ME MI MN MO MS NC ND NE NH NJ NY OH "
                 "OK PA SC SD TN TX VA VT WI WV"},
        Recorded{"Claytonia virginica", "WFC",
                 "AL AR CT DC DE GA IA IL IN KS KY LA MA MD MI MN MO MS NC NE NJ NY OH OK PA RI SC "
                 "TN TX VA VT WI WV"},
        Recorded{"Dicentra cucullaria", "WFD",
                 "AL AR CT DE GA IA ID IL IN KS KY MA MD ME MI MN MO MS NC ND NE NH NJ NY OH OK OR "
                 "PA RI SC SD TN VA VT WA WI WV"},
        Recorded{
            "Erythronium americanum", "POWO",
            "AL CT DE GA IA IL IN KY MA MD ME MI MN MO MS NC NH NJ NY OH PA RI SC TN VA VT WI WV"},
        Recorded{"Eurybia macrophylla", "USDA PLF",
                 "CT GA IA IL IN KY MA MD ME MI MN MO NC NH NJ NY OH PA RI SC TN VA VT WI WV"},
        Recorded{"Jeffersonia diphylla", "WFD",
                 "AL GA IA IL IN KY MD MI MN NC NJ NY OH PA TN VA WI WV"},
        Recorded{"Lindera benzoin", "NPH",
                 "AL AR CT DC DE FL GA IL IN KS KY LA MA MD ME MI MO MS NC NH NJ NY OH OK PA RI SC "
                 "TN TX VA VT WV"},
        Recorded{"Podophyllum peltatum", "WFD",
                 "AL AR CT DE FL GA IA IL IN KS KY LA MA MD ME MI MN MO MS NC NH NJ NY OH OK PA RI "
                 "SC TN TX VA VT WI WV"},
        Recorded{"Solidago flexicaulis", "WFD",
                 "AL AR CT DE GA IA IL IN KS KY LA MA MD ME MI MN MO MS NC ND NE NH NJ NY OH PA RI "
                 "SC SD TN VA VT WI WV"},
        Recorded{"Symphyotrichum lateriflorum", "FNA",
                 "AL AR CT DC DE FL GA IA IL IN KS KY LA MA MD ME MI MN MO MS NC NE NH NJ NY OH OK "
                 "PA RI SC SD TN TX VA VT WI WV"},
        Recorded{"Symphyotrichum oolentangiense", "WFC",
                 "AL AR FL GA IA IL IN KS LA MI MN MO MS NE NY OH OK SD TN TX WI"},
        Recorded{"Symphyotrichum shortii", "WFD",
                 "AL AR FL GA IA IL IN KY LA MD MI MN MS NC NY OH PA TN TX VA WI WV"},
        Recorded{"Thalictrum thalictroides", "WFD",
                 "AL AR CT DE FL GA IA IL IN KS KY MA MD MI MN MO MS NC NH NJ NY OH OK PA RI SC TN "
                 "TX VA VT WI WV"}));

class NotNative : public testing::TestWithParam<Native> {};

TEST_P(NotNative, IsNotSaidOfAStateFarFromItsRange) {
  const auto& states = shippedPlant(GetParam().species).nativeStates;
  EXPECT_EQ(std::find(states.begin(), states.end(), GetParam().state), states.end());
}

// Of narrow or regional range, from memory: the Great Lakes, the Ouachitas, the coastal plain, the
// southeast, the northern plains, California for all.
INSTANTIATE_TEST_SUITE_P(
    Regional, NotNative,
    testing::Values(Native{"Hypericum kalmianum", "FL"}, Native{"Hypericum kalmianum", "TX"},
                    Native{"Amsonia hubrichtii", "MN"}, Native{"Amsonia hubrichtii", "NY"},
                    Native{"Muhlenbergia capillaris", "MN"}, Native{"Spigelia marilandica", "MI"},
                    Native{"Liatris ligulistylis", "FL"}, Native{"Liatris ligulistylis", "NC"},
                    Native{"Baptisia australis", "CA"}, Native{"Chrysogonum virginianum", "WI"},
                    Native{"Phlox stolonifera", "IA"}, Native{"Asclepias exaltata", "CA"},
                    Native{"Trillium grandiflorum", "TX"}, Native{"Echinacea purpurea", "CA"}));

}  // namespace
}  // namespace tussock
