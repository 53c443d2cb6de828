// SPDX-License-Identifier: MIT
// Showing the whole yard shows all that is drawn.
#include <QBuffer>

#include <gtest/gtest.h>

#include "app/canvas/photo_frame.h"
#include "core/edit/draft.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class FitTest : public test::WindowTest {
 protected:
  // A square lot with a bed, paving that leads out of it and a tree whose crown reaches further.
  [[nodiscard]] static Yard wide() {
    test::YardBuilder builder;
    builder.bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))");
    builder.paving("Drive", "POLYGON((5 5, 25 5, 25 8, 5 8, 5 5))");
    Yard yard = builder.build();
    LotLine lot;
    lot.id = Id<LotLine>(900);
    lot.outline.outer = {{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    yard.lotLines = yard.lotLines.with(lot);
    Tree oak;
    oak.id = Id<Tree>(901);
    oak.at = {-8, 5};
    oak.crownRadius = Length::metres(7);
    yard.trees = yard.trees.with(oak);
    return yard;
  }
  static QByteArray pngOf(QSize size) {
    QImage picture(size, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    EXPECT_TRUE(picture.save(&buffer, "PNG"));
    return bytes;
  }
  void lay(double opacity) {
    Photo photo;
    photo.id = Id<Photo>(902);
    photo.contentHash = document.keepPicture(pngOf(QSize(800, 600)));
    photo.corner = {-40, 30};
    photo.widthPixels = 800, photo.heightPixels = 600;
    photo.metresPerPixel = 0.1;
    photo.opacity = opacity;
    Draft draft(document.yard());
    draft.put(photo);
    ASSERT_TRUE(document.commit(draft.finish("Lay photo")));
  }
  [[nodiscard]] bool sees(const Box& box) const {
    const Box seen = canvas().mapping().visible();
    return seen.contains(box.low) && seen.contains(box.high);
  }
};

TEST_F(FitTest, ShowsCrownsAndWhatLiesOutsideTheLot) {
  start(wide());
  trigger("actionFit");
  EXPECT_TRUE(sees(Box{{-15, -2}, {25, 12}}));
  EXPECT_LT(canvas().mapping().visible().width(), 60.0) << "and not much else";
}

TEST_F(FitTest, ShowsAPhotoUnlessItIsFadedAway) {
  start(wide());
  lay(0.7);
  trigger("actionFit");
  EXPECT_TRUE(sees(Box{{-40, -30}, {40, 30}}));
  lay(0.0);
  trigger("actionFit");
  EXPECT_FALSE(sees(Box{{-40, -30}, {40, 30}}));
  EXPECT_TRUE(sees(Box{{-15, -2}, {25, 12}}));
}

}  // namespace
}  // namespace tussock
