// SPDX-License-Identifier: MIT
// Plant lists that cannot be planted as they are: said plainly, and the best is made of them.
#include <QLabel>

#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

class BadLists : public FillWindow {
 protected:
  [[nodiscard]] QString said() const {
    const auto* label = part<QLabel>("plant-list-said");
    return label ? label->text() : QString();
  }
  // All that the filling had to say, with a press where more is folded away.
  [[nodiscard]] QString notes() const {
    if (part<QPushButton>("fill-notes-more")) push("fill-notes-more");
    const auto* label = part<QLabel>("fill-notes");
    return label ? label->text() : QString();
  }
  void share(std::size_t row, const char* typed) const {
    QCoreApplication::processEvents();
    std::vector<QLineEdit*> shown;
    for (auto* line : window->findChildren<QLineEdit*>(QStringLiteral("plant-list-share")))
      if (line->isVisible()) shown.push_back(line);
    ASSERT_LT(row, shown.size());
    shown[row]->setFocus();
    shown[row]->selectAll();
    QTest::keyClicks(shown[row], QLatin1String(typed));
    QTest::keyClick(shown[row], Qt::Key_Return);
  }
};

TEST_F(BadLists, AnUnknownNameTypedIsSaidAndNotListed) {
  startBed();
  list("Nonesuch ignota");
  EXPECT_TRUE(said().contains(QStringLiteral("Nonesuch ignota"))) << said().toStdString();
  EXPECT_TRUE(listInFile().empty());
  list("Echinacea purpurea");
  EXPECT_FALSE(said().contains(QStringLiteral("Nonesuch"))) << "that is over";
  EXPECT_EQ(listInFile().size(), 1u);
}

// A list may come from elsewhere with a species that the plant facts do not know.
TEST_F(BadLists, AnUnknownSpeciesOnTheListIsLeftOutAndTold) {
  auto list = sunnyList();
  list.push_back({"Nonesuch ignota", 0.3});
  startBed(list);
  fillWith("fill-bed");
  EXPECT_TRUE(notes().contains(QStringLiteral("Nonesuch ignota is not in the catalogue")))
      << notes().toStdString();
  EXPECT_GT(inFile().drifts.size(), 2u);
  EXPECT_FALSE(speciesIn(inFile()).contains("Nonesuch ignota"));
  EXPECT_EQ(listInFile(), list) << "the list is the user's own";
}

TEST_F(BadLists, SharesOverTheWholeAreSaidAndTakenInProportion) {
  startBed(sunnyList());
  share(0, "90");
  share(1, "60");
  EXPECT_TRUE(said().contains(QStringLiteral("150"))) << said().toStdString();
  fillWith("fill-bed");
  EXPECT_TRUE(notes().contains(QStringLiteral("150 %; they were taken in proportion")))
      << notes().toStdString();
  std::map<std::string, double> plants;
  for (const Drift& drift : inFile().drifts) plants[drift.species] += double(drift.plants.size());
  EXPECT_GT(plants["Echinacea purpurea"], plants["Liatris spicata"]);
  EXPECT_GT(plants["Liatris spicata"], 0.0);
}

// A plant of the woods in full sun (see resources/plants.csv).
TEST_F(BadLists, NothingThatSuitsPlantsNothingAndSaysSo) {
  startBed({{"Tiarella cordifolia", 0.0}});
  fillWith("fill-bed");
  EXPECT_TRUE(notes().startsWith(QStringLiteral("Nothing was planted. Nothing on the list suits")))
      << notes().toStdString();
  EXPECT_TRUE(comesIntoSight(part<QLabel>("fill-notes")));
  EXPECT_EQ(inFile().drifts.size(), 0u);
  EXPECT_TRUE(undoLabel().isEmpty());
}

}  // namespace
}  // namespace tussock::test
