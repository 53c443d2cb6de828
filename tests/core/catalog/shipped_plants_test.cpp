// SPDX-License-Identifier: MIT
// The plant table that comes with the program, row by row.
#include <algorithm>
#include <iterator>
#include <map>
#include <regex>
#include <set>
#include <sstream>

#include <gtest/gtest.h>

#include "core/catalog/bloom.h"
#include "core/catalog/catalogue.h"
#include "core/catalog/resources.h"
#include "core/catalog/species_row.h"
#include "tests/support/fact_source.h"

namespace tussock {
namespace {

class ShippedPlants : public testing::Test {
 protected:
  static const Catalogue& facts() {
    static const CatalogueReading reading = readShippedCatalogue();
    return reading.catalogue;
  }
  static const Species& at(std::string_view name) {
    const Species* species = facts().find(name);
    if (species == nullptr) throw std::invalid_argument(std::string(name));
    return *species;
  }
};

TEST_F(ShippedPlants, AreReadWithoutAnError) {
  const CatalogueReading reading = readShippedCatalogue();
  for (const CatalogueError& error : reading.errors) ADD_FAILURE() << error.text();
  EXPECT_EQ(reading.catalogue.species().size(), 175u);
}

TEST_F(ShippedPlants, HaveSaneSizes) {
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName);
    EXPECT_LE(s.heightLow, s.heightHigh);
    EXPECT_LE(s.heightHigh, Length::metres(s.habit == Habit::Vine ? 15.0 : 3.0));
    EXPECT_GE(s.heightLow, Length::centimetres(5));
    // Plants of a bed close up: no wider apart than they grow, nor crowded to less than half.
    EXPECT_LE(s.spacing, s.spread);
    EXPECT_GE(s.spacing, s.spread * 0.5);
    EXPECT_LE(1, s.zoneLow);
    EXPECT_LT(s.zoneLow, s.zoneHigh);
  }
}

TEST_F(ShippedPlants, KnowTheirSymbolColourAndBloom) {
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName);
    const bool fern = s.habit == Habit::Fern;
    EXPECT_EQ(s.bloomFirstMonth.has_value(), !fern);
    EXPECT_EQ(s.bloomLastMonth.has_value(), !fern);
    EXPECT_EQ(s.flowerColour.has_value(), !fern);
    EXPECT_FALSE(s.flowerColourWord.empty());
    const bool petals = !fern && s.habit != Habit::Grass && s.habit != Habit::Sedge;
    EXPECT_EQ(s.flowerForm != FlowerForm::None, petals);
    EXPECT_FALSE(s.commonName.empty());
    EXPECT_FALSE(s.nativeStates.empty());
  }
}

// Weeks are finer than the months beside them, never at odds with them.
TEST_F(ShippedPlants, FlowerInWeeksWithinTheirMonths) {
  std::size_t finer = 0;
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName);
    EXPECT_EQ(s.bloomFirstWeek.has_value(), s.bloomLastWeek.has_value());
    if (!s.bloomFirstWeek) continue;
    ++finer;
    const WeekRange widest = weeksOfMonths(*s.bloomFirstMonth, *s.bloomLastMonth);
    EXPECT_GE(*s.bloomFirstWeek - 1, widest.first);
    EXPECT_LE(*s.bloomLastWeek - 1, widest.last);
    const auto months = s.bloomMonths();
    EXPECT_EQ(months->first, *s.bloomFirstMonth);
    EXPECT_EQ(months->last, *s.bloomLastMonth);
  }
  EXPECT_GE(finer, 10u);
}

// None of them flowers over the New Year, so each range is in order as it stands.
TEST_F(ShippedPlants, StartToFlowerBeforeTheyEnd) {
  std::size_t flowering = 0;
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName);
    if (!s.bloomFirstMonth) continue;
    ++flowering;
    EXPECT_LE(*s.bloomFirstMonth, *s.bloomLastMonth);
    EXPECT_LE(s.bloomWeeks()->first, s.bloomWeeks()->last);
  }
  EXPECT_GE(flowering, 150u);
}

