// SPDX-License-Identifier: MIT
// The year along the top: what is in flower when, and which week and year the drawing shows.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/document.h"
#include "core/catalog/growth.h"

class QButtonGroup;
class QLabel;
class QPushButton;
class QStackedWidget;
class QToolButton;

namespace tussock {

class YearRuler;

class YearPanel : public QWidget {
  Q_OBJECT

 public:
  explicit YearPanel(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] YearRuler* ruler() const { return ruler_; }
  [[nodiscard]] std::optional<int> week() const;
  void setWeek(std::optional<int> week);
  [[nodiscard]] GrowthYear year() const;
  [[nodiscard]] bool isFolded() const { return folded_; }
  void fold();
  void unfold();

 signals:
  void weekChanged(std::optional<int> week);  // none: every species in flower
  void yearChanged(tussock::GrowthYear year);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QWidget* makeHead();
  QWidget* makeYears();
  void setFolded();
  void refresh();
  void showWeek();

  Document& document_;
  bool folded_ = true;
  QLabel* name_ = nullptr;
  QLabel* place_ = nullptr;
  QPushButton* anyWeek_ = nullptr;
  QStackedWidget* under_ = nullptr;  // the place, or the way back from one week
  QWidget* years_ = nullptr;
  QButtonGroup* yearGroup_ = nullptr;
  YearRuler* ruler_ = nullptr;
  QToolButton* foldButton_ = nullptr;
};

}  // namespace tussock
