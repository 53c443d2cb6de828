// SPDX-License-Identifier: MIT
// Along the bottom of the canvas while the sun is shown: what is looked at, its legend, the day and
// the clock.
#pragma once

#include <optional>
#include <QFrame>
#include <QStringList>

#include "app/canvas/canvas.h"

class QButtonGroup;
class QComboBox;
class QLabel;
class QPushButton;

namespace tussock {

class DayRibbon;
class YearDial;
class SunDayRow;
class SunLegend;

class SunStrip : public QFrame {
  Q_OBJECT

 public:
  explicit SunStrip(Canvas& canvas);
  // Hours or shadows; the same again puts the sun away.
  void toggle(SunLook look);
  void takeMotion();  // it has been chosen how much there may be

 signals:
  void readingWanted();  // someone wants to note the sun seen

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* makeLooks();
  QWidget* makeSpans();
  QWidget* makeTrees();
  QWidget* makeDials();
  QWidget* makeFoot();
  void layOut();
  void follow();
  QPushButton* chip(const QString& name, const QString& words);
  template <class Change>
  void choose(Change change);
  void refresh();
  void refreshHours();
  void refreshDay();
  void refreshSpans();
  void showWords();
  [[nodiscard]] QString wordsOfChoice() const;
  void place();
  void showPointer(Point at);
  void forgetPointer();
  void readPointer();
  [[nodiscard]] SunView& view() const { return canvas_.sunView(); }

  Canvas& canvas_;
  QPushButton* hours_ = nullptr;
  QPushButton* shadows_ = nullptr;
  QComboBox* spans_ = nullptr;
  QButtonGroup* years_ = nullptr;
  SunDayRow* dayRow_ = nullptr;
  SunLegend* legend_ = nullptr;
  QWidget* dials_ = nullptr;  // of the day and the year, side by side
  DayRibbon* day_ = nullptr;
  YearDial* year_ = nullptr;
  QLabel* words_ = nullptr;
  QPushButton* note_ = nullptr;
  QString trouble_;
  QStringList spanWords_;
  std::optional<Point> pointer_;  // where it is on the ground
  QString pointerWords_;          // of the ground under it
};

}  // namespace tussock