TEST_F(ShippedPlants, FlowerFromTheFirstWarmDaysToTheFrost) {
  std::size_t early = 0, late = 0, ephemerals = 0;
  for (const Species& s : facts().species()) {
    early += showsFlowers(s) && s.bloomsInMonth(3);
    late += showsFlowers(s) && s.bloomsInMonth(10);
    ephemerals += s.usualLayer() == Layer::Bulbs;
  }
  EXPECT_GE(early, 5u);
  EXPECT_GE(late, 15u);
  EXPECT_GE(ephemerals, 6u);
}

// From memory: phloxes have their flowers in cymes at the ends of stems. Goldenrods have their
// heads in plumes, but the stiff one in a flat top, and the wreath and zigzag ones in clusters
// along the stem; spotted Joe-Pye weed has a flat top, the others a dome; prairie smoke nods,
// barren strawberry does not.
TEST_F(ShippedPlants, HaveTheFlowerFormOfTheirGenusUnlessTheyStandOtherwise) {
  using enum FlowerForm;
  const std::map<std::string, FlowerForm> otherwise{{"Solidago rigida", Umbel},
                                                    {"Solidago caesia", Spire},
                                                    {"Solidago flexicaulis", Spire},
                                                    {"Eutrochium maculatum", Umbel},
                                                    {"Geum triflorum", Bell}};
  std::map<std::string, FlowerForm> ofGenus{{"Phlox", Umbel}, {"Solidago", Plume}};
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName);
    const auto own = otherwise.find(s.botanicalName);
    const auto expected = own != otherwise.end()
                              ? own->second
                              : ofGenus.try_emplace(s.genus, s.flowerForm).first->second;
    EXPECT_EQ(s.flowerForm, expected);
  }
}

TEST_F(ShippedPlants, KnowTheirWays) {
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName);
    EXPECT_NE(s.spreadWay, SpreadWay::Unknown);
    EXPECT_NE(s.competitiveness, Competitiveness::Unknown);
    EXPECT_NE(s.lifeSpan, LifeSpan::Unknown);
    EXPECT_NE(s.winterLeaf, WinterLeaf::Unknown);
    EXPECT_NE(s.body, Body::Unknown);
    EXPECT_TRUE(s.sociability);
    EXPECT_TRUE(s.foliageLow && s.foliageHigh);
    EXPECT_FALSE(s.soil.empty());
    EXPECT_FALSE(s.sizesSold.empty());
  }
}

// Symbols of USDA PLANTS: two letters of the genus, two or three of the epithets, a number where
// that was taken. The genus may be the one that USDA still uses.
TEST_F(ShippedPlants, HaveUniqueWellFormedSymbols) {
  const std::regex form("[A-Z]{4,5}[0-9]{0,3}");
  std::set<std::string> symbols;
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName + " " + s.usdaSymbol);
    EXPECT_TRUE(std::regex_match(s.usdaSymbol, form));
    EXPECT_TRUE(symbols.insert(s.usdaSymbol).second);
    std::vector<std::string> names = s.synonyms;
    names.push_back(s.botanicalName);
    EXPECT_TRUE(std::any_of(names.begin(), names.end(), [&](std::string name) {
      name[1] = static_cast<char>(name[1] - 'a' + 'A');
      return s.usdaSymbol.starts_with(name.substr(0, 2));
    }));
  }
}

