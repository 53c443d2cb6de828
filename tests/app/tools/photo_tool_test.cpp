// SPDX-License-Identifier: MIT
#include "app/tools/photo_tool.h"

#include <QBuffer>
#include <QCheckBox>
#include <QDropEvent>
#include <QMimeData>
#include <QUrl>

#include <sqlite3.h>

#include "app/canvas/photo_frame.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

// A JPEG whose tag says that its stored rows are the right-hand side of the picture. Exif 2.32,
// 4.6.4 A: orientation 6, "the 0th row is the visual right-hand side, the 0th column the visual
// top".
QByteArray turnedJpeg(const QImage& stored) {
  QByteArray jpeg;
  QBuffer buffer(&jpeg);
  buffer.open(QIODevice::WriteOnly);
  EXPECT_TRUE(stored.save(&buffer, "JPEG", 95));
  const QByteArray exif = QByteArray::fromHex(
      "ffe10022"                  // APP1, 34 bytes
      "457869660000"              // "Exif"
      "4d4d002a00000008"          // big-endian TIFF, its directory at 8
      "0001"                      // one entry
      "011200030000000100060000"  // Orientation, SHORT, one value: 6
      "00000000");                // no directory after it
  return jpeg.insert(2, exif);    // right after the start-of-image marker
}

class PhotoToolTest : public WindowTest {
 protected:
  void write(const QString& name, const QByteArray& bytes) const {
    QFile file(path(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
  void drop(const QString& name) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path(name))});
    const QPoint at = canvas().rect().center();
    // Qt hands a drop only to the widget that took the drag's arrival.
    QDragEnterEvent arrival(at, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&canvas(), &arrival);
    EXPECT_TRUE(arrival.isAccepted());
    QDropEvent event(at, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&canvas(), &event);
  }
  [[nodiscard]] int picturesInFile() const {
    sqlite3* file = nullptr;
    sqlite3_stmt* count = nullptr;
    EXPECT_EQ(sqlite3_open(document.path().toUtf8().constData(), &file), SQLITE_OK);
    EXPECT_EQ(sqlite3_prepare_v2(file, "SELECT count(*) FROM blob", -1, &count, nullptr),
              SQLITE_OK);
    EXPECT_EQ(sqlite3_step(count), SQLITE_ROW);
    const int pictures = sqlite3_column_int(count, 0);
    sqlite3_finalize(count);
    sqlite3_close(file);
    return pictures;
  }
  void bringIn() {
    start();
    QImage picture(800, 600, QImage::Format_RGB32);
    picture.fill(QColor(120, 150, 90));
    prompts->picture = path(QStringLiteral("aerial.png"));
    ASSERT_TRUE(picture.save(prompts->picture));
    trigger("actionPhoto");
    ASSERT_EQ(inFile().photos.size(), 1u);
  }
  [[nodiscard]] Photo photo() const { return *inFile().photos.begin(); }
  // Where a pixel of the picture lies on site.
  [[nodiscard]] Point site(double x, double y) const {
    const QPointF at = photoTransform(photo()).map(QPointF(x, y));
    return {at.x(), at.y()};
  }
  // The site point a click at `p` gives: clicks fall on whole pixels.
  [[nodiscard]] Point clicked(Point p) const { return canvas().mapping().toSite(pixels(p)); }
  [[nodiscard]] QPointF inPicture(Point p) const {
    return photoTransform(photo()).inverted().map(QPointF(p.x, p.y));
  }
  void expectScaled(const QString& typed, double metres);
};

TEST_F(PhotoToolTest, ADroppedJpegIsTurnedAsItsTagSays) {
  start();
  QImage stored(80, 40, QImage::Format_RGB32);
  stored.fill(Qt::blue);
  for (int y = 20; y < 40; ++y)
    for (int x = 0; x < 40; ++x) stored.setPixelColor(x, y, Qt::red);  // bottom left as stored
  write(QStringLiteral("porch.jpg"), turnedJpeg(stored));
  drop(QStringLiteral("porch.jpg"));
  ASSERT_EQ(inFile().photos.size(), 1u);
  EXPECT_EQ(photo().name, "porch");
  EXPECT_EQ(photo().widthPixels, 40);
  EXPECT_EQ(photo().heightPixels, 80);
  const QColor topLeft = document.picture(photo().contentHash).pixelColor(5, 5);
  EXPECT_GT(topLeft.red(), 200);
  EXPECT_LT(topLeft.blue(), 60);
  EXPECT_EQ(undoLabel(), QStringLiteral("Bring in photo"));
  trigger("actionUndo");
  EXPECT_TRUE(inFile().photos.empty());
}

