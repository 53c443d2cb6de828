// SPDX-License-Identifier: MIT
// A year of 52 weeks as a ruler: months, bloom as thin bands, frost dates, and the handle that sets
// the week shown.
#pragma once

#include <optional>
#include <QColor>
#include <QString>
#include <QWidget>
#include <vector>

#include "core/model/settings.h"
#include "core/units/date.h"

namespace tussock {

struct BloomBand {
  QString name;
  QColor colour;
  std::vector<bool> weeks;  // kWeeksInYear of them, from January on
};

class YearRuler : public QWidget {
  Q_OBJECT

 public:
  enum class Form { Open, Folded };
  explicit YearRuler(QWidget* parent = nullptr);

  void setForm(Form form);
  // The year that is shown runs from the winter of that half of the earth to the next.
  void setHalf(Hemisphere where);
  void setBands(std::vector<BloomBand> bands);
  void setFrosts(std::optional<MonthDay> last, std::optional<MonthDay> first);
  void setWeek(std::optional<int> week);
  [[nodiscard]] std::optional<int> week() const { return week_; }
  [[nodiscard]] double xOfWeek(double week) const;  // 0 to 52, from January on
  [[nodiscard]] int weekAt(double x) const;
  [[nodiscard]] static QString weekWords(int week);  // "5 August"

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 signals:
  void weekChanged(std::optional<int> week);

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void choose(std::optional<int> week);
  [[nodiscard]] double xOfPlace(double place) const;  // 0 to 52, from the left
  [[nodiscard]] double xOfMonth(int place) const;     // 0 to 12
  void paintMonths(QPainter& painter) const;
  void paintBands(QPainter& painter) const;
  void paintFrosts(QPainter& painter) const;
  void paintFrost(QPainter& painter, MonthDay day, const QString& words) const;
  void paintHandle(QPainter& painter) const;
  [[nodiscard]] QString wordsAt(int week) const;

  Form form_ = Form::Open;
  Hemisphere where_ = Hemisphere::North;
  std::vector<BloomBand> bands_;
  std::vector<std::vector<bool>> places_;  // weeks of each band, from the left
  std::vector<int> rows_;                  // of each band, 0 the topmost
  int rowCount_ = 0;
  std::optional<MonthDay> lastFrost_, firstFrost_;
  std::optional<int> week_;
  bool ring_ = false;  // focus came by the keyboard
};

}  // namespace tussock