TEST_F(ShippedPlants, AreEachFoundByEverySynonym) {
  for (const Species& s : facts().species())
    for (const std::string& synonym : s.synonyms) {
      EXPECT_EQ(facts().find(synonym), nullptr) << synonym;
      EXPECT_EQ(facts().resolve(synonym), &s) << synonym;
      EXPECT_GE(std::count(synonym.begin(), synonym.end(), ' '), 1) << synonym;
      EXPECT_NE(synonym, s.botanicalName);
    }
  ASSERT_NE(facts().resolve("Aster novae-angliae"), nullptr);
  EXPECT_EQ(facts().resolve("Aster novae-angliae")->botanicalName, "Symphyotrichum novae-angliae");
}

TEST_F(ShippedPlants, AreEachFoundByWhatElseTheyAreCalled) {
  std::size_t known = 0;
  for (const Species& s : facts().species())
    for (const std::string& name : s.otherNames) {
      SCOPED_TRACE(s.botanicalName + ", " + name);
      ++known;
      EXPECT_NE(name, s.commonName);
      EXPECT_EQ(std::count(s.otherNames.begin(), s.otherNames.end(), name), 1);
      const auto found = facts().named(name);
      EXPECT_TRUE(std::find(found.begin(), found.end(), &s) != found.end());
    }
  EXPECT_GE(known, 130u);
}

// Slow to raise and easy to dig: woodland plants that have been sold from the wild (common practice
// among native plant societies to ask for nursery-grown ones; which they are is from memory).
TEST_F(ShippedPlants, WarnOfPlantsDugInTheWild) {
  for (const char* name :
       {"Trillium grandiflorum", "Sanguinaria canadensis", "Hepatica acutiloba",
        "Erythronium americanum", "Arisaema triphyllum", "Lilium superbum", "Dodecatheon meadia",
        "Podophyllum peltatum", "Actaea racemosa", "Polystichum acrostichoides"}) {
    const std::string& caution = at(name).cautionNote;
    EXPECT_NE(caution.find("uy nursery-grown plants"), std::string::npos) << name << caution;
    EXPECT_EQ(test::sourceOf(at(name), "caution_note"), "memory") << name;
  }
}

// The iris borer, Macronoctua onusta, is "the most serious pest of the iris" (extension services;
// its caterpillars hollow out the rhizomes): no reason to plant one.
TEST_F(ShippedPlants, CountNoPestAsAGuest) {
  EXPECT_EQ(at("Iris versicolor").hostNote, "");
  EXPECT_NE(at("Iris versicolor").pestNote.find("Iris borer"), std::string::npos);
}

// "Blank where leaves stay" (plants-sources.md).
TEST_F(ShippedPlants, ComeUpInAWeekOnlyWhereTheyWereGone) {
  for (const Species& s : facts().species())
    EXPECT_FALSE(s.winterLeaf == WinterLeaf::Evergreen && s.upByWeek) << s.botanicalName;
}

TEST_F(ShippedPlants, AreAsHighAsTheirLayer) {
  for (const Species& s : facts().species()) {
    SCOPED_TRACE(s.botanicalName);
    const Length most = Length::centimetres(s.usualLayer() == Layer::Ground  ? 45
                                            : s.usualLayer() == Layer::Bulbs ? 60
                                                                             : 6000);
    EXPECT_LE(s.heightHigh, most);
    EXPECT_LE(s.foliageHigh.value(), s.heightHigh);
    EXPECT_LE(s.foliageLow.value(), s.foliageHigh.value());
  }
}

// The table gives the lower 48 states and the District of Columbia, by their postal codes.
TEST_F(ShippedPlants, NameStatesThatThereAre) {
  std::istringstream codes(
      "AL AR AZ CA CO CT DC DE FL GA IA ID IL IN KS KY LA MA MD ME MI MN MO MS MT NC ND NE NH NJ "
      "NM NV NY OH OK OR PA RI SC SD TN TX UT VA VT WA WI WV WY");
  const std::set<std::string> states{std::istream_iterator<std::string>(codes), {}};
  ASSERT_EQ(states.size(), 49u);
  for (const Species& s : facts().species()) {
    EXPECT_TRUE(std::is_sorted(s.nativeStates.begin(), s.nativeStates.end())) << s.botanicalName;
    for (const std::string& state : s.nativeStates)
      EXPECT_TRUE(states.contains(state)) << s.botanicalName << ", " << state;
  }
}

