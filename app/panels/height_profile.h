// SPDX-License-Identifier: MIT
// The species of a mix side by side, each as wide as its share and as high as it grows in flower.
#pragma once

#include <QWidget>
#include <vector>

#include "core/catalog/figures.h"
#include "core/units/measure_text.h"

namespace tussock {

class HeightProfile : public QWidget {
  Q_OBJECT

 public:
  explicit HeightProfile(QWidget* parent = nullptr);

  // The species must outlive the picture.
  void show(std::vector<HeightStep> heights, UnitSystem units);
  [[nodiscard]] QSize sizeHint() const override { return {280, 92}; }
  [[nodiscard]] QString sizeText(Length size) const;
  [[nodiscard]] QString wordsAt(QPoint at) const;  // of the species there; may be empty

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

 private:
  [[nodiscard]] QRectF ground() const;
  [[nodiscard]] double scaleTop() const;  // metres at the top of the scale
  [[nodiscard]] double scaleStep() const;
  void paintScale(QPainter& painter) const;

  std::vector<HeightStep> heights_;
  UnitSystem units_ = UnitSystem::FeetInches;
};

}  // namespace tussock
