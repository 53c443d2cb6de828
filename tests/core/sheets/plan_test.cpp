// SPDX-License-Identifier: MIT
#include "core/sheets/plan.h"

#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "core/catalog/schedule.h"
#include "core/edit/draft.h"
#include "core/sheets/labelling.h"
#include "core/sheets/text_width.h"
#include "tests/support/planted_yard.h"
#include "tests/support/random_yard.h"

namespace tussock {
namespace {

using test::griddedYard;
using test::plantedYard;
using test::smallCatalogue;

constexpr double kMargin = 12.7;  // mm

PlanOptions optionsFor(Paper paper) {
  PlanOptions options;
  options.paper = paper;
  options.date = Date{std::chrono::year{2027}, std::chrono::April, std::chrono::day{14}};
  return options;
}
Plan planOf(const Yard& yard, Paper paper = Paper::Letter) {
  return makePlan(yard, smallCatalogue(), optionsFor(paper));
}
Plan planAt(const Yard& yard, int scale) {
  PlanOptions options = optionsFor(Paper::Letter);
  options.bedScale = scale;
  return makePlan(yard, smallCatalogue(), options);
}

template <class Item>
std::vector<Item> itemsOf(const Sheet& sheet) {
  std::vector<Item> result;
  for (const PaperItem& item : sheet.items)
    if (const auto* found = std::get_if<Item>(&item)) result.push_back(*found);
  return result;
}

std::vector<PaperText> textsOf(const Sheet& sheet) {
  auto texts = itemsOf<PaperText>(sheet);
  for (const PaperLabel& label : itemsOf<PaperLabel>(sheet)) texts.push_back(label.text);
  return texts;
}

bool hasText(const Sheet& sheet, std::string_view part) {
  for (const PaperText& text : textsOf(sheet))
    if (text.text.find(part) != std::string::npos) return true;
  return false;
}

int plantsIn(const Yard& yard) {
  int count = 0;
  for (const Drift& drift : yard.drifts) count += static_cast<int>(drift.plants.size());
  return count;
}

struct Sums {
  int drawn = 0, labelled = 0, scheduled = 0;
};
// Counted from what is on the pages, bed sheets and overview apart.
Sums sumsOf(const Plan& plan) {
  Sums sums;
  bool overview = true;
  for (const Sheet& sheet : plan.sheets) {
    if (sheet.title != "Overview" && sheet.title != "Whole plant schedule") overview = false;
    if (overview)
      for (const ScheduleRow& row : sheet.schedule) sums.scheduled += row.quantity;
    for (const PaperLabel& label : itemsOf<PaperLabel>(sheet)) {
      sums.labelled += label.count;
      EXPECT_EQ(std::stoi(label.text.text), label.count) << label.text.text;
    }
    if (!overview) sums.drawn += static_cast<int>(itemsOf<PaperPlant>(sheet).size());
  }
  return sums;
}

void expectAllAgree(const Yard& yard, const Plan& plan) {
  const Sums sums = sumsOf(plan);
  const int plants = plantsIn(yard);
  EXPECT_EQ(sums.drawn, plants);
  EXPECT_EQ(sums.labelled, plants);
  EXPECT_EQ(sums.scheduled, plants);
  EXPECT_EQ(plan.totals.drawn, plants);
  EXPECT_EQ(plan.totals.labelled, plants);
  EXPECT_EQ(plan.totals.scheduled, plants);
}

double turnOf(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
bool segmentsCross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
  return turnOf(a, b, c) * turnOf(a, b, d) < -1e-12 && turnOf(c, d, a) * turnOf(c, d, b) < -1e-12;
}

int crossings(const Sheet& sheet) {
  const auto labels = itemsOf<PaperLabel>(sheet);
  int count = 0;
  for (std::size_t i = 0; i < labels.size(); ++i)
    for (std::size_t j = i + 1; j < labels.size(); ++j)
      for (std::size_t a = 1; a < labels[i].leader.size(); ++a)
        for (std::size_t b = 1; b < labels[j].leader.size(); ++b)
          count += segmentsCross(labels[i].leader[a - 1], labels[i].leader[a],
                                 labels[j].leader[b - 1], labels[j].leader[b]);
  return count;
}

void expectInsideMargins(const Sheet& sheet) {
  constexpr double kSlack = 0.01;
  const auto inside = [&](PaperPoint p) {
    return p.x >= kMargin - kSlack && p.y >= kMargin - kSlack &&
           p.x <= sheet.widthMm - kMargin + kSlack && p.y <= sheet.heightMm - kMargin + kSlack;
  };
  for (const PaperPath& path : itemsOf<PaperPath>(sheet))
    for (const auto& ring : path.rings)
      for (const PaperPoint p : ring)
        EXPECT_TRUE(inside(p)) << sheet.title << " " << p.x << " " << p.y;
  for (const PaperText& text : textsOf(sheet)) {
    const PaperBox box = boxOf(text);
    EXPECT_TRUE(inside({box.left, box.top}) && inside({box.right, box.bottom}))
        << sheet.title << ": " << text.text;
  }
}

void expectTextsApart(const Sheet& sheet) {
  const auto texts = textsOf(sheet);
  for (std::size_t i = 0; i < texts.size(); ++i)
    for (std::size_t j = i + 1; j < texts.size(); ++j)
      EXPECT_FALSE(overlap(boxOf(texts[i]), boxOf(texts[j])))
          << sheet.title << ": " << texts[i].text << " | " << texts[j].text;
}

void expectSoundPages(const Plan& plan) {
  for (const Sheet& sheet : plan.sheets) {
    expectInsideMargins(sheet);
    expectTextsApart(sheet);
    EXPECT_EQ(crossings(sheet), 0) << sheet.title;
  }
}

TEST(Plan, LabelsScheduleAndDrawingAgree) {
  const Yard yard = plantedYard();
  for (const Paper paper : {Paper::Letter, Paper::A4}) expectAllAgree(yard, planOf(yard, paper));
}

TEST(Plan, PagesOfThePlantedYardAreSound) {
  for (const Paper paper : {Paper::Letter, Paper::A4})
    expectSoundPages(planOf(plantedYard(), paper));
}

TEST(Plan, LabelsScheduleAndDrawingAgreeInRandomYards) {
  for (unsigned seed = 1; seed <= 30; ++seed) {
    test::Random random(seed);
    const Yard yard = test::randomYard(random);
    const Plan plan = planOf(yard);
    expectAllAgree(yard, plan);
    for (const Sheet& sheet : plan.sheets) EXPECT_EQ(crossings(sheet), 0) << seed << sheet.title;
  }
}

TEST(Plan, TextsStandApartInRandomYards) {
  for (unsigned seed = 1; seed <= 30; ++seed) {
    test::Random random(seed);
    for (const Sheet& sheet : planOf(test::randomYard(random)).sheets) expectTextsApart(sheet);
  }
}

// The drawn leaders from text to end; other labels' texts and the rulers' figures stay clear.
TEST(Plan, LeadersRunThroughNoText) {
  for (const Yard& yard : {plantedYard(), griddedYard(15, 6, 10, 6), griddedYard(9, 4, 3, 1)})
    for (const Sheet& sheet : planOf(yard).sheets)
      for (const PaperLabel& label : itemsOf<PaperLabel>(sheet))
        for (const PaperText& text : textsOf(sheet))
          for (std::size_t i = 1; i < label.leader.size(); ++i)
            EXPECT_FALSE(text.text != label.text.text &&
                         crosses(label.leader[i - 1], label.leader[i], boxOf(text)))
                << sheet.title << ": " << label.text.text << " through " << text.text;
}

TEST(Plan, TheOverviewDrawsNoSymbolsTooSmallToTell) {
  for (const PaperPlant& plant : itemsOf<PaperPlant>(planOf(plantedYard()).sheets[0]))
    EXPECT_GE(plant.radius, 1.5);
}

// ANSI/ASME Y14.1 size A is 8.5 x 11 in; ISO 216 A4 is 210 x 297 mm.
TEST(Plan, PagesHaveThePaperSizesOfTheStandards) {
  for (const Sheet& sheet : planOf(plantedYard(), Paper::Letter).sheets) {
    EXPECT_DOUBLE_EQ(std::min(sheet.widthMm, sheet.heightMm), 215.9);
    EXPECT_DOUBLE_EQ(std::max(sheet.widthMm, sheet.heightMm), 279.4);
  }
  for (const Sheet& sheet : planOf(plantedYard(), Paper::A4).sheets) {
    EXPECT_DOUBLE_EQ(std::min(sheet.widthMm, sheet.heightMm), 210.0);
    EXPECT_DOUBLE_EQ(std::max(sheet.widthMm, sheet.heightMm), 297.0);
  }
}

TEST(Plan, DistancesOnPaperAreExactlyToScale) {
  const Yard yard = plantedYard();
  for (const Sheet& sheet : planOf(yard).sheets) {
    const auto plants = itemsOf<PaperPlant>(sheet);
    if (plants.size() < 2 || sheet.title == "Overview") continue;
    std::vector<Point> site;
    for (const Drift* drift :
         driftsIn(yard, yard.beds.find(Id<Bed>(sheet.title == "Walk bed" ? 10 : 11))->id))
      for (const Plant& plant : drift->plants) site.push_back(plant.at);
    ASSERT_EQ(site.size(), plants.size());
    const double paper = std::hypot(plants.front().at.x - plants.back().at.x,
                                    plants.front().at.y - plants.back().at.y);
    EXPECT_NEAR(paper, distance(site.front(), site.back()) * 1000.0 / sheet.scale, 1e-9);
  }
}

// At 1/4 in = 1 ft a 20 ft bed measures 5.000 in; at 1:50, 6 m is 120 mm (arithmetic).
TEST(Plan, KnownLengthsComeOutAtTheirPaperSize) {
  const Yard bed = griddedYard(20 * 0.3048, 1.5, 3, 1);
  const Sheet quarter = planAt(bed, 48).sheets[1];
  EXPECT_NEAR(toPaper(quarter, {20 * 0.3048, 0}).x - toPaper(quarter, {0, 0}).x, 5.0 * 25.4, 1e-9);
  const Sheet fifty = planAt(griddedYard(6, 1.5, 3, 1), 50).sheets[1];
  EXPECT_NEAR(toPaper(fifty, {6, 0}).x - toPaper(fifty, {0, 0}).x, 120.0, 1e-9);
}

TEST(Plan, ABedTakesTheLargestUsualScaleThatFits) {
  EXPECT_EQ(planOf(griddedYard(3, 1.5, 3, 1)).sheets[1].scale, 24);
  EXPECT_EQ(planOf(griddedYard(6, 2.5, 3, 1)).sheets[1].scale, 32);
  EXPECT_EQ(planOf(griddedYard(9, 4, 3, 1)).sheets[1].scale, 40);
}

TEST(Plan, ABedTooLargeForItsScaleGoesOnTilesAtThatScale) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  const Plan plan = planAt(yard, 24);
  expectAllAgree(yard, plan);
  expectSoundPages(plan);
  int parts = 0;
  for (const Sheet& sheet : plan.sheets) {
    if (sheet.title.find("part") == std::string::npos) continue;
    ++parts;
    EXPECT_EQ(sheet.scale, 24);
    EXPECT_TRUE(hasText(sheet, "match line"));
  }
  EXPECT_GT(parts, 3);
}

// Every plant in one part only, and the parts' grounds meet edge to edge.
TEST(Plan, TilesCoverTheBedExactlyOnce) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  std::set<std::pair<long, long>> seen;
  std::size_t drawn = 0;
  double area = 0.0;
  for (const Sheet& sheet : planAt(yard, 24).sheets) {
    if (sheet.title.find("part") == std::string::npos) continue;
    area += sheet.drawing.width() * sheet.drawing.height() * 24 * 24 / 1e6;
    for (const PaperPlant& plant : itemsOf<PaperPlant>(sheet)) {
      const double x = sheet.siteAtTopLeft.x + (plant.at.x - sheet.drawing.left) * 0.024;
      const double y = sheet.siteAtTopLeft.y - (plant.at.y - sheet.drawing.top) * 0.024;
      seen.insert({std::lround(x * 1e4), std::lround(y * 1e4)});
      ++drawn;
      EXPECT_GE(plant.at.x, sheet.drawing.left - 1e-9);
      EXPECT_LE(plant.at.x, sheet.drawing.right + 1e-9);
      EXPECT_GE(plant.at.y, sheet.drawing.top - 1e-9);
      EXPECT_LE(plant.at.y, sheet.drawing.bottom + 1e-9);
    }
  }
  EXPECT_EQ(drawn, 300u);
  EXPECT_EQ(seen.size(), 300u);
  EXPECT_GE(area, 15.0 * 6.0);
}

