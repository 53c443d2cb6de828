// SPDX-License-Identifier: MIT
// Zooming with the wheel: quick while it turns, sharp when it rests.
#include <QTest>
#include <QWheelEvent>

#include "app/canvas/canvas.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class Zoom : public test::OpenYard {
 protected:
  Zoom() {
    canvas.resize(400, 300);
    canvas.QWidget::show();
    canvas.repaint();
  }
  void turnWheel() {
    QWheelEvent notch(QPointF(200, 150), QPointF(200, 150), {}, QPoint(0, 120), {}, {},
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&canvas, &notch);
    canvas.repaint();
  }
  Canvas canvas{document};
};

TEST_F(Zoom, PaintsThePlanAfreshOnlyWhenTheWheelRests) {
  document.waitForAnalysis();
  QApplication::processEvents();
  canvas.repaint();
  const int before = canvas.frame().wholePaintings();
  const double scale = canvas.mapping().scale();
  for (int i = 0; i < 3; ++i) turnWheel();
  EXPECT_GT(canvas.mapping().scale(), scale * 1.5);
  EXPECT_EQ(canvas.frame().wholePaintings(), before);
  QTRY_COMPARE(canvas.frame().wholePaintings(), before + 1);
}

TEST_F(Zoom, ShowsTheSamePictureAsIfItHadBeenShownAtThatScaleAtOnce) {
  turnWheel();
  QTest::qWait(200);
  const QImage rested = canvas.grab().toImage();
  canvas.setAllNames(false);  // has everything painted again
  EXPECT_EQ(rested, canvas.grab().toImage());
}

}  // namespace
}  // namespace tussock
