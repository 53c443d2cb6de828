// SPDX-License-Identifier: MIT
#include "core/catalog/search.h"

#include <map>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::Not;

std::vector<std::string> namesOf(const std::vector<const Species*>& species) {
  std::vector<std::string> names;
  for (const Species* one : species) names.push_back(one->botanicalName);
  return names;
}

std::vector<std::string> found(std::string_view words) {
  static const Catalogue facts = readShippedCatalogue().catalogue;
  return namesOf(facts.search(words));
}

Species named(std::string name, std::string common) {
  Species species;
  species.botanicalName = std::move(name);
  species.genus = genusOf(species.botanicalName);
  species.commonName = std::move(common);
  return species;
}

TEST(SearchWords, AreLowerCaseWithoutAccentsAndMarks) {
  EXPECT_THAT(searchWords("St. John's-wort"), ElementsAre("st", "johns", "wort"));
  EXPECT_THAT(searchWords("  Équinácea\tPÚRPURA "), ElementsAre("equinacea", "purpura"));
  EXPECT_TRUE(searchWords(" - ").empty());
}

TEST(Search, FindsNamesAsTheyAreTyped) {
  EXPECT_THAT(found("MONARDA fist"), ElementsAre("Monarda fistulosa"));
  EXPECT_THAT(found("bergamot"), Contains("Monarda fistulosa"));
  EXPECT_THAT(found("novae-angliae"), ElementsAre("Symphyotrichum novae-angliae"));
  EXPECT_TRUE(found("no such plant").empty());
}

TEST(Search, FindsByFamilyColourAndHabit) {
  EXPECT_THAT(found("lamiaceae"), Contains("Physostegia virginiana"));
  EXPECT_THAT(found("red"), Contains("Lobelia cardinalis"));
  EXPECT_THAT(found("fern"), Contains("Athyrium filix-femina"));
}

TEST(Search, EveryWordMustBeMet) {
  const auto names = found("tall wet summer pink");
  EXPECT_THAT(names, Contains("Eutrochium maculatum"));
  EXPECT_THAT(names, Not(Contains("Phlox stolonifera")));
}

TEST(Search, UnderstandsHeightGroundAndSeason) {
  const auto names = found("tall dry fall");
  EXPECT_THAT(names, Contains("Andropogon gerardii"));
  EXPECT_THAT(names, Not(Contains("Solidago nemoralis")));       // low
  EXPECT_THAT(names, Not(Contains("Vernonia noveboracensis")));  // moist
  EXPECT_THAT(names, Not(Contains("Baptisia australis")));       // spring
}

TEST(Search, PartShadeIsOneClassOfSun) {
  static const Catalogue facts = readShippedCatalogue().catalogue;
  const std::vector<std::string> part = found("part shade");
  for (const Species& one : facts.species()) {
    const bool takesPart =
        std::find(one.sun.begin(), one.sun.end(), SunNeed::Part) != one.sun.end();
    EXPECT_TRUE(!takesPart || testing::Value(part, Contains(one.botanicalName)))
        << one.botanicalName;
  }
  EXPECT_THAT(part, Not(Contains("Silphium laciniatum"))) << "full sun alone";
  EXPECT_EQ(found("partial sun"), found("part shade"));
}

TEST(Search, UnderstandsMonthsGroundcoverAndWhatLivesOnAPlant) {
  EXPECT_THAT(found("september"), Contains("Symphyotrichum laeve"));
  EXPECT_THAT(found("september"), Not(Contains("Baptisia australis")));
  EXPECT_THAT(found("groundcover shade"), Contains("Tiarella cordifolia"));
  EXPECT_THAT(found("monarch"), Contains("Asclepias tuberosa"));
}