TEST(Plan, SixtyDriftsAreLabelledWithoutCrossings) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  const Plan plan = planOf(yard);
  expectAllAgree(yard, plan);
  expectSoundPages(plan);
  EXPECT_EQ(itemsOf<PaperLabel>(plan.sheets[2].scale > 0 ? plan.sheets[2] : plan.sheets[1]).size(),
            60u);
}

TEST(Plan, LeadersEndInsideTheirOwnDrift) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  int leaders = 0;
  for (const Sheet& sheet : planOf(yard).sheets)
    for (const PaperLabel& label : itemsOf<PaperLabel>(sheet)) {
      if (label.leader.empty()) continue;
      ++leaders;
      double nearest = 1e9;
      for (const Plant& plant : yard.drifts.find(label.drift)->plants) {
        const PaperPoint p = toPaper(sheet, plant.at);
        nearest =
            std::min(nearest, std::hypot(p.x - label.leader.back().x, p.y - label.leader.back().y));
      }
      EXPECT_LE(nearest, 300.0 / sheet.scale * 0.5 + 1e-6);
    }
  EXPECT_EQ(leaders, 60);
}

TEST(Plan, AnEmptyYardGivesOneSheetThatSaysSo) {
  const Plan plan = planOf(Yard{});
  ASSERT_EQ(plan.sheets.size(), 1u);
  EXPECT_TRUE(hasText(plan.sheets[0], "Nothing is drawn yet"));
  EXPECT_EQ(plan.sheets[0].scale, 0.0);
  expectSoundPages(plan);
}

