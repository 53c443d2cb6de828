// SPDX-License-Identifier: MIT
// What a filling had to say, and how long that stands in the window.
#include <QLabel>
#include <QLineEdit>

#include "tests/app/tools/margin_field.h"
#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

class FillNotes : public FillWindow {
 protected:
  [[nodiscard]] QString notes() const {
    const auto* label = part<QLabel>("fill-notes");
    return label ? label->text() : QString();
  }
  // A set-back that leaves no ground.
  void fillTooFarIn() {
    startBed(sunnyList());
    enterInMargin(*window, "bed-setback", QStringLiteral("16 ft"));
    fillWith("fill-bed");
    ASSERT_TRUE(notes().startsWith(
        QStringLiteral("Nothing was planted. There is no room for a plant: the set-back of ")))
        << notes().toStdString();
  }
};

TEST_F(FillNotes, BeginWithThatNothingWasPlanted) {
  fillTooFarIn();
}

TEST_F(FillNotes, GoWithTheUndoOfWhatTheyTellOf) {
  fillTooFarIn();
  key(Qt::Key_Z, Qt::ControlModifier);
  ASSERT_FALSE(inFile().beds.find(bed)->setback);
  EXPECT_EQ(notes(), QString());
  EXPECT_TRUE(filling().notesOf(bed).empty());
}

TEST_F(FillNotes, GoWithAnEditOfTheBed) {
  fillTooFarIn();
  enterInMargin(*window, "bed-setback", QStringLiteral("0.3 m"));
  EXPECT_EQ(notes(), QString());
}

TEST_F(FillNotes, StayWithAnEditElsewhere) {
  fillTooFarIn();
  trigger("toolWater");
  click({-1.0, -1.0});
  ASSERT_EQ(inFile().waterPoints.size(), 1u);
  EXPECT_FALSE(filling().notesOf(bed).empty());
}

TEST_F(FillNotes, AreCountedByTheirNumber) {
  startBed(sunnyList());
  fillWith("fill-bed");
  const std::size_t all = filling().notesOf(bed).size();
  ASSERT_GT(all, 1u);
  EXPECT_EQ(
      part<QPushButton>("fill-notes-more")->text(),
      all == 2 ? QStringLiteral("1 more note") : QStringLiteral("%1 more notes").arg(all - 1));
}

}  // namespace
}  // namespace tussock::test