TEST(Search, OneGuestIsAsGoodAsMany) {
  for (const auto& [one, many] :
       {std::pair("hummingbird", "hummingbirds"), std::pair("bee", "bees"),
        std::pair("butterfly", "butterflies"), std::pair("wasp", "wasps")}) {
    std::vector<std::string> ofOne = found(one);
    for (const std::string& name : found(many)) EXPECT_THAT(ofOne, Contains(name)) << one;
    EXPECT_FALSE(found(many).empty()) << many;
  }
  Species visited = named("Salvia azurea", "blue sage");
  visited.nectarNote = "Visited by one hummingbird and many bees";
  const Catalogue facts({visited});
  for (const char* word : {"hummingbird", "hummingbirds", "bee", "bees"})
    EXPECT_EQ(facts.search(word).size(), 1u) << word;
}

TEST(Search, APluralFindsWhatItsSingularFinds) {
  for (const auto& [one, many] :
       {std::pair("grass", "grasses"), std::pair("sedge", "sedges"), std::pair("shrub", "shrubs"),
        std::pair("bulb", "bulbs"), std::pair("vine", "vines"), std::pair("fern", "ferns"),
        std::pair("milkweed", "milkweeds"), std::pair("coneflower", "coneflowers"),
        std::pair("violet", "violets"), std::pair("lily", "lilies"), std::pair("aster", "asters"),
        std::pair("goldenrod", "goldenrods"), std::pair("iris", "irises"),
        std::pair("beebalm", "beebalms"), std::pair("tall aster", "tall asters")}) {
    EXPECT_FALSE(found(one).empty()) << one;
    EXPECT_EQ(found(many), found(one)) << many;
  }
  EXPECT_TRUE(found("zzzzs").empty());
}

TEST(Search, WordsWrittenAsOneTakeMoreThanALetterOfTheNext) {
  Species suave = named("Symphyotrichum laeve", "aster suave");
  const Catalogue facts({suave, named("Monarda didyma", "bee balm")});
  EXPECT_THAT(namesOf(facts.search("astersu")), ElementsAre("Symphyotrichum laeve"));
  EXPECT_THAT(namesOf(facts.search("beeba")), ElementsAre("Monarda didyma"));
  EXPECT_TRUE(facts.search("beeb").empty());
}

TEST(Search, UnderstandsMonthsByTheirFirstLetters) {
  Species late = named("Carex a", "");
  late.bloomFirstMonth = 8, late.bloomLastMonth = 9;
  const Catalogue facts({late, named("Carex b", "")});
  for (const char* word : {"aug", "Aug.", "sep", "Sept", "september"})
    EXPECT_THAT(namesOf(facts.search(word)), ElementsAre("Carex a")) << word;
  EXPECT_TRUE(facts.search("oct").empty());
}

TEST(Search, LowIsNotFoundInYellow) {
  const auto names = found("low");
  EXPECT_THAT(names, Contains("Phlox subulata"));
  EXPECT_THAT(names, Not(Contains("Silphium perfoliatum")));
}

// Both are said of the same heights (common practice).
TEST(Search, ShortIsAsLowIs) {
  const auto sorted = [](std::vector<std::string> names) {
    std::sort(names.begin(), names.end());
    return names;
  };
  EXPECT_THAT(sorted(found("short")), testing::IsSupersetOf(found("low")));
  for (const std::string& name : found("short fern"))
    EXPECT_THAT(found("low fern"), Contains(name));
  const std::vector<std::string> names = found("short");
  ASSERT_GT(names.size(), 10u);
  EXPECT_THAT(std::vector(names.begin(), names.begin() + 2),
              ElementsAre("Pycnanthemum muticum", "Symphyotrichum shortii"))
      << "short-toothed mountain mint, and Short's aster: names go before what a plant is";
}

TEST(Search, PutsTheGenusFirst) {
  EXPECT_EQ(found("phlox").front(), "Phlox divaricata");
  EXPECT_GT(found("grass dry sun").size(), 3u);
}

