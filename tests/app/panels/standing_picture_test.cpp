// SPDX-License-Identifier: MIT
#include "app/panels/standing_picture.h"

#include <QApplication>
#include <QTest>

#include "app/look/theme.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class StandingPictureTest : public test::OpenYard {
 protected:
  StandingPictureTest() : picture(document, bed, std::nullopt) {
    picture.resize(300, 150);
    picture.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&picture));
  }

  StandingPicture picture;
};

TEST_F(StandingPictureTest, IsHiddenWhileNothingIsPlanted) {
  picture.refresh();
  EXPECT_TRUE(picture.isHidden());
}

TEST_F(StandingPictureTest, ClickingAPlantSelectsItsDrift) {
  const Id<Drift> drift = plant("Echinacea purpurea", 5, {4, 2});
  picture.refresh();
  ASSERT_TRUE(picture.isVisible());
  const Plant& first = document.yard().drifts.find(drift)->plants.front();
  const QPointF foot = picture.footOf(first.id).value();
  QTest::mouseClick(&picture, Qt::LeftButton, {}, (foot - QPointF(0, 4)).toPoint());
  ASSERT_EQ(document.selection().size(), 1u);
  EXPECT_EQ(document.selection().front(), refTo(drift));
}

TEST_F(StandingPictureTest, PlantsAreDrawnAtTheScaleOfTheBed) {
  const Id<Drift> left = plant("Echinacea purpurea", 1, {2, 1});
  const Id<Drift> right = plant("Symphyotrichum laeve", 1, {6, 1});
  picture.refresh();
  const Point a = document.yard().drifts.find(left)->plants.front().at;
  const Point b = document.yard().drifts.find(right)->plants.front().at;
  const auto foot = [&](Id<Drift> id) {
    return picture.footOf(document.yard().drifts.find(id)->plants.front().id).value();
  };
  EXPECT_NEAR(foot(right).x() - foot(left).x(), (b.x - a.x) * picture.pixelsPerMetre(), 0.5);
}

// The bed says whether anybody looks at it from there.
TEST_F(StandingPictureTest, SaysFromWhereItIsDrawn) {
  plant("Echinacea purpurea", 7, {4, 2});
  const auto captionWith = [this](const char* viewing) {
    Bed changed = *document.yard().beds.find(bed);
    changed.viewing = parseViewing(viewing).value();
    Draft draft(document.yard());
    draft.put(std::move(changed));
    document.commit(draft.finish("Change seen from"));
    picture.refresh();
    EXPECT_TRUE(picture.accessibleName().endsWith(picture.caption()));
    return picture.caption();
  };
  EXPECT_EQ(captionWith("E"), QStringLiteral("Seen from the east"));
  EXPECT_EQ(captionWith("W;E"), QStringLiteral("Seen from the west"));
  EXPECT_EQ(captionWith("all"), QStringLiteral("Seen all round: drawn from the south"));
  EXPECT_EQ(captionWith(""), QStringLiteral("No viewing side set: drawn from the south"));
}

TEST_F(StandingPictureTest, ShowsFlowersInTheWeekThatIsShown) {
  plant("Echinacea purpurea", 7, {4, 2});
  picture.refresh();
  picture.setWeek(weekOf(std::chrono::August / 15));
  const QImage august = picture.grab().toImage();
  picture.setWeek(weekOf(std::chrono::May / 15));
  EXPECT_NE(august, picture.grab().toImage());
}

TEST_F(StandingPictureTest, TakesTheColoursOfAnotherTheme) {
  plant("Echinacea purpurea", 7, {4, 2});
  picture.refresh();
  applyTheme(*qApp, Theme::light());
  (void)picture.grab();
  applyTheme(*qApp, Theme::darkTheme());
  const QImage after = picture.grab().toImage();
  picture.refresh();  // draws it anew
  const QImage anew = picture.grab().toImage();
  applyTheme(*qApp, Theme::light());
  EXPECT_EQ(after, anew);
  EXPECT_NE(anew, picture.grab().toImage());
}

}  // namespace
}  // namespace tussock
