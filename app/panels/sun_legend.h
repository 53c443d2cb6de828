// SPDX-License-Identifier: MIT
// The key to hours of sun: the scale with the limits of the sun classes, and where the pointer is.
#pragma once

#include <optional>
#include <QWidget>

#include "core/catalog/fit.h"

namespace tussock {

class SunLegend : public QWidget {
  Q_OBJECT

 public:
  explicit SunLegend(QWidget* parent = nullptr);
  void setProfile(const SunProfile& profile);
  void setPointer(std::optional<double> hours);
  // Where the scale lies, from 0 h at its left to kSunScaleTop at its right.
  [[nodiscard]] QRectF ramp() const;
  [[nodiscard]] QSize sizeHint() const override { return {420, 44}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {220, 44}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] double xOf(double hours) const;
  void paintClasses(QPainter& painter) const;

  SunProfile profile_;
  std::optional<double> pointer_;
};

}  // namespace tussock