TEST(Plan, ASinglePlantIsDrawnLabelledAndListed) {
  Draft draft(griddedYard(3, 2, 1, 1));
  Drift drift = *draft.yard().drifts.begin();
  drift.plants.resize(1);
  draft.put(drift);
  const Plan plan = planOf(draft.yard());
  expectAllAgree(draft.yard(), plan);
  expectSoundPages(plan);
}

TEST(Plan, AHugeBedStillMakesFiniteExactPages) {
  const Yard yard = griddedYard(900, 600, 12, 8);
  const Plan plan = planOf(yard);
  expectAllAgree(yard, plan);
  EXPECT_LE(plan.sheets.size(), 60u);
}

TEST(Plan, ALongScheduleGoesOnInFurtherPages) {
  Draft draft(griddedYard(10, 4, 10, 7));
  int number = 0;
  for (Drift drift : Yard(draft.yard()).drifts) {
    drift.species = "Testia number" + std::string(1, static_cast<char>('a' + number / 26)) +
                    std::string(1, static_cast<char>('a' + number % 26));
    ++number;
    draft.put(drift);
  }
  const Plan plan = planOf(draft.yard());
  expectAllAgree(draft.yard(), plan);
  expectSoundPages(plan);
  int pages = 0;
  for (const Sheet& sheet : plan.sheets) pages += sheet.title == "Whole plant schedule";
  EXPECT_GE(pages, 2);
}

