// SPDX-License-Identifier: MIT
#include "app/window/day_shown.h"

#include "app/document/sun_view.h"
#include "app/panels/year_panel.h"
#include "core/units/date.h"

namespace tussock {

DayShown::DayShown(SunView& sun, YearPanel& year, QObject* parent)
    : QObject(parent), sun_(sun), year_(year) {
  connect(&sun_, &SunView::choiceChanged, this, &DayShown::followSun);
  connect(&year_, &YearPanel::weekChanged, this, &DayShown::followRuler);
  followSun();
}

// Putting the shadows away brings back the week that was shown before them.
void DayShown::followSun() {
  const SunChoice& choice = sun_.choice();
  const bool ties = choice.look == SunLook::Shadows;
  if (ties && !tied_) before_ = year_.week();
  const bool loosened = tied_ && !ties;
  tied_ = ties;
  if (ties)
    year_.setWeek(weekOf(MonthDay(choice.day.month(), choice.day.day())));
  else if (loosened)
    year_.setWeek(before_);
}

void DayShown::followRuler(std::optional<int> week) {
  if (!tied_ || !week) return;
  SunChoice choice = sun_.choice();
  if (weekOf(MonthDay(choice.day.month(), choice.day.day())) == *week) return;
  const auto first = std::chrono::sys_days(choice.day.year() / std::chrono::January / 1);
  choice.day = Date(first + std::chrono::days(7 * *week + 3));
  sun_.choose(choice);
}

}  // namespace tussock
