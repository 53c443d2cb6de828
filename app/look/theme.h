// SPDX-License-Identifier: MIT
// Colours, type and spacing of the window, light and dark, in one place.
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>
#include <QString>

class QApplication;

namespace tussock {

struct Theme {
  bool dark = false;
  QColor paper;     // ground of canvas and window
  QColor panel;     // panels around the canvas
  QColor raised;    // cards, rail buttons, fields
  QColor ink;       // text
  QColor quietInk;  // notes
  QColor line;      // dividers
  QColor edge;      // borders of controls, 3:1
  QColor soil;      // beds
  QColor leaf;      // accent, used sparingly
  QColor onLeaf;    // text on leaf
  QColor sky;       // links, selection
  QColor alert, caution, hint;
  QColor lawn;  // open ground inside the lot line
  QColor paving;
  QColor building;

  [[nodiscard]] static Theme light();
  [[nodiscard]] static Theme darkTheme();
};

enum class ThemeChoice { System, Light, Dark };
// What the system asks for, read from its own palette: give it before applyTheme changes that.
[[nodiscard]] Theme themeFor(ThemeChoice choice, const QPalette& system);

// Spacing steps in device-independent pixels.
inline constexpr int kSpace1 = 4, kSpace2 = 8, kSpace3 = 12, kSpace4 = 16, kSpace5 = 24,
                     kSpace6 = 32;
inline constexpr int kCorner = 6;
inline constexpr int kMotionMilliseconds = 120;

enum class TextRole { Note, Body, Heading, LargeHeading };  // 11, 13, 16, 20 px
[[nodiscard]] QFont fontFor(TextRole role);
[[nodiscard]] QFont botanicalFont(TextRole role);  // italic

// Sets palette, font and style sheet of the program. `current` is what widgets read afterwards.
void applyTheme(QApplication& application, const Theme& theme);
[[nodiscard]] const Theme& currentTheme();
[[nodiscard]] QPalette paletteFor(const Theme& theme);

}  // namespace tussock
