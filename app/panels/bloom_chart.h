// SPDX-License-Identifier: MIT
// The species of a mix by the weeks in which they flower, each a band in its colour with its share,
// and under them how many are in flower at once.
#pragma once

#include <QWidget>
#include <vector>

#include "core/catalog/figures.h"
#include "core/model/settings.h"

namespace tussock {

class BloomChart : public QWidget {
  Q_OBJECT

 public:
  explicit BloomChart(QWidget* parent = nullptr);

  // The species must outlive the chart. Weeks of `season` in which nothing flowers are marked. The
  // year is that of the half of the earth; the species that flowers first in it stands first.
  void show(const PlantFigures& figures, WeekSet season, Hemisphere where);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;  // with the rows as close as can be read
  [[nodiscard]] QString wordsAt(QPoint at) const;  // of the species or week there; may be empty

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

 private:
  struct Row {
    const Species* species = nullptr;
    double share = 0.0;
    WeekSet weeks = 0;
  };
  [[nodiscard]] double rowHeight() const;
  [[nodiscard]] QFont nameFont() const;
  [[nodiscard]] int heightWith(double row) const;
  [[nodiscard]] double namesWidth() const;
  [[nodiscard]] QRectF weeksRect() const;  // of all rows, without names and shares
  void paintMonthLines(QPainter& painter) const;
  [[nodiscard]] bool has(WeekSet weeks, int place) const;  // by its place in the year
  void paintRow(QPainter& painter, const Row& row, double top) const;
  void paintCounts(QPainter& painter) const;
  void paintMonths(QPainter& painter) const;

  std::vector<Row> rows_;
  std::array<int, kWeeksInYear> counts_{};
  WeekSet season_ = 0;
  Hemisphere where_ = Hemisphere::North;
};

}  // namespace tussock
