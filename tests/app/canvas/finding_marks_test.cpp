// SPDX-License-Identifier: MIT
// The marks of findings stand out from any ground: WCAG 2.2, criterion 1.4.11, asks for 3:1.
#include "app/canvas/finding_marks.h"

#include <QApplication>
#include <QImage>
#include <vector>

#include <gtest/gtest.h>

#include "app/look/sun_scale.h"
#include "app/look/theme.h"
#include "tests/app/look/contrast.h"

namespace tussock {
namespace {

constexpr int kSide = 40;

Finding findingOf(Severity severity) {
  Finding finding;
  finding.severity = severity;
  finding.place = {Polygon{{{0, 0}, {0.001, 0}, {0, 0.001}}, {}}};
  return finding;
}

QImage painted(Severity severity, const QColor& ground) {
  FindingMarks marks;
  marks.take({findingOf(severity)}, Yard());
  QImage image(kSide, kSide, QImage::Format_RGB32);
  image.fill(ground);
  QPainter painter(&image);
  marks.paint(painter, SceneMapping(Point{}, 100.0, QSizeF(kSide, kSide)));
  return image;
}

// Whether all around the part of the mark at the pixel lies a colour that stands out from it.
bool isBounded(const QImage& image, QPoint pixel) {
  const QColor own = image.pixelColor(pixel);
  std::vector<QPoint> next{pixel};
  QImage been(image.size(), QImage::Format_Grayscale8);
  been.fill(0);
  while (!next.empty()) {
    const QPoint at = next.back();
    next.pop_back();
    if (!image.rect().contains(at)) return false;
    if (qGray(been.pixel(at)) != 0) continue;
    been.setPixelColor(at, Qt::white);
    if (test::contrast(image.pixelColor(at), own) >= 3.0) continue;
    for (const QPoint step : {QPoint(1, 0), QPoint(-1, 0), QPoint(0, 1), QPoint(0, -1)})
      next.push_back(at + step);
  }
  return true;
}

class Marks : public testing::TestWithParam<bool> {
 protected:
  void SetUp() override { applyTheme(*qApp, GetParam() ? Theme::darkTheme() : Theme::light()); }
  void TearDown() override { applyTheme(*qApp, Theme::light()); }
};
INSTANTIATE_TEST_SUITE_P(LightAndDark, Marks, testing::Bool(), [](const auto& param) {
  return std::string(param.param ? "Dark" : "Light");
});

TEST_P(Marks, StandOutFromAnyGround) {
  const Theme& theme = currentTheme();
  // A pixel of each mark's own colour, left of and below the middle of its drawing.
  const std::vector<std::pair<Severity, QPoint>> marks{
      {Severity::Alert, {-6, 1}}, {Severity::Caution, {-4, 5}}, {Severity::Hint, {-7, 0}}};
  std::vector<QColor> grounds{theme.paper, theme.soil,    theme.lawn, theme.alert,
                              theme.leaf,  theme.caution, theme.hint};
  for (int hours = 0; hours <= 10; ++hours) grounds.push_back(sunColour(hours));
  for (const auto& [severity, pixel] : marks)
    for (const QColor& ground : grounds)
      EXPECT_TRUE(isBounded(painted(severity, ground), QPoint(20, 20) + pixel))
          << int(severity) << " on " << ground.name().toStdString();
}

}  // namespace
}  // namespace tussock
