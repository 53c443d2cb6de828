// SPDX-License-Identifier: MIT
// What the view shows is compared with the engine's own maps of the same yard.
#include "app/document/sun_view.h"

#include <QSignalSpy>

#include "core/sun/live_map.h"
#include "core/sun/tree_growth.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class SunViewTest : public test::OpenYard {
 protected:
  SunViewTest() {
    tree.id = document.ids().take<Tree>();
    tree.at = {4.0, -2.0};
    tree.growth = Length::centimetres(40);
    document.commit(put(tree, "Plant tree"));
    hours();
    view.waitForMap();
  }
  void hours() {
    SunChoice choice = view.choice();
    choice.look = SunLook::Hours;
    view.choose(choice);
  }
  [[nodiscard]] Yard moved(Point to) const {
    Tree there = tree;
    there.at = to;
    return apply(document.yard(), put(there, "Move tree"));
  }
  [[nodiscard]] static std::vector<float> hoursOf(const Yard& yard, const SunMapRequest& request) {
    return hourGridOf(*computeSunMap(yard, request)).hours;
  }
  // Buildings have no hours, and nothing equals that; these yards have none.
  [[nodiscard]] std::vector<float> shown() const { return view.grid().hours; }

  Tree tree;
  SunView view{document};
};

TEST_F(SunViewTest, ShowsTheSeasonOfTheYardAsItIs) {
  EXPECT_EQ(shown(), hoursOf(document.yard(), seasonRequest(document.yard())));
  EXPECT_FALSE(view.previewing());
}

TEST_F(SunViewTest, AnEditInHandIsShownAndItsEndGoesBack) {
  const auto before = shown();
  const SunMapRequest request = previewRequest(document.yard());
  for (const double x : {4.5, 6.0, 7.0}) {
    view.preview(moved({x, -2.0}));
    view.waitForMap();
    EXPECT_EQ(shown(), hoursOf(moved({x, -2.0}), request)) << x;
  }
  view.preview(std::nullopt);
  view.waitForMap();
  EXPECT_EQ(shown(), before);
}

TEST_F(SunViewTest, OfManyEditsInARowTheLastIsShown) {
  QSignalSpy maps(&view, &SunView::mapChanged);
  for (int i = 0; i < 40; ++i) view.preview(moved({4.0 + 0.05 * i, -2.0}));
  view.waitForMap();
  EXPECT_EQ(shown(), hoursOf(moved({4.0 + 0.05 * 39, -2.0}), previewRequest(document.yard())));
  EXPECT_LT(maps.count(), 40);
}

TEST_F(SunViewTest, TreesGrowOnWithoutTouchingTheYard) {
  SunChoice choice = view.choice();
  choice.yearsAhead = 15;
  view.choose(choice);
  view.waitForMap();
  const Yard later = grownBy(document.yard(), 15.0);
  EXPECT_EQ(shown(), hoursOf(later, seasonRequest(later)));
  EXPECT_EQ(onDisk().trees.find(tree.id)->height, tree.height);
  choice.yearsAhead = 0;
  view.choose(choice);
  view.waitForMap();
  EXPECT_EQ(shown(), hoursOf(document.yard(), seasonRequest(document.yard())));
}

TEST_F(SunViewTest, AMonthIsShownWhileDraggingToo) {
  SunChoice choice = view.choice();
  choice.span = SunSpan::Month;
  choice.month = std::chrono::September;
  view.choose(choice);
  view.preview(moved({6.0, -2.0}));
  view.waitForMap();
  SunMapRequest request = previewRequest(document.yard());
  request.detail = SunDetail::Months;
  const auto map = computeSunMap(moved({6.0, -2.0}), request);
  EXPECT_EQ(shown(), hourGridOf(*map, std::chrono::September).hours);
}

TEST_F(SunViewTest, AChoiceOfMonthsOutlivesADrag) {
  const auto months = view.months();
  ASSERT_EQ(months.size(), 7u) << "20 April to 18 October";
  view.preview(moved({6.0, -2.0}));
  view.waitForMap();
  EXPECT_EQ(view.months(), months);
}

TEST_F(SunViewTest, AnotherYardHasAnotherMap) {
  QSignalSpy changed(&view, &SunView::mapChanged);
  document.close();
  EXPECT_FALSE(view.map());
  EXPECT_TRUE(view.grid().empty());
  EXPECT_TRUE(view.months().empty());
}

}  // namespace
}  // namespace tussock
