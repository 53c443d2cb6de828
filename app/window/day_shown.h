// SPDX-License-Identifier: MIT
// One day for the whole drawing while shadows are shown: the week of the year ruler and the date of
// the shadows follow one another, so that bloom, leaves and shadows are of one day.
#pragma once

#include <optional>
#include <QObject>

namespace tussock {

class SunView;
class YearPanel;

class DayShown : public QObject {
  Q_OBJECT

 public:
  DayShown(SunView& sun, YearPanel& year, QObject* parent);

 private:
  void followSun();
  void followRuler(std::optional<int> week);

  SunView& sun_;
  YearPanel& year_;
  bool tied_ = false;
  std::optional<int> before_;  // the week shown before the shadows were
};

}  // namespace tussock