TEST(Plan, OddNamesPrintWithoutControlCharacters) {
  Draft draft(plantedYard());
  Settings settings = draft.yard().settings;
  settings.name = "Garten „Süd“\n漢字 🌿 \xff and a name so long that it has to be cut somewhere";
  draft.put(settings);
  Bed bed = *draft.yard().beds.begin();
  bed.name = "Bed\twith \"quotes\" & <tags>";
  draft.put(bed);
  const Plan plan = planOf(draft.yard());
  expectSoundPages(plan);
  for (const Sheet& sheet : plan.sheets)
    for (const PaperText& text : textsOf(sheet))
      for (const char c : text.text) EXPECT_GE(static_cast<unsigned char>(c), 0x20) << text.text;
}

TEST(Plan, EverySheetCarriesWhatACrewNeeds) {
  const Plan plan = planOf(plantedYard());
  const Sheet& walk = plan.sheets[1];
  EXPECT_EQ(walk.title, "Walk bed");
  for (const char* part :
       {"Seen from the south", "Measure this bar", "811", "Dig by hand within 24 in", "Wear gloves",
        "ASCTUB", "Local codes", "Revision A", "14 April 2027", "Tannery Lane", "Sheet 2 of"})
    EXPECT_TRUE(hasText(walk, part)) << part;
  for (const Sheet& sheet : plan.sheets)
    if (!sheet.schedule.empty()) {
      EXPECT_TRUE(hasText(sheet, "labels, drawing and schedule agree"));
    }
}

