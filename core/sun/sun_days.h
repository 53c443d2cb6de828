// SPDX-License-Identifier: MIT
// The days of a sun map, grouped where the sun and the leaves are nearly the same, and the moments
// of a day at which shade is cast.
#pragma once

#include <array>
#include <vector>

#include "core/model/settings.h"
#include "core/sun/position.h"
#include "core/sun/solids.h"

namespace tussock {

// Days with declinations in one band and the same trees in leaf. The day that stands for them is
// one of the band, whatever the leaves: so a tree changes nothing but what it shades.
struct DayClass {
  Date day;
  MonthDay leaves;  // when the trees are in leaf as on those days
  int days = 0;
  std::array<int, 12> inMonth{};  // of those days; January first
};
// Width of a band: one degree; up to three where steps of over ten minutes, 2.5 degrees of the
// sun's way, are coarser than that anyway.
[[nodiscard]] Angle declinationBand(int stepMinutes);

// From first to last inclusive, over the new year where first is the later. 29 February is taken as
// the month's last day.
[[nodiscard]] std::vector<Date> daysOf(const GrowingSeason& season, int year);
[[nodiscard]] std::vector<DayClass> classesOf(const std::vector<Date>& days, const Solids& solids,
                                              Angle longitude, Angle band);

enum class HalfDay { BeforeNoon, AfterNoon };  // solar noon

// The middle of one of the equal parts of a half day with the sun up.
struct SunStep {
  SunPosition sun;
  double hours = 0.0;  // length of the part
  HalfDay half = HalfDay::BeforeNoon;
};
// Each half of the time with the sun's centre above 0 degrees, in equal parts no longer than
// stepMinutes; less what the horizon keeps of it, to a second where it does so once in a part.
[[nodiscard]] std::vector<SunStep> stepsOf(Date day, Angle latitude, Angle longitude,
                                           int stepMinutes, const Horizon& horizon = {});

}  // namespace tussock