std::vector<std::string> keysOf(const FactSource& source) {
  std::istringstream words(source.keys);
  return {std::istream_iterator<std::string>(words), {}};
}

// Every key is explained in plants-sources.md, or is "memory".
TEST_F(ShippedPlants, NameASourceForEveryValue) {
  const std::string about = readFile(resourceFolder() / "plants-sources.md");
  const Table table = readTable(readFile(resourceFolder() / "plants.csv"));
  ASSERT_EQ(table.rows.front().cells.size(), kPlantColumns.size());
  for (std::size_t row = 1; row < table.rows.size(); ++row) {
    const auto& cells = table.rows[row].cells;
    const Species& species = at(cells[0]);
    for (std::size_t i = 0; i + 2 < kPlantColumns.size(); ++i) {  // all but notes and sources
      EXPECT_EQ(test::sourceOf(species, kPlantColumns[i]).empty(), cells[i].empty())
          << cells[0] << ", " << kPlantColumns[i];
    }
    for (const FactSource& source : species.sources)
      for (const std::string& key : keysOf(source))
        EXPECT_TRUE(key == "memory" || about.find("**" + key + "**") != std::string::npos) << key;
  }
}

// A published value, and the key of plants-sources.md under which the table says to have it.
struct Fact {
  const char* species;
  const char* field;
  const char* value;
  const char* key;
};

std::string joined(const std::vector<std::string>& names) {
  std::string all;
  for (const std::string& name : names) all += (all.empty() ? "" : ";") + name;
  return all;
}

std::string valueOf(const Species& s, std::string_view field) {
  if (field == "family") return s.family;
  if (field == "usda_symbol") return s.usdaSymbol;
  if (field == "bloom_start_month") return std::to_string(s.bloomFirstMonth.value());
  if (field == "flower_color") return s.flowerColourWord;
  if (field == "layer_form") return std::string(wordOf(s.habit));
  if (field == "common_name") return s.commonName;
  if (field == "other_names") return joined(s.otherNames);
  if (field == "common_name_es") return s.spanishName;
  return {};
}

class PublishedFact : public testing::TestWithParam<Fact> {};

TEST_P(PublishedFact, IsInTheTable) {
  const Fact& fact = GetParam();
  const CatalogueReading reading = readShippedCatalogue();
  const Species* species = reading.catalogue.find(fact.species);
  ASSERT_NE(species, nullptr);
  EXPECT_EQ(valueOf(*species, fact.field), fact.value);
  EXPECT_NE(test::sourceOf(*species, fact.field).find(fact.key), std::string::npos)
      << test::sourceOf(*species, fact.field);
}

