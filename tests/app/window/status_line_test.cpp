// SPDX-License-Identifier: MIT
// What the line along the bottom says of the place under the pointer and of the next step.
#include <QLabel>

#include <gtest/gtest.h>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class StatusLineTest : public test::WindowTest {
 protected:
  [[nodiscard]] QLabel* part(const char* name) const {
    return window->findChild<QLabel*>(QLatin1String(name));
  }
};

TEST_F(StatusLineTest, SaysWhereARoofIsInsteadOfHoursOfSun) {
  start(test::YardBuilder()
            .bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))")
            .building("Shed", "POLYGON((0 4, 4 4, 4 7, 0 7, 0 4))")
            .build());
  document.waitForAnalysis();
  ASSERT_TRUE(document.sunMap());
  moveTo({3.0, 1.0});
  EXPECT_TRUE(part("statusPlace")->text().contains(QStringLiteral("h of sun here")));
  moveTo({2.0, 5.5});
  EXPECT_TRUE(part("statusPlace")->text().endsWith(QStringLiteral("under a roof")));
}

TEST_F(StatusLineTest, AHintThatIsTooLongEndsInAnEllipsis) {
  start();
  window->resize(1024, 700);
  QTest::qWait(20);
  QLabel* hint = part("statusHint");
  const QString whole = QStringLiteral("Click the corners one after another. ").repeated(8);
  emit canvas().hintChanged(whole);
  EXPECT_EQ(hint->text(), whole);
  const QString brief = hint->fontMetrics().elidedText(whole, Qt::ElideRight, hint->width());
  ASSERT_TRUE(brief.endsWith(QChar(0x2026)));
  const QImage shortened = hint->grab().toImage();
  emit canvas().hintChanged(brief);
  EXPECT_EQ(hint->grab().toImage(), shortened);
}

}  // namespace
}  // namespace tussock
