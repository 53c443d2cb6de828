// SPDX-License-Identifier: MIT
// What a filling had to say.
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
