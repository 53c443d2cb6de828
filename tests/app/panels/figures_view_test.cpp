// SPDX-License-Identifier: MIT
#include "app/panels/figures_view.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "app/panels/bloom_chart.h"
#include "app/panels/figures_words.h"
#include "app/panels/height_profile.h"
#include "app/panels/margin_panel.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class FiguresTest : public test::OpenYard {
 protected:
  FiguresTest() {
    panel.resize(380, 2400);
    panel.show();
    document.select({refTo(bed)});
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
  }
  void list(std::vector<ListedSpecies> species) {
    Bed changed = *document.yard().beds.find(bed);
    changed.plantList = std::move(species);
    ASSERT_TRUE(document.commit(put(changed, "List")));
  }
  template <class W>
  W* shown(const char* name) const {
    QCoreApplication::processEvents();
    for (W* found : panel.findChildren<W*>(QLatin1String(name)))
      if (found->isVisibleTo(&panel)) return found;
    return nullptr;
  }
  QString fact(const char* name) const {
    const auto* label = shown<QLabel>(name);
    return label ? label->text() : QString();
  }
  [[nodiscard]] BedMix mix(MixOf what) const {
    const Bed& found = *document.yard().beds.find(bed);
    const auto sun = document.sunMap();
    return mixOf(document.yard(), document.facts(), found, what,
                 sun ? sun->meanHours(found.outline) : std::nullopt);
  }

  MarginPanel panel{document};
};

TEST_F(FiguresTest, AnEmptyBedShowsNone) {
  EXPECT_FALSE(shown<QWidget>("figures"));
}

TEST_F(FiguresTest, FollowTheListAtOnce) {
  list({{"Echinacea purpurea", 0.5}, {"Schizachyrium scoparium", 0.5}});
  ASSERT_TRUE(shown<QWidget>("figures"));
  // Two equal shares: H = ln 2, 1 - D = 0.5, J = 1.
  EXPECT_EQ(fact("figures-diversity"),
            QStringLiteral("2 species; Shannon 0.69, Simpson 0.50, evenness 1.00"));
  EXPECT_EQ(fact("figures-grasses"), QStringLiteral("50\u00A0% grasses and sedges"));
  document.undo();
  EXPECT_FALSE(shown<QWidget>("figures"));
}

TEST_F(FiguresTest, AsListedOrAsPlantedByChoice) {
  list({{"Echinacea purpurea", 0.0}});
  EXPECT_FALSE(shown<QPushButton>("figures-planted")) << "nothing is planted";
  plant("Symphyotrichum laeve", 5, {4, 2});
  ASSERT_TRUE(shown<QPushButton>("figures-planted"));
  EXPECT_EQ(fact("figures-genera"), QStringLiteral("Echinacea\u00A0100\u00A0%"));
  QTest::mouseClick(shown<QPushButton>("figures-planted"), Qt::LeftButton);
  EXPECT_EQ(fact("figures-genera"), QStringLiteral("Symphyotrichum\u00A0100\u00A0%"));
  EXPECT_EQ(fact("figures-nectar"),
            nectarWords(mix(MixOf::Planted).figures, mix(MixOf::Planted).season));
}

TEST_F(FiguresTest, ChartAndProfileTellOfWhatIsUnderThePointer) {
  list({{"Echinacea purpurea", 0.5}, {"Symphyotrichum laeve", 0.5}});
  const auto* chart = shown<BloomChart>("bloom-chart");
  ASSERT_TRUE(chart);
  EXPECT_TRUE(chart->wordsAt({4, 4}).contains(QStringLiteral("July to September")));
  const auto* profile = shown<HeightProfile>("height-profile");
  ASSERT_TRUE(profile);
  const QString words = profile->wordsAt({profile->width() - 4, 40});
  EXPECT_TRUE(words.contains(QStringLiteral("50\u00A0%"))) << qPrintable(words);
}

TEST_F(FiguresTest, ASouthernChartRunsFromJulyToJune) {
  moveSouth();
  list({{"Echinacea purpurea", 0.0}});
  const auto* chart = shown<BloomChart>("bloom-chart");
  ASSERT_TRUE(chart);
  QStringList weeks;
  for (int x = 0; x < chart->width(); ++x) {
    const QString words = chart->wordsAt({x, chart->height() - 4});
    if (!words.isEmpty() && (weeks.isEmpty() || weeks.back() != words)) weeks << words;
  }
  ASSERT_EQ(weeks.size(), 52);
  EXPECT_EQ(weeks.front(), QStringLiteral("2 July: 0 in flower"));
  EXPECT_EQ(weeks[26], QStringLiteral("1 January: 1 in flower"));
  EXPECT_EQ(weeks.back(), QStringLiteral("25 June: 0 in flower"));
}

TEST_F(FiguresTest, APressAddsTheSpeciesThatFillsAGapToTheListInTheFile) {
  Bed dry = *document.yard().beds.find(bed);
  dry.moisture = Moisture::Dry;  // bluestem's: it fills the lack of grasses
  ASSERT_TRUE(document.commit(put(dry, "Dry")));
  document.waitForAnalysis();
  list({{"Echinacea purpurea", 0.0}});
  QPushButton* add = shown<QPushButton>("figures-add");
  ASSERT_TRUE(add);
  const auto offered = mix(MixOf::List).remedies;
  std::string wanted;
  for (const Remedy& remedy : offered)
    if (wanted.empty() && !remedy.species.empty())
      wanted = remedy.species.front().species->botanicalName;
  QTest::mouseClick(add, Qt::LeftButton);
  const auto kept = onDisk().beds.find(bed)->plantList;
  ASSERT_EQ(kept.size(), 2u);
  EXPECT_EQ(kept.back().species, wanted);
  EXPECT_DOUBLE_EQ(kept.back().share, 0.0);
  document.undo();
  EXPECT_EQ(onDisk().beds.find(bed)->plantList.size(), 1u);
}

}  // namespace
}  // namespace tussock
