// SPDX-License-Identifier: MIT
// The filters, orders and fact sheet of the plants command: what passes is held against the facts
// themselves.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/catalog/catalogue.h"
#include "core/catalog/rank.h"
#include "core/store/yard_file.h"
#include "tests/app/cli/cli_fixture.h"
#include "tests/app/data_folder.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::Outcome;
using test::run;
using testing::AllOf;
using testing::HasSubstr;

class PlantFilters : public test::CliTest {
 protected:
  [[nodiscard]] std::vector<const Species*> found(std::vector<std::string> arguments) const {
    arguments.insert(arguments.begin(), "plants");
    arguments.emplace_back("--json");
    const Outcome outcome = run(arguments);
    EXPECT_EQ(outcome.code, ExitCode::Done) << outcome.err;
    std::vector<const Species*> species;
    const auto plants = nlohmann::json::parse(outcome.out).at("plants");
    for (const auto& one : plants)
      species.push_back(facts_.find(one.at("botanical_name").get<std::string>()));
    return species;
  }
  [[nodiscard]] std::string yard() const {
    test::YardBuilder builder;
    builder.bed("Walk", "POLYGON ((0 0, 6 0, 6 2.5, 0 2.5, 0 0))").viewing("S");
    (void)YardFile::create(path("one.yard"), builder.build());
    return path("one.yard");
  }
  // How many of the shipped plants a filter should let through.
  template <class Passes>
  [[nodiscard]] std::size_t expected(Passes passes) const {
    const auto& all = facts_.species();
    return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), passes));
  }
  Catalogue facts_ = readShippedCatalogue().catalogue;

 private:
  test::DataFolder dataFolder_;
};