TEST(Plan, TallerPlantsHaveHeavierOutlines) {
  const Plan plan = planOf(plantedYard());
  Weight low = Weight::Bold, tall = Weight::Hair;
  for (const PaperPath& path : itemsOf<PaperPath>(plan.sheets[1])) {
    if (path.wash != Wash::Drift) continue;
    if (path.colour == Rgb{0xA0, 0xB0, 0x60}) low = path.weight;   // 25 cm
    if (path.colour == Rgb{0xB4, 0x8C, 0xCC}) tall = path.weight;  // 110 cm
  }
  EXPECT_GT(millimetres(tall), millimetres(low));
}

// Architects' scales: 12 over the inches to the foot.
TEST(Scale, AreDescribedAsARuleShowsThem) {
  const auto feet = UnitSystem::FeetInches;
  EXPECT_EQ(describeScale(24, feet), "1:24 (1/2 in = 1 ft)");
  EXPECT_EQ(describeScale(48, feet), "1:48 (1/4 in = 1 ft)");
  EXPECT_EQ(describeScale(64, feet), "1:64 (3/16 in = 1 ft)");
  EXPECT_EQ(describeScale(128, feet), "1:128 (3/32 in = 1 ft)");
  EXPECT_EQ(describeScale(36, feet), "1:36 (1 in = 3 ft)");
  EXPECT_EQ(describeScale(40, feet), "1:40 (0.3 in = 1 ft)");
  EXPECT_EQ(describeScale(8, feet), "1:8 (1 1/2 in = 1 ft)");
  EXPECT_EQ(describeScale(120, feet), "1:120 (1 in = 10 ft)");
  EXPECT_EQ(describeScale(720, feet), "1:720 (1 in = 60 ft)");
  EXPECT_EQ(describeScale(50, UnitSystem::Metres), "1:50 (2 cm = 1 m)");
}

// The architects' scales, as inches to the foot, with their ratios.
TEST(Scale, AreReadInBothForms) {
  const std::vector<std::pair<std::string, int>> known{
      {"1:24", 24},           {"1 : 50", 50},
      {"1/2 in = 1 ft", 24},  {"3/32 in = 1 ft", 128},
      {"1/8\" = 1'-0\"", 96}, {"1-1/2 in = 1 ft", 8},
      {"3 in = 1 ft", 4},     {"1 in = 20 ft", 240},
      {"2 cm = 1 m", 50}};
  for (const auto& [text, scale] : known) EXPECT_EQ(parseScale(text), scale) << text;
  for (const char* wrong : {"", "24", "1:0", "1:", ":24", "0:24", "1:2001", "1:24.5", "1:-24",
                            "big", "1 in = ", "1:nan", "2:1"})
    EXPECT_EQ(parseScale(wrong), std::nullopt) << wrong;
}

}  // namespace
}  // namespace tussock
