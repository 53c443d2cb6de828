// SPDX-License-Identifier: MIT
// The shadows of single solids over all the steps of a season, kept as columns row by row, so that
// those of the others need not be cast again when one solid moves.
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "core/sun/row_light.h"
#include "core/sun/sun_work.h"

namespace tussock {

// A step of the season with the day that it belongs to and the hours that are counted at once.
struct SeasonStep {
  SunPosition sun;
  MonthDay day{};
  double hours = 0.0;
  HalfDay half = HalfDay::BeforeNoon;
  std::size_t dayClass = 0;  // by place among the work's
};
[[nodiscard]] std::vector<SeasonStep> seasonStepsOf(const SunWork& work);

// One building or barrier, or one tree; `firstGroup` is its group among all.
struct Caster {
  Solids solids;
  int firstGroup = 0;

  [[nodiscard]] bool operator==(const Caster& other) const;
};
[[nodiscard]] std::vector<Caster> castersOf(const Solids& solids);

class ShadeTrack {
 public:
  ShadeTrack() = default;  // of nothing; asks for no step
  ShadeTrack(const Caster& caster, const std::vector<SeasonStep>& steps, const Grid& grid);

  // Appends what lies in a row at a step, between two columns.
  void spansIn(std::size_t step, int row, Columns within, std::vector<Span>& spans) const {
    for (std::size_t i = starts_[step]; i < starts_[step + 1]; ++i) {
      const Track& track = tracks_[i];
      if (row < track.first || row >= track.end) continue;
      Columns columns = columns_[track.offset + static_cast<std::size_t>(row - track.first)];
      columns = {std::max(columns.from, within.from), std::min(columns.to, within.to)};
      if (columns.from < columns.to) spans.push_back({columns, track.density, track.group});
    }
  }
  // Widens each row's columns by those in shade.
  void widen(std::size_t step, std::vector<Columns>& rows) const;
  [[nodiscard]] std::size_t bytes() const { return columns_.size() * sizeof(Columns); }

 private:
  struct Track {
    int group, first, end;
    Density density;
    std::size_t offset;
  };
  std::vector<Track> tracks_;
  std::vector<std::size_t> starts_;  // by step, into tracks
  std::vector<Columns> columns_;
};

}  // namespace tussock
