// SPDX-License-Identifier: MIT
#include "app/look/theme.h"

#include <array>
#include <ostream>
#include <QApplication>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

#include "app/look/style_sheet.h"
#include "tests/app/look/contrast.h"

namespace tussock {
namespace {

using test::contrast;

TEST(Contrast, BlackOnWhiteIsTwentyOne) {  // the bounds WCAG gives for its ratio
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-6);
  EXPECT_NEAR(contrast(Qt::white, Qt::white), 1.0, 1e-9);
}

class BothThemes : public testing::TestWithParam<bool> {
 protected:
  const Theme theme = GetParam() ? Theme::darkTheme() : Theme::light();
};
INSTANTIATE_TEST_SUITE_P(LightAndDark, BothThemes, testing::Bool(), [](const auto& param) {
  return std::string(param.param ? "Dark" : "Light");
});

// WCAG 2.2, criterion 1.4.3: 4.5:1 for text of normal size.
TEST_P(BothThemes, EveryTextColourReadsOnEveryGround) {
  for (const auto ground : {&Theme::paper, &Theme::panel, &Theme::raised})
    for (const auto text : {&Theme::ink, &Theme::quietInk, &Theme::sky, &Theme::leaf, &Theme::alert,
                            &Theme::caution, &Theme::hint})
      EXPECT_GE(contrast(theme.*text, theme.*ground), 4.5)
          << (theme.*text).name().toStdString() << " on " << (theme.*ground).name().toStdString();
}

TEST_P(BothThemes, TextOnAccentAndSelectionReads) {
  const QPalette palette = paletteFor(theme);
  EXPECT_GE(contrast(theme.onLeaf, theme.leaf), 4.5);
  EXPECT_GE(contrast(palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight)),
            4.5);
  EXPECT_GE(contrast(palette.color(QPalette::PlaceholderText), palette.color(QPalette::Base)), 4.5);
  EXPECT_GE(contrast(palette.color(QPalette::ToolTipText), palette.color(QPalette::ToolTipBase)),
            4.5);
  EXPECT_GE(contrast(palette.color(QPalette::Link), palette.color(QPalette::Window)), 4.5);
}

// WCAG 2.2, criterion 1.4.11: 3:1 for the borders by which one knows a control.
TEST_P(BothThemes, ControlBordersAndFocusStandOut) {
  for (const auto ground : {&Theme::paper, &Theme::panel, &Theme::raised})
    for (const auto border : {&Theme::edge, &Theme::sky, &Theme::leaf})
      EXPECT_GE(contrast(theme.*border, theme.*ground), 3.0)
          << (theme.*border).name().toStdString() << " on " << (theme.*ground).name().toStdString();
}

TEST_P(BothThemes, StyleSheetLeavesNoNameUnfilled) {
  EXPECT_FALSE(styleSheetFor(theme).contains(QLatin1Char('@')));
}

TEST(Theme, FollowsTheSystemUnlessToldOtherwise) {
  QPalette bright, dim;
  bright.setColor(QPalette::Window, Qt::white), bright.setColor(QPalette::WindowText, Qt::black);
  dim.setColor(QPalette::Window, Qt::black), dim.setColor(QPalette::WindowText, Qt::white);
  EXPECT_FALSE(themeFor(ThemeChoice::System, bright).dark);
  EXPECT_TRUE(themeFor(ThemeChoice::System, dim).dark);
  EXPECT_FALSE(themeFor(ThemeChoice::Light, dim).dark);
  EXPECT_TRUE(themeFor(ThemeChoice::Dark, bright).dark);
}

TEST(Theme, TypeIsLatoInFourSizes) {
  ASSERT_TRUE(QFontDatabase::families().contains(QStringLiteral("Lato")))
      << "install the package fonts-lato";
  const std::array sizes{std::pair{TextRole::Note, 11}, std::pair{TextRole::Body, 13},
                         std::pair{TextRole::Heading, 16}, std::pair{TextRole::LargeHeading, 20}};
  for (const auto& [role, pixels] : sizes) {
    EXPECT_EQ(QFontInfo(fontFor(role)).family(), QStringLiteral("Lato"));
    EXPECT_EQ(QFontInfo(fontFor(role)).pixelSize(), pixels);
  }
  EXPECT_TRUE(botanicalFont(TextRole::Body).italic());
}

TEST(Theme, FiguresAreAllOfOneWidth) {
  const QFontMetricsF metrics(fontFor(TextRole::Body));
  for (const QChar digit : QStringLiteral("123456789"))
    EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(digit), metrics.horizontalAdvance(QLatin1Char('0')));
}

TEST(Theme, ApplyingItReachesPaletteAndWidgets) {
  applyTheme(*qApp, Theme::darkTheme());
  EXPECT_TRUE(currentTheme().dark);
  EXPECT_EQ(QApplication::palette().color(QPalette::WindowText), Theme::darkTheme().ink);
  applyTheme(*qApp, Theme::light());
  EXPECT_FALSE(currentTheme().dark);
}

}  // namespace
}  // namespace tussock