TEST_F(PhotoToolTest, WhatIsNoPictureIsToldAndNotLaid) {
  start();
  write(QStringLiteral("notes.jpg"), "a shopping list");
  prompts->picture = path(QStringLiteral("notes.jpg"));
  trigger("actionPhoto");
  EXPECT_TRUE(inFile().photos.empty());
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("notes.jpg")));
}

// ITU-T T.81 (B.1.1) and ISO/IEC 15948 (5.6): a JPEG ends with EOI, a PNG with IEND. A decoder
// fills what is missing with grey.
TEST_F(PhotoToolTest, APictureCutShortIsToldAndNoneOfItKept) {
  start();
  QImage picture(800, 600, QImage::Format_RGB32);
  for (int y = 0; y < 600; ++y)
    for (int x = 0; x < 800; ++x)
      picture.setPixel(x, y, qRgb(x * 7 % 256, y * 5 % 256, x * y % 256));
  for (const char* kind : {"JPG", "PNG"}) {
    QByteArray whole;
    QBuffer buffer(&whole);
    buffer.open(QIODevice::WriteOnly);
    ASSERT_TRUE(picture.save(&buffer, kind));
    ASSERT_GT(whole.size(), 30000);
    const QString name = QStringLiteral("aerial.") + QLatin1String(kind).toString().toLower();
    prompts->picture = path(name);
    for (const qsizetype bytes : {qsizetype(3000), whole.size() / 2, whole.size() - 2}) {
      write(name, whole.left(bytes));
      trigger("actionPhoto");
      EXPECT_TRUE(window->messages().words().contains(name + QStringLiteral(" is cut short")))
          << kind << " " << bytes;
      window->messages().dismiss();
    }
    EXPECT_TRUE(inFile().photos.empty());
    EXPECT_EQ(picturesInFile(), 0) << kind;
  }
}

TEST_F(PhotoToolTest, BytesAfterTheEndOfAPictureDoNotMatter) {
  start();
  QImage picture(80, 60, QImage::Format_RGB32);
  picture.fill(QColor(120, 150, 90));
  QByteArray jpeg = turnedJpeg(picture);
  write(QStringLiteral("aerial.jpg"), jpeg + QByteArray(500, 'x'));
  prompts->picture = path(QStringLiteral("aerial.jpg"));
  trigger("actionPhoto");
  EXPECT_EQ(inFile().photos.size(), 1u);
  EXPECT_FALSE(window->messages().isVisible());
  // A small picture in a segment of its own (Exif 2.32, 4.5.2) has an end marker, but is not it.
  jpeg.insert(2, QByteArray::fromHex("ffe10009") + "thumb" + QByteArray::fromHex("ffd9"));
  write(QStringLiteral("aerial.jpg"), jpeg);
  trigger("actionPhoto");
  EXPECT_EQ(inFile().photos.size(), 2u);
  write(QStringLiteral("aerial.jpg"), jpeg.left(jpeg.size() - 40));
  trigger("actionPhoto");
  EXPECT_EQ(inFile().photos.size(), 2u);
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("cut short")));
}

// The two pixels of the picture clicked on lie the typed distance apart, to a millimetre.
void PhotoToolTest::expectScaled(const QString& typed, double metres) {
  bringIn();
  const Point a = clicked(site(200, 300)), b = clicked(site(600, 200));
  const QPointF first = inPicture(a), second = inPicture(b);
  click(site(200, 300));
  click(site(600, 200));
  type(typed);
  EXPECT_NEAR(distance(site(first.x(), first.y()), site(second.x(), second.y())), metres, 0.001);
  EXPECT_NEAR(distance(site(first.x(), first.y()), a), 0.0, 1e-6) << "the first point stays";
  EXPECT_EQ(undoLabel(), QStringLiteral("Scale photo"));
}

