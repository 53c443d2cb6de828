// SPDX-License-Identifier: MIT
// Every colour in which the plan says something, on screen in both themes and on paper, against the
// ground it stands on. WCAG 2.2, criterion 1.4.3: 4.5:1 for text of normal size.
#include <array>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "app/canvas/scene.h"
#include "app/print/paper_symbols.h"
#include "core/catalog/catalogue.h"
#include "tests/app/look/contrast.h"
#include "tests/support/random_yard.h"

namespace tussock {
namespace {

using test::contrast;

constexpr double kText = 4.5;

class ScreenLabels : public testing::TestWithParam<bool> {};
INSTANTIATE_TEST_SUITE_P(LightAndDark, ScreenLabels, testing::Bool(), [](const auto& param) {
  return std::string(param.param ? "Dark" : "Light");
});

// Labels stand on a halo of the paper's colour, whatever lies under them.
TEST_P(ScreenLabels, ReadOnTheirHaloForEveryKindOfThing) {
  CanvasLook look;
  look.theme = GetParam() ? Theme::darkTheme() : Theme::light();
  look.facts = readShippedCatalogue().catalogue;
  std::map<std::size_t, int> labelsByKind;
  for (const bool allNames : {false, true})
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
      test::Random random(seed);
      Scene scene;
      scene.show(test::randomYard(random));
      look.allNames = allNames;
      Box everywhere;
      everywhere.include(Point{-1e4, -1e4}), everywhere.include(Point{1e4, 1e4});
      for (const Item* item : scene.within(everywhere)) {
        std::vector<Label> labels;
        item->addLabels(labels, SceneMapping(Point{}, 200.0, QSizeF(800, 600)), look);
        for (const Label& label : labels) {
          ++labelsByKind[item->ref().kind];
          EXPECT_EQ(label.ink.alpha(), 255);
          EXPECT_GE(contrast(label.ink, look.theme.paper), kText)
              << label.lines.join(' ').toStdString();
        }
      }
    }
  EXPECT_GE(labelsByKind.size(), 6u) << "beds, drifts, buildings, trees, ground and water";
}

// On paper everything is said in one ink, on white or on the wash of what it stands on.
TEST(PaperLabels, ReadOnEveryWash) {
  const QColor ink = paperInk();
  EXPECT_EQ(ink.alpha(), 255);
  EXPECT_GE(contrast(ink, Qt::white), 7.0) << "the enhanced level, 1.4.6: it is read out of doors";
  for (const Wash wash : {Wash::None, Wash::Paper, Wash::Soil, Wash::Paving, Wash::Building,
                          Wash::Crown, Wash::Hedge})
    EXPECT_GE(contrast(ink, washOf(wash, {})), kText) << int(wash);
}

TEST(PaperLabels, ReadOnTheWashOfEveryFlower) {
  std::vector<Rgb> flowers{{0, 0, 0}, {255, 0, 0}, {0, 255, 0}, {0, 0, 255}, {128, 0, 128}};
  const Catalogue facts = readShippedCatalogue().catalogue;
  for (const Species& species : facts.species())
    if (species.flowerColour) flowers.push_back(*species.flowerColour);
  EXPECT_GT(flowers.size(), 100u);
  for (const Rgb& flower : flowers)
    EXPECT_GE(contrast(paperInk(), washOf(Wash::Drift, flower)), kText)
        << flower.red << ' ' << flower.green << ' ' << flower.blue;
}

}  // namespace
}  // namespace tussock