// By the meaning of the words alone: asters before what is only of their family (goldenrods), and
// those before what has the letters inside of a name (eastern bluestar).
TEST(Search, WholeWordsComeBeforeStartsAndThoseBeforeInsides) {
  const std::vector<std::string> names = found("aster");
  const auto placeOf = [&](const char* name) {
    return std::find(names.begin(), names.end(), name) - names.begin();
  };
  EXPECT_LT(placeOf("Eurybia divaricata"), placeOf("Solidago nemoralis")) << "white wood aster";
  EXPECT_LT(placeOf("Symphyotrichum laeve"), placeOf("Solidago nemoralis"));
  EXPECT_LT(placeOf("Solidago nemoralis"), placeOf("Amsonia tabernaemontana"));
  EXPECT_LT(placeOf("Amsonia tabernaemontana"), std::ssize(names)) << "found all the same";
}

TEST(Search, NamesComeBeforeFamilies) {
  const Species rose = named("Rosa carolina", "rose");
  Species avens = named("Geum triflorum", "prairie smoke"), mallow = named("Hibiscus laevis", "");
  avens.family = "Rosaceae";
  mallow.commonName = "rosemallow";
  const Catalogue facts({avens, mallow, rose});
  EXPECT_THAT(namesOf(facts.search("ros")),
              ElementsAre("Rosa carolina", "Hibiscus laevis", "Geum triflorum"));
}

TEST(Search, NothingTypedFindsAllInOrder) {
  const auto names = found("  ");
  EXPECT_EQ(names.size(), 175u);
  EXPECT_TRUE(std::is_sorted(names.begin(), names.end()));
}

TEST(Names, ASynonymFindsThePlant) {
  Species aster = named("Symphyotrichum laeve", "smooth blue aster");
  aster.synonyms = {"Aster laevis"};
  const Catalogue facts({aster, named("Aster alpinus", "alpine aster")});
  EXPECT_EQ(facts.find("Aster laevis"), nullptr);
  ASSERT_NE(facts.resolve("Aster laevis"), nullptr);
  EXPECT_EQ(facts.resolve("Aster laevis")->botanicalName, "Symphyotrichum laeve");
  EXPECT_EQ(facts.resolve("Aster alpinus")->botanicalName, "Aster alpinus");
  EXPECT_THAT(namesOf(facts.search("aster laev")), ElementsAre("Symphyotrichum laeve"));
}

TEST(Names, ASynonymOfTwoSpeciesStandsForNeither) {
  Species a = named("Carex a", "a"), b = named("Carex b", "b");
  a.synonyms = b.synonyms = {"Carex old"};
  const Catalogue facts({a, b});
  EXPECT_EQ(facts.resolve("Carex old"), nullptr);
  EXPECT_EQ(facts.search("carex old").size(), 2u);
}

TEST(Names, AGenusAloneMeansAllItsSpecies) {
  Species lance = named("Coreopsis lanceolata", "lanceleaf tickseed"),
          plains = named("Bidens a", "");
  lance.spanishName = "coreopsis";
  plains.otherNames = {"Coreopsis"};
  const Catalogue facts({lance, named("Coreopsis tripteris", "tall tickseed"), plains,
                         named("Phlox pilosa", "prairie phlox")});
  for (const char* words : {"Coreopsis", "coreopsis", "COREOPSIS "})
    EXPECT_THAT(namesOf(facts.named(words)),
                ElementsAre("Bidens a", "Coreopsis lanceolata", "Coreopsis tripteris"))
        << words;
  EXPECT_THAT(namesOf(facts.named("phlox")), ElementsAre("Phlox pilosa")) << "the only one";
}

