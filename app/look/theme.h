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
  QColor raised;    // cards, rail buttons, fields
  QColor ink;       // text
  QColor quietInk;  // notes
  QColor line;      // dividers
  QColor edge;      // borders of controls, 3:1
  QColor soil;      // beds
  QColor leaf;      // accent, used sparingly
  QColor sky;       // links, selection
  QColor alert, caution, hint;
  QColor lawn;  // open ground inside the lot line
  QColor paving;
  QColor building;

  [[nodiscard]] static Theme light();
  [[nodiscard]] static Theme darkTheme();
};

// Spacing steps in device-independent pixels.
inline constexpr int kSpace1 = 4, kSpace2 = 8, kSpace3 = 12, kSpace4 = 16, kSpace5 = 24,
                     kSpace6 = 32;
inline constexpr int kCorner = 6;

enum class TextRole { Note, Body, Heading, LargeHeading };  // 11, 13, 16, 20 px
[[nodiscard]] QFont fontFor(TextRole role);

// Sets palette, font and style sheet of the program. `current` is what widgets read afterwards.
void applyTheme(QApplication& application, const Theme& theme);
[[nodiscard]] const Theme& currentTheme();

}  // namespace tussock
