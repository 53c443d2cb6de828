// SPDX-License-Identifier: MIT
// A year from January to December: how long each day is, and a handle that sets the date.
#pragma once

#include <QWidget>
#include <vector>

#include "core/model/settings.h"
#include "core/units/date.h"

namespace tussock {

class YearDial : public QWidget {
  Q_OBJECT

 public:
  explicit YearDial(QWidget* parent = nullptr);
  void show(Date day, const Settings& settings);
  [[nodiscard]] double xOf(Date day) const;
  [[nodiscard]] QSize sizeHint() const override { return {420, 44}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {160, 44}; }

 signals:
  void dayChosen(tussock::Date day);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  void choose(Date day);
  void chooseAt(double x);
  void measure(const Settings& settings);
  void paintMonths(QPainter& painter) const;

  Date day_{std::chrono::year(2027), std::chrono::January, std::chrono::day(1)};
  std::vector<double> light_;  // share of the day with the sun up, every kStride days
  std::chrono::year measuredYear_{};
  Angle measuredAt_;
};

}  // namespace tussock