TEST(Names, TwoOfOneCommonNameAreToldApart) {
  const Catalogue facts({named("Helianthus annuus", "Sunflower"),
                         named("Heliopsis helianthoides", "sunflower"),
                         named("Aster alpinus", "alpine aster"), named("Carex eburnea", "")});
  EXPECT_EQ(facts.nameApart(*facts.find("Helianthus annuus")), "Sunflower (Helianthus annuus)");
  EXPECT_EQ(facts.nameApart(*facts.find("Heliopsis helianthoides")),
            "sunflower (Heliopsis helianthoides)");
  EXPECT_EQ(facts.nameApart(*facts.find("Aster alpinus")), "alpine aster");
  EXPECT_EQ(facts.nameApart(*facts.find("Carex eburnea")), "Carex eburnea");
}

// University of Tennessee, Smart Yards: Liatris spicata is marsh blazing star, gayfeather, dense
// blazing star; Lady Bird Johnson Wildflower Center: Phlox divaricata is wild sweet William; USDA
// PLANTS: Actaea racemosa is black bugbane.
// Written as one word or as two, as seed lists do both.
TEST(SearchShipped, FindsACommonNameHoweverItIsWritten) {
  for (const char* words : {"beebalm", "bee balm", "Bee-Balm", "beebal"})
    for (const char* name :
         {"Monarda bradburiana", "Monarda didyma", "Monarda fistulosa", "Monarda punctata"})
      EXPECT_THAT(found(words), Contains(name)) << words;
  EXPECT_THAT(found("beebalm"), Not(Contains("Echinacea purpurea")));
}

TEST(SearchShipped, FindsANameOfThreeWordsWrittenAsOne) {
  for (const char* words : {"joepyeweed", "joe pye weed", "Joe-Pye-weed", "joepye weed"})
    EXPECT_THAT(found(words),
                AllOf(Contains("Eutrochium fistulosum"), Contains("Eutrochium maculatum"),
                      Contains("Eutrochium purpureum")))
        << words;
}

// Beside wild bergamot, which has it for another name, and not beside its own common name.
TEST(SearchShipped, ANameThatIsPartOfOthersIsTheirsToo) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  EXPECT_THAT(namesOf(facts.named("bee balm")),
              ElementsAre("Monarda bradburiana", "Monarda didyma", "Monarda fistulosa",
                          "Monarda punctata"));
  EXPECT_THAT(namesOf(facts.named("wild bergamot")), ElementsAre("Monarda fistulosa"));
  EXPECT_THAT(namesOf(facts.named("purple coneflower")), ElementsAre("Echinacea purpurea"));
}

// Whatever else of them a Spanish name stands for: every species of the genus, in any capitals.
TEST(SearchShipped, AGenusIsNeverOneOfItsSpeciesByAnotherName) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  std::map<std::string, std::vector<std::string>> genera;
  for (const Species& one : facts.species()) genera[one.genus].push_back(one.botanicalName);
  for (const auto& [genus, names] : genera)
    for (const std::string& typed : {genus, searchWords(genus).front()})
      EXPECT_THAT(namesOf(facts.named(typed)), testing::IsSupersetOf(names)) << typed;
  EXPECT_EQ(facts.named("monarda").size(), 4u);
  EXPECT_EQ(facts.named("phlox").size(), 5u);
}

TEST(SearchShipped, TellsAllThatAreCalledAlike) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  EXPECT_THAT(namesOf(facts.calledAlike("bee balm")),
              ElementsAre("Monarda bradburiana", "Monarda didyma", "Monarda fistulosa",
                          "Monarda punctata"));
  EXPECT_TRUE(facts.calledAlike(" ").empty());
  EXPECT_TRUE(facts.calledAlike("no such plant").empty());
}

TEST(SearchShipped, FindsASpeciesByWhatElseItIsCalled) {
  EXPECT_THAT(found("gayfeather"), Contains("Liatris spicata"));
  EXPECT_THAT(found("sweet william"), ElementsAre("Phlox divaricata"));
  EXPECT_THAT(found("bugbane"), ElementsAre("Actaea racemosa"));
  EXPECT_THAT(namesOf(readShippedCatalogue().catalogue.named("Black Bugbane")),
              ElementsAre("Actaea racemosa"));
}

}  // namespace
}  // namespace tussock