TEST_F(PhotoToolTest, TwoPointsAreScaledInFeetAndInches) {
  expectScaled(QStringLiteral("24' 6\""), 24.5 * 0.3048);
}

TEST_F(PhotoToolTest, TwoPointsAreScaledInMetres) {
  expectScaled(QStringLiteral("7.5 m"), 7.5);
}

TEST_F(PhotoToolTest, TheFirstPhotoIsSeenWholeAlsoOnceScaled) {
  const auto seesAll = [this] {
    const Box seen = canvas().mapping().visible(), all = boundsOf(photo());
    return seen.contains(all.low) && seen.contains(all.high);
  };
  bringIn();
  EXPECT_TRUE(seesAll());
  click(site(200, 300));
  click(site(600, 200));
  type(QStringLiteral("300 ft"));
  EXPECT_TRUE(seesAll());
}

TEST_F(PhotoToolTest, AScaledPhotoAsksForNoSecondPoint) {
  QSignalSpy hints(&canvas(), &Canvas::hintChanged);
  bringIn();
  click(site(200, 300));
  EXPECT_TRUE(canvas().tool()->hint().contains(QStringLiteral("second point")));
  click(site(600, 200));
  type(QStringLiteral("30 ft"));
  ASSERT_FALSE(hints.isEmpty());
  EXPECT_EQ(hints.last().first().toString(), canvas().tool()->hint());
  EXPECT_FALSE(canvas().tool()->hint().contains(QStringLiteral("second point")));
}

TEST_F(PhotoToolTest, TheWaysToPlaceAPhotoAreAllThereToClick) {
  bringIn();
  QCoreApplication::processEvents();
  for (const char* name : {"way0", "way1", "way2", "photoFade", "photoLock"}) {
    const auto* field = window->findChild<QWidget*>(QString::fromLatin1(name));
    ASSERT_TRUE(field) << name;
    EXPECT_TRUE(field->isVisible()) << name;
    EXPECT_GE(field->width(), field->minimumSizeHint().width()) << name;
    EXPECT_TRUE(field->parentWidget()->rect().contains(field->geometry())) << name;
  }
  QTest::mouseClick(window->findChild<QWidget*>(QStringLiteral("way2")), Qt::LeftButton);
  EXPECT_EQ(canvas().tool()->way(), int(PhotoTool::Way::Drag));
}

TEST_F(PhotoToolTest, ALineIsTurnedToTrueNorth) {
  bringIn();
  const Point a = clicked(site(300, 500)), b = clicked(site(500, 150));
  const QPointF south = inPicture(a), north = inPicture(b);
  canvas().tool()->setWay(int(PhotoTool::Way::North));
  const Point from = site(300, 500), to = site(500, 150);
  click(from);
  click(to);
  const Point line = site(north.x(), north.y()) - site(south.x(), south.y());
  EXPECT_NEAR(std::atan2(line.x, line.y) * 180.0 / M_PI, 0.0, 0.01);
  trigger("actionUndo");
  EXPECT_EQ(photo().turn.degrees(), 0.0);
}

TEST_F(PhotoToolTest, ADragMovesThePhotoAndALockHoldsIt) {
  bringIn();
  canvas().tool()->setWay(int(PhotoTool::Way::Drag));
  const Photo before = photo();
  const Point from = site(400, 300), to = site(500, 250);
  const Point step = clicked(to) - clicked(from);
  drag(from, to);
  EXPECT_NEAR(photo().corner.x - before.corner.x, step.x, 1e-6);
  EXPECT_NEAR(photo().corner.y - before.corner.y, step.y, 1e-6);
  trigger("actionUndo");
  EXPECT_EQ(photo(), before);
  auto* lock = window->findChild<QCheckBox*>(QStringLiteral("photoLock"));
  ASSERT_TRUE(lock);
  lock->click();
  EXPECT_TRUE(photo().locked);
  drag(from, to);
  EXPECT_EQ(photo().corner, before.corner);
  EXPECT_EQ(undoLabel(), QStringLiteral("Lock photo"));
}

}  // namespace
}  // namespace tussock::test
