// SPDX-License-Identifier: MIT
#include "core/catalog/species.h"

#include "core/catalog/source_list.h"

namespace tussock {

namespace {

std::optional<int> zeroBased(std::optional<int> week) {
  return week ? std::optional(*week - 1) : std::nullopt;
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

std::optional<WeekRange> Species::bloomWeeks() const {
  std::optional<int> first = zeroBased(bloomFirstWeek), last = zeroBased(bloomLastWeek);
  if (!first && bloomFirstMonth) first = weeksOfMonths(*bloomFirstMonth, *bloomFirstMonth).first;
  if (!last && bloomLastMonth) last = weeksOfMonths(*bloomLastMonth, *bloomLastMonth).last;
  if (!first || !last) return std::nullopt;
  return WeekRange{*first, *last};
}

std::optional<Species::Months> Species::bloomMonths() const {
  const auto weeks = bloomWeeks();
  if (!weeks) return std::nullopt;
  return Months{bloomFirstWeek ? monthOfWeek(weeks->first) : *bloomFirstMonth,
                bloomLastWeek ? monthOfWeek(weeks->last) : *bloomLastMonth};
}

bool Species::bloomsInMonth(int month) const {
  const auto months = bloomMonths();
  return months && holds({months->first, months->last}, month);
}

bool Species::bloomsInWeek(int week) const {
  const auto weeks = bloomWeeks();
  return weeks && holds(*weeks, week);
}

std::string_view Species::sourceOf(std::string_view field) const {
  return keysOf(sources, field);
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
