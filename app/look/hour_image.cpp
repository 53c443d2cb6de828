// SPDX-License-Identifier: MIT
#include "app/look/hour_image.h"

#include <algorithm>
#include <cmath>

#include "app/look/sun_scale.h"

namespace tussock {

namespace {

constexpr int kCarried = 2;  // cells: as far as smooth drawing looks aside

float meanBeside(const HourGrid& grid, int column, int row) {
  float sum = 0.0F;
  int count = 0;
  for (int r = std::max(0, row - 1); r <= std::min(grid.rows - 1, row + 1); ++r)
    for (int c = std::max(0, column - 1); c <= std::min(grid.columns - 1, column + 1); ++c)
      if (const float hours = grid.at(c, r); !std::isnan(hours)) sum += hours, ++count;
  return count > 0 ? sum / static_cast<float>(count) : grid.at(column, row);
}

HourGrid carriedOn(const HourGrid& grid) {
  HourGrid result = grid;
  for (int pass = 0; pass < kCarried; ++pass) {
    const HourGrid before = result;
    std::size_t place = 0;
    for (int row = 0; row < grid.rows; ++row)
      for (int column = 0; column < grid.columns; ++column, ++place)
        if (std::isnan(result.hours[place])) result.hours[place] = meanBeside(before, column, row);
  }
  return result;
}

QRgb pixelOf(float hours) {
  static const QList<QRgb> ramp = sunRamp();
  if (std::isnan(hours)) return qRgba(0, 0, 0, 0);
  const auto step = qsizetype(double(hours) * 10.0 + 0.5);
  return ramp[std::clamp<qsizetype>(step, 0, ramp.size() - 1)] | 0xFF000000u;
}

}  // namespace

QImage hourImage(const HourGrid& grid, UntoldCells untold) {
  if (untold == UntoldCells::AsBeside) return hourImage(carriedOn(grid), UntoldCells::Clear);
  QImage image(grid.columns, grid.rows, QImage::Format_ARGB32_Premultiplied);
  for (int row = 0; row < grid.rows; ++row) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(grid.rows - 1 - row));
    for (int column = 0; column < grid.columns; ++column)
      line[column] = pixelOf(grid.at(column, row));
  }
  return image;
}

}  // namespace tussock
