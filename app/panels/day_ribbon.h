// SPDX-License-Identifier: MIT
// A day from midnight to midnight by the clock: night, daylight, and a handle that sets the time.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/civil_day.h"

namespace tussock {

class DayRibbon : public QWidget {
  Q_OBJECT

 public:
  explicit DayRibbon(QWidget* parent = nullptr);
  void show(const CivilDay& day, const Settings& settings, int minute);
  [[nodiscard]] double xOf(int minute) const;
  [[nodiscard]] QSize sizeHint() const override { return {420, 44}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {160, 44}; }

 signals:
  void minuteChosen(int minute);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  void choose(int minute);
  void chooseAt(double x);

  int minute_ = kMinutesInDay / 2;
  enum class Light { Night, Hidden, Sun };  // hidden: up, but not over the skyline or the slope
  std::vector<Light> light_;                // by parts of kPart minutes
};

}  // namespace tussock
