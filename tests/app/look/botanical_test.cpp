// SPDX-License-Identifier: MIT
// The width told of a name is that which it is drawn in.
#include "app/look/botanical.h"

#include <QImage>

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(Botanical, TheWidthToldIsThatDrawn) {
  QImage image(800, 40, QImage::Format_ARGB32_Premultiplied);
  QPainter painter(&image);
  QFont font;
  font.setPixelSize(12);
  for (const char* name :
       {"Parthenium integrifolium", "Symphyotrichum novae-angliae 'Purple Dome'", "Carex"}) {
    const double width = botanicalWidth(QString::fromUtf8(name), font);
    EXPECT_NEAR(drawBotanical(painter, {0, 20}, 800, QString::fromUtf8(name), font), width, 1.0)
        << name;
    EXPECT_GT(width, 20.0);
  }
}

}  // namespace
}  // namespace tussock
