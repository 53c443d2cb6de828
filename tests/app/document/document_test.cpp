// SPDX-License-Identifier: MIT
#include "app/document/document.h"

#include <QBuffer>
#include <QSignalSpy>

#include "tests/app/open_yard.h"

namespace tussock {
namespace {

using test::OpenYard;

class DocumentTest : public OpenYard {
 protected:
  Building shed() const {
    Building made;
    made.id = Id<Building>(40);
    made.name = "Shed";
    made.footprint = rectangle({2, -3}, {5, -1});
    return made;
  }
};

TEST_F(DocumentTest, EditIsOnDiskBeforeAnyoneHearsOfIt) {
  std::string heard;
  QObject::connect(&document, &Document::changed, &document,
                   [&] { heard = onDisk().beds.find(bed)->name; });
  EXPECT_TRUE(document.commit(renamed("Gate")));
  EXPECT_EQ(heard, "Gate");
}

TEST_F(DocumentTest, ChangedCarriesTheEdit) {
  QSignalSpy changed(&document, &Document::changed);
  const ChangeSet edit = renamed("Gate");
  document.commit(edit);
  ASSERT_EQ(changed.count(), 1);
  EXPECT_EQ(changed[0][0].value<ChangeSet>(), edit);
}

TEST_F(DocumentTest, AnEmptyEditWritesNothing) {
  QSignalSpy changed(&document, &Document::changed);
  EXPECT_TRUE(document.commit(ChangeSet{"Nothing", {}}));
  EXPECT_EQ(changed.count(), 0);
  EXPECT_FALSE(document.undoLabel());
}

TEST_F(DocumentTest, UndoAndRedoLastThroughClosing) {
  document.commit(renamed("Gate"));
  const QString file = path();
  document.close();
  EXPECT_FALSE(document.isOpen());
  document.open(file);
  ASSERT_EQ(document.undoLabel(), QStringLiteral("Rename bed"));
  document.undo();
  EXPECT_EQ(document.yard().beds.find(bed)->name, "Walk");
  EXPECT_EQ(onDisk().beds.find(bed)->name, "Walk");
  ASSERT_EQ(document.redoLabel(), QStringLiteral("Rename bed"));
  document.redo();
  EXPECT_EQ(onDisk().beds.find(bed)->name, "Gate");
}

TEST_F(DocumentTest, AMissingFileLeavesTheDocumentAsItWas) {
  EXPECT_THROW(document.open(path() + QStringLiteral(".none")), StoreError);
  EXPECT_TRUE(document.isOpen());
  EXPECT_EQ(document.path(), path());
}

TEST_F(DocumentTest, AnotherProgramsWritingIsTakenInAndTheEditMadeOnTop) {
  const ChangeSet mine = put(shed(), "Draw building");
  {
    YardFile other = YardFile::open(path().toStdString());
    other.commit(renamed("Theirs"));
  }
  QSignalSpy notice(&document, &Document::notice);
  EXPECT_TRUE(document.commit(mine));
  EXPECT_EQ(notice.count(), 1);
  EXPECT_EQ(document.yard().beds.find(bed)->name, "Theirs");
  EXPECT_EQ(onDisk().beds.find(bed)->name, "Theirs");
  EXPECT_EQ(onDisk().buildings.size(), 1u);
}

TEST_F(DocumentTest, AnEditThatNoLongerFitsIsToldAndChangesNothing) {
  const ChangeSet mine = renamed("Mine");
  {
    YardFile other = YardFile::open(path().toStdString());
    other.commit(renamed("Theirs"));
  }
  QSignalSpy failed(&document, &Document::editFailed);
  EXPECT_FALSE(document.commit(mine));
  ASSERT_EQ(failed.count(), 1);
  EXPECT_TRUE(failed[0][0].toString().contains(QStringLiteral("Rename bed")));
  EXPECT_EQ(document.yard().beds.find(bed)->name, "Theirs");
}

TEST_F(DocumentTest, WritingByAnotherProgramIsNoticedWithoutAnEdit) {
  QSignalSpy notice(&document, &Document::notice);
  {
    YardFile other = YardFile::open(path().toStdString());
    other.commit(renamed("Theirs"));
  }
  ASSERT_TRUE(notice.wait(5000));
  EXPECT_EQ(document.yard().beds.find(bed)->name, "Theirs");
}

TEST_F(DocumentTest, WhatIsRemovedIsNoLongerSelected) {
  document.commit(put(shed(), "Draw building"));
  document.select({refTo(shed().id), refTo(bed)});
  document.commit(removeObjects(document.yard(), {refTo(shed().id)}));
  EXPECT_EQ(document.selection(), std::vector{refTo(bed)});
}

TEST_F(DocumentTest, AnalysisFindsSunAndFindingsOfTheLatestYard) {
  document.commit(put(shed(), "Draw building"));
  const auto id = plant("Echinacea purpurea", 5, {4, 2});
  Drift crowded = *document.yard().drifts.find(id);
  crowded.plants[1].at = crowded.plants[0].at + Point{0.05, 0};
  document.commit(put(crowded, "Move plant"));
  document.waitForAnalysis();
  ASSERT_TRUE(document.sunMap());
  EXPECT_TRUE(document.sunMap()->hoursAt({4, 2}));
  ASSERT_TRUE(document.findings());
  EXPECT_TRUE(std::any_of(document.findings()->begin(), document.findings()->end(),
                          [](const Finding& f) { return f.check == CheckId::Spacing; }));
}

TEST_F(DocumentTest, TheSunIsWorkedOutAgainOnlyWhenShadeChanges) {
  document.waitForAnalysis();
  const auto before = document.sunMap();
  ASSERT_TRUE(before);
  plant("Echinacea purpurea", 3, {4, 2});
  document.waitForAnalysis();
  EXPECT_EQ(document.sunMap(), before);
  document.commit(put(shed(), "Draw building"));
  document.waitForAnalysis();
  ASSERT_NE(document.sunMap(), before);
  EXPECT_LT(document.sunMap()->hoursAt({3.5, 0.1})->total(), before->hoursAt({3.5, 0.1})->total());
}

TEST_F(DocumentTest, ResultsArriveByThemselves) {
  QSignalSpy sun(&document, &Document::sunMapChanged), found(&document, &Document::findingsChanged);
  ASSERT_TRUE(found.count() > 0 || found.wait(20000));
  EXPECT_EQ(sun.count(), 1);
}

TEST_F(DocumentTest, ReopeningTheSameYardGivesItsSunAgain) {
  document.waitForAnalysis();
  document.close();
  EXPECT_FALSE(document.sunMap());
  document.open(path());
  document.waitForAnalysis();
  EXPECT_TRUE(document.sunMap());
  EXPECT_TRUE(document.findings());
}

// A JPEG whose Exif (JEITA CP-3451) says orientation 6: to be turned a quarter for viewing.
QByteArray sidewaysPicture() {
  QImage image(40, 20, QImage::Format_RGB32);
  image.fill(Qt::darkGreen);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "JPG");
  const QByteArray exif = QByteArray::fromHex(
      "ffe10022457869660000"          // APP1, 34 bytes, "Exif"
      "4d4d002a00000008"              // big-endian TIFF, first directory at 8
      "0001011200030000000100060000"  // one entry: orientation, short, 6
      "00000000");                    // no further directory
  return bytes.insert(2, exif);
}

TEST_F(DocumentTest, APictureComesBackAsTheCameraMeantIt) {
  Photo photo;
  photo.id = Id<Photo>(50);
  photo.contentHash = document.keepPicture(sidewaysPicture());
  photo.widthPixels = 20, photo.heightPixels = 40;
  ASSERT_TRUE(document.commit(put(photo, "Lay photo")));
  const QString file = path();
  document.close();
  document.open(file);
  EXPECT_EQ(document.picture(photo.contentHash).size(), QSize(20, 40));
  EXPECT_TRUE(document.picture(std::string(64, '0')).isNull());
}

}  // namespace
}  // namespace tussock