// Symbols and growth forms: USDA NRCS, The PLANTS Database.
INSTANTIATE_TEST_SUITE_P(
    UsdaPlants, PublishedFact,
    testing::Values(Fact{"Actaea racemosa", "usda_symbol", "ACRA7", "USDA"},
                    Fact{"Adiantum pedatum", "usda_symbol", "ADPE", "USDA"},
                    Fact{"Agastache foeniculum", "usda_symbol", "AGFO", "USDA"},
                    Fact{"Andropogon gerardii", "usda_symbol", "ANGE", "USDA"},
                    Fact{"Asclepias incarnata", "usda_symbol", "ASIN", "USDA"},
                    Fact{"Asclepias syriaca", "usda_symbol", "ASSY", "USDA"},
                    Fact{"Asclepias tuberosa", "usda_symbol", "ASTU", "USDA"},
                    Fact{"Baptisia australis", "usda_symbol", "BAAU", "USDA"},
                    Fact{"Carex pensylvanica", "usda_symbol", "CAPE6", "USDA"},
                    Fact{"Ceanothus americanus", "usda_symbol", "CEAM", "USDA"},
                    Fact{"Coreopsis lanceolata", "usda_symbol", "COLA5", "USDA"},
                    Fact{"Dalea purpurea", "usda_symbol", "DAPU5", "USDA"},
                    Fact{"Echinacea purpurea", "usda_symbol", "ECPU", "USDA"},
                    Fact{"Eryngium yuccifolium", "usda_symbol", "ERYU", "USDA"},
                    Fact{"Eupatorium perfoliatum", "usda_symbol", "EUPE3", "USDA"},
                    Fact{"Helenium autumnale", "usda_symbol", "HEAU", "USDA"},
                    Fact{"Liatris spicata", "usda_symbol", "LISP", "USDA"},
                    Fact{"Lobelia cardinalis", "usda_symbol", "LOCA2", "USDA"},
                    Fact{"Monarda fistulosa", "usda_symbol", "MOFI", "USDA"},
                    Fact{"Panicum virgatum", "usda_symbol", "PAVI2", "USDA"},
                    Fact{"Penstemon digitalis", "usda_symbol", "PEDI", "USDA"},
                    Fact{"Ratibida pinnata", "usda_symbol", "RAPI", "USDA"},
                    Fact{"Rudbeckia hirta", "usda_symbol", "RUHI2", "USDA"},
                    Fact{"Schizachyrium scoparium", "usda_symbol", "SCSC", "USDA"},
                    Fact{"Solidago rigida", "usda_symbol", "OLRI", "USDA"},
                    Fact{"Sorghastrum nutans", "usda_symbol", "SONU2", "USDA"},
                    Fact{"Symphyotrichum novae-angliae", "usda_symbol", "SYNO2", "USDA"},
                    Fact{"Veronicastrum virginicum", "usda_symbol", "VEVI4", "USDA"},
                    Fact{"Zizia aurea", "usda_symbol", "ZIAU", "USDA"}));

// As each list has them; the first name of the table is left out.
INSTANTIATE_TEST_SUITE_P(
    OtherNames, PublishedFact,
    testing::Values(Fact{"Liatris spicata", "other_names", "marsh blazing star;gayfeather", "TNY"},
                    Fact{"Clethra alnifolia", "other_names", "sweet pepperbush", "TNY"},
                    Fact{"Phlox divaricata", "other_names",
                         "wild blue phlox;Louisiana phlox;wild sweet William", "WFC"},
                    Fact{"Amorpha canescens", "other_names", "prairie shoestring", "WFC"},
                    Fact{"Actaea racemosa", "other_names", "black bugbane;black snakeroot",
                         "PLF WFD"},
                    Fact{"Lonicera sempervirens", "other_names", "trumpet honeysuckle", "PLF"},
                    Fact{"Geranium maculatum", "other_names", "spotted geranium", "PLF"},
                    Fact{"Asclepias tuberosa", "other_names", "butterfly milkweed", "PLF"},
                    Fact{"Verbena hastata", "other_names", "swamp verbena", "PLF"},
                    Fact{"Monarda fistulosa", "other_names", "bergamot;bee balm", "FOA"}));

// Two floras, an encyclopedia and a nursery, each in Spanish.
INSTANTIATE_TEST_SUITE_P(
    SpanishNames, PublishedFact,
    testing::Values(Fact{"Caltha palustris", "common_name_es", "hierba centella", "ASTN"},
                    Fact{"Campanula rotundifolia", "common_name_es",
                         "campanilla de hoja redondeada", "HVUIB"},
                    Fact{"Juncus effusus", "common_name_es", "junco de esteras", "ESWP"},
                    Fact{"Solidago speciosa", "common_name_es", "vara de oro", "ESWP"},
                    Fact{"Panicum virgatum", "common_name_es", "pasto varilla", "SGR"}));

}  // namespace
}  // namespace tussock
