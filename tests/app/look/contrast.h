// SPDX-License-Identifier: MIT
// WCAG 2.2, "relative luminance" and "contrast ratio" (w3.org/TR/WCAG22/#dfn-relative-luminance).
#pragma once

#include <algorithm>
#include <cmath>
#include <QColor>

namespace tussock::test {

inline double channel(double value) {
  return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}
inline double luminance(const QColor& c) {
  return 0.2126 * channel(c.redF()) + 0.7152 * channel(c.greenF()) + 0.0722 * channel(c.blueF());
}
inline double contrast(const QColor& a, const QColor& b) {
  const double p = luminance(a), q = luminance(b);
  return (std::max(p, q) + 0.05) / (std::min(p, q) + 0.05);
}

}  // namespace tussock::test
