// SPDX-License-Identifier: MIT
// The day and the time at which shadows are shown: a date to type or step, the clock, and Play.
#pragma once

#include <QTimer>
#include <QWidget>

#include "app/document/sun_view.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace tussock {

class SunDayRow : public QWidget {
  Q_OBJECT

 public:
  explicit SunDayRow(SunView& view, QWidget* parent = nullptr);
  void refresh();
  void takeMotion();  // it has been chosen how much there may be

 signals:
  void troubled(const QString& words);  // what is wrong with a date
  void dated();                         // Enter was pressed on a date that is one

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void reserveWidth();
  void takeDate();
  void stepDate(int days, int months);
  void play();
  void playOn();
  void stopPlaying();
  void stepMinutes(int minutes);

  SunView& view_;
  QLineEdit* date_;
  QLabel* clock_;
  QPushButton* play_;
  QTimer playing_;
};

}  // namespace tussock
