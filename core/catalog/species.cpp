// SPDX-License-Identifier: MIT
#include "core/catalog/species.h"

#include <algorithm>

#include "core/units/date.h"

namespace tussock {

namespace {

// Where a run that may pass over New Year holds a value.
bool inRun(int value, int first, int last) {
  return first <= last ? first <= value && value <= last : value >= first || value <= last;
}

std::chrono::month monthOf(int month) {
  return std::chrono::month{static_cast<unsigned>(month)};
}

// Low and running over the ground by stolons or rhizomes; the height is common practice.
bool isMat(const Species& species) {
  constexpr Length kMatHeight = Length::centimetres(30);
  const bool runs = species.spreadWay == SpreadWay::Stolon ||
                    species.spreadWay == SpreadWay::RhizomeSlow ||
                    species.spreadWay == SpreadWay::RhizomeFast;
  return runs && species.heightHigh <= kMatHeight;
}

}  // namespace

bool Species::bloomsInMonth(int month) const {
  return bloomFirstMonth && bloomLastMonth && inRun(month, *bloomFirstMonth, *bloomLastMonth);
}

bool Species::bloomsInWeek(int week) const {
  if (!bloomFirstMonth || !bloomLastMonth) return false;
  const std::chrono::year_month_day_last lastDay{
      std::chrono::year{2025}, std::chrono::month_day_last{monthOf(*bloomLastMonth)}};
  const int first = weekOf(monthOf(*bloomFirstMonth) / std::chrono::day{1});
  const int last = weekOf(monthOf(*bloomLastMonth) / lastDay.day());
  return inRun(week, first, last);
}

Layer Species::usualLayer() const {
  if (habit == Habit::Bulb) return Layer::Bulbs;
  const bool lowSedge = habit == Habit::Sedge && heightHigh <= Length::centimetres(45);
  return lowSedge || isMat(*this) ? Layer::Ground : Layer::Main;
}

std::string_view genusOf(std::string_view botanicalName) {
  return botanicalName.substr(0, botanicalName.find(' '));
}

}  // namespace tussock
