// SPDX-License-Identifier: MIT
// A bed filled without a list of its own says what is planted, and takes that as its list.
#include <QLabel>

#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

using ProposedList = FillWindow;

TEST_F(ProposedList, IsNoLongerSaidToBeMissingOnceItIsPlanted) {
  startBed();
  EXPECT_TRUE(part<QLabel>("plant-list-said")->text().startsWith(QStringLiteral("No species")));
  fillWith("fill-bed");
  const std::set<std::string> planted = speciesIn(inFile());
  ASSERT_GT(planted.size(), 1u);
  const QString said = part<QLabel>("plant-list-said")->text();
  EXPECT_FALSE(said.startsWith(QStringLiteral("No species"))) << said.toStdString();
  EXPECT_TRUE(said.contains(QStringLiteral("%1 species are planted").arg(planted.size())))
      << said.toStdString();
}

TEST_F(ProposedList, BecomesTheListInTheFile) {
  startBed();
  fillWith("fill-bed");
  push("plant-list-planted");
  std::set<std::string> listed;
  for (const ListedSpecies& entry : listInFile()) listed.insert(entry.species);
  EXPECT_EQ(listed, speciesIn(inFile()));
  double sum = 0.0;
  for (const ListedSpecies& entry : listInFile()) {
    EXPECT_GE(entry.share, 0.01) << entry.species;
    sum += entry.share;
  }
  EXPECT_NEAR(sum, 1.0, 1e-9);
  EXPECT_EQ(undoLabel(), QStringLiteral("List what is planted"));
  EXPECT_EQ(part<QPushButton>("plant-list-planted"), nullptr);
}

// The note that is shown first.
QString firstNote(const QLabel* notes) {
  return notes ? notes->text().section(QLatin1Char('\n'), 0, 0) : QString();
}

TEST_F(ProposedList, IsSaidToBeOneWithWhatItReplaced) {
  startBed(sunnyList());
  fillWith("fill-bed");
  const std::set<std::string> stood = speciesIn(inFile());
  while (!listInFile().empty()) push("plant-list-remove");
  key(Qt::Key_B, Qt::ControlModifier);
  ASSERT_TRUE(QTest::qWaitFor([this] { return !filling().running(); }, 60000));
  std::size_t gone = 0;
  const std::set<std::string> now = speciesIn(inFile());
  for (const std::string& species : stood) gone += now.count(species) == 0 ? 1 : 0;
  ASSERT_GT(gone, 1u);
  const QString note = firstNote(part<QLabel>("fill-notes"));
  EXPECT_TRUE(note.contains(QStringLiteral("proposed"))) << note.toStdString();
  EXPECT_TRUE(note.contains(QStringLiteral("%1 species that stood there were replaced").arg(gone)))
      << note.toStdString();
  EXPECT_TRUE(note.contains(QStringLiteral("Undo brings them back"))) << note.toStdString();
  EXPECT_TRUE(note.contains(QStringLiteral("“List what is planted”"))) << note.toStdString();
  key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(speciesIn(inFile()), stood);
  EXPECT_EQ(part<QLabel>("fill-notes"), nullptr) << "it tells of a filling that is taken back";
}

TEST_F(ProposedList, ReplacesNothingInAnEmptyBed) {
  startBed();
  fillWith("fill-bed");
  const QString note = firstNote(part<QLabel>("fill-notes"));
  EXPECT_TRUE(note.contains(QStringLiteral("proposed"))) << note.toStdString();
  EXPECT_FALSE(note.contains(QStringLiteral("replaced"))) << note.toStdString();
}

TEST_F(ProposedList, IsNotToldOfWhereNothingWasPlanted) {
  startBed();
  fillWith("fill-bed");
  const Yard before = inFile();
  fillWith("fill-gaps");
  ASSERT_EQ(inFile(), before);
  const QString note = firstNote(part<QLabel>("fill-notes"));
  EXPECT_TRUE(note.startsWith(QStringLiteral("Nothing was planted. There is no room left")))
      << note.toStdString();
}

}  // namespace
}  // namespace tussock::test
