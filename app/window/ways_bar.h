// SPDX-License-Identifier: MIT
// Beside the rail while a tool is in hand: the ways it can be used, and a photo's fade and lock.
#pragma once

#include <QFrame>

#include "app/canvas/canvas.h"

class QCheckBox;
class QHBoxLayout;
class QPushButton;
class QSlider;

namespace tussock {

class WaysBar : public QFrame {
  Q_OBJECT

 public:
  WaysBar(Canvas& canvas, QWidget* parent);
  // Null hides it.
  void show(Tool* tool);

 private:
  void addWays(Tool& tool);
  void addPhotoFields();
  void showPhoto();
  void commitPhoto(const QString& label, const std::function<void(Photo&)>& change);
  [[nodiscard]] const Photo* photo() const;

  Canvas& canvas_;
  QHBoxLayout* row_;
  QList<QPushButton*> chips_;
  QSlider* fade_ = nullptr;
  QCheckBox* lock_ = nullptr;
  Tool* tool_ = nullptr;
};

}  // namespace tussock