bool has(const auto& list, auto value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

// Nothing is cut off at a number that is none, and the whole range of the machine is not printed.
TEST_F(PlantFilters, ACountIsAWholeNumberFromOne) {
  for (const std::string count : {"-3", "0", "2.5", "many"}) {
    const Outcome outcome = run({"plants", "--count", count});
    EXPECT_EQ(outcome.code, ExitCode::Usage) << count;
    EXPECT_THAT(outcome.err, HasSubstr("'" + count + "' is not a whole number from 1"));
    EXPECT_LT(outcome.err.size(), 200u);
  }
}

TEST_F(PlantFilters, ALeastHeightAboveTheGreatestIsTold) {
  const Outcome outcome = run({"plants", "--lowest", "5ft", "--highest", "2ft"});
  EXPECT_EQ(outcome.code, ExitCode::Usage);
  EXPECT_THAT(outcome.err, HasSubstr("--lowest is 5ft, which is above --highest, 2ft"));
  EXPECT_EQ(run({"plants", "--lowest", "2ft", "--highest", "2ft"}).code, ExitCode::Done);
}

TEST_F(PlantFilters, SeveralChoicesOfOneAreAlternatives) {
  const auto passes = [](const Species& one) {
    return one.habit == Habit::Grass || one.habit == Habit::Sedge;
  };
  const auto plants = found({"--form", "grass,sedge"});
  EXPECT_EQ(plants.size(), expected(passes));
  for (const Species* one : plants) EXPECT_TRUE(passes(*one)) << one->botanicalName;
}

TEST_F(PlantFilters, AllOfThemMustBeMet) {
  const auto passes = [](const Species& one) {
    return has(one.sun, SunNeed::Full) && has(one.moisture, Moisture::Dry) &&
           !one.nectarNote.empty() && !one.hostNote.empty() &&
           one.heightHigh <= Length::feet(3.0) && one.family == "Asteraceae";
  };
  const auto plants =
      found({"--sun", "full", "--moisture", "dry", "--trait", "nectar,feeds-caterpillars",
             "--highest", "3 ft", "--family", "asteraceae"});
  EXPECT_GT(plants.size(), 0u);
  EXPECT_EQ(plants.size(), expected(passes));
}

TEST_F(PlantFilters, MonthsStatesColoursAndLayers) {
  const auto late = [](const Species& one) {
    return one.bloomsInMonth(9) || one.bloomsInMonth(10);
  };
  EXPECT_EQ(found({"--in-flower", "9-10"}).size(), expected(late));
  EXPECT_EQ(found({"--in-flower", "September-October"}).size(), expected(late));
  EXPECT_EQ(found({"--recorded-in", "ia"}).size(),
            expected([](const Species& one) { return has(one.nativeStates, std::string("IA")); }));
  EXPECT_EQ(found({"--recorded-in", "new york"}).size(), found({"--recorded-in", "NY"}).size());
  for (const char* district : {"DC", "District of Columbia"})
    EXPECT_EQ(found({"--recorded-in", district}).size(), expected([](const Species& one) {
                return has(one.nativeStates, std::string("DC"));
              }));
  for (const Species* one : found({"--colour", "Yellow", "--layer", "main"})) {
    EXPECT_EQ(one->flowerColourWord, "yellow");
    EXPECT_EQ(one->usualLayer(), Layer::Main);
  }
}

TEST_F(PlantFilters, EachColourThatAPlantHasIsThere) {
  const auto tan = found({"--colour", "tan"});
  EXPECT_TRUE(has(tan, facts_.find("Deschampsia cespitosa")));
  std::size_t coloured = 0;
  for (const std::string& colour : coloursToChoose(facts_))
    coloured += found({"--colour", colour}).size();
  EXPECT_EQ(coloured, expected([](const Species& one) { return one.flowerColour.has_value(); }));
  EXPECT_EQ(run({"plants", "--colour", "none"}).code, ExitCode::Usage) << "as ferns have it";
}

TEST_F(PlantFilters, ComeInTheOrderAskedFor) {
  const auto byHeight = found({"--order", "height"});
  ASSERT_EQ(byHeight.size(), facts_.species().size());
  for (std::size_t i = 1; i < byHeight.size(); ++i)
    EXPECT_LE(byHeight[i - 1]->height(), byHeight[i]->height());
  const auto byFamily = found({yard(), "--bed", "Walk", "--order", "family"});
  ASSERT_GT(byFamily.size(), 10u);
  for (std::size_t i = 1; i < byFamily.size(); ++i)
    EXPECT_LE(byFamily[i - 1]->family, byFamily[i]->family);
}

TEST_F(PlantFilters, SayWhatThereIsWhereAWordIsNone) {
  const Outcome colour = run({"plants", "--colour", "purpel"});
  EXPECT_EQ(colour.code, ExitCode::Usage);
  EXPECT_THAT(colour.err, AllOf(HasSubstr("'purpel'"), HasSubstr("purple")));
  for (const std::vector<std::string>& wrong : {std::vector<std::string>{"--in-flower", "13"},
                                                {"--in-flower", "8-x"},
                                                {"--highest", "tall"},
                                                {"--trait", "pretty"},
                                                {"--family", "Nonsense"},
                                                {"--recorded-in", "ZZ"},
                                                {"--order", "price"},
                                                {"--order", "fit"},
                                                {"--trait", "suits-the-place"}}) {
    std::vector<std::string> arguments{"plants"};
    arguments.insert(arguments.end(), wrong.begin(), wrong.end());
    EXPECT_EQ(run(arguments).code, ExitCode::Usage) << wrong.front() << ' ' << wrong.back();
  }
}

TEST_F(PlantFilters, AFactSheetNamesTheSourceOfEachValue) {
  const Outcome sheet = run({"plants", "--facts", "wild bergamot"});
  EXPECT_EQ(sheet.code, ExitCode::Done) << sheet.err;
  EXPECT_THAT(sheet.out, testing::ContainsRegex("usda_symbol +MOFI +\\[USDA\\]"));
  EXPECT_EQ(run({"plants", "--facts", "zzzz"}).code, ExitCode::Usage);
}

}  // namespace
}  // namespace tussock
