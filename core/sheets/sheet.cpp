// SPDX-License-Identifier: MIT
#include "core/sheets/sheet.h"

namespace tussock {

double millimetres(Weight weight) {
  switch (weight) {
    case Weight::Hair:
      return 0.18;
    case Weight::Fine:
      return 0.25;
    case Weight::Medium:
      return 0.35;
    case Weight::Bold:
      return 0.50;
  }
  return 0.25;
}

double points(TextSize size) {
  switch (size) {
    case TextSize::Note:
      return 8.0;
    case TextSize::Body:
      return 10.0;
    case TextSize::Title:
      return 14.0;
  }
  return 10.0;
}

PaperPoint toPaper(const Sheet& sheet, Point site) {
  const double perMetre = 1000.0 / sheet.scale;
  const Point step = rotated(site, sheet.turn) - sheet.siteAtTopLeft;
  return {sheet.drawing.left + step.x * perMetre, sheet.drawing.top - step.y * perMetre};
}

}  // namespace tussock
