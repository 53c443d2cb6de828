// SPDX-License-Identifier: MIT
#include "core/sun/shade_tracks.h"

namespace tussock {

std::vector<SeasonStep> seasonStepsOf(const SunWork& work) {
  std::vector<SeasonStep> steps;
  for (std::size_t i = 0; i < work.classes.size(); ++i) {
    const DayClass& days = work.classes[i];
    const int atOnce = work.countingOf(days).atOnce;
    for (const SunStep& step : work.stepsOf(days))
      steps.push_back({step.sun, days.leaves, step.hours * atOnce, step.half, i});
  }
  return steps;
}

bool Caster::operator==(const Caster& other) const {
  return firstGroup == other.firstGroup && solids.bodies == other.solids.bodies &&
         solids.crowns == other.solids.crowns;
}

std::vector<Caster> castersOf(const Solids& solids) {
  std::vector<Caster> casters;
  int group = 0;
  for (const ConvexSolid& body : solids.bodies) {
    if (casters.empty() || casters.back().firstGroup != body.group)
      casters.push_back({{{}, {}, solids.horizon}, body.group});
    casters.back().solids.bodies.push_back(body);
    casters.back().solids.bodies.back().group = 0;
    group = body.group + 1;
  }
  for (const Crown& crown : solids.crowns) {
    casters.push_back({{{}, {crown}, solids.horizon}, group});
    group += 2;
  }
  return casters;
}

ShadeTrack::ShadeTrack(const Caster& caster, const std::vector<SeasonStep>& steps,
                       const Grid& grid) {
  RowSpans finder(grid);
  std::vector<Shadow> shadows;
  starts_.reserve(steps.size() + 1);
  starts_.push_back(0);
  for (const SeasonStep& step : steps) {
    castShadows(caster.solids, step.sun, step.day, shadows);
    for (const Shadow& shadow : shadows) {
      finder.follow(shadow.outline);
      if (finder.first() == finder.end()) continue;
      tracks_.push_back({caster.firstGroup + shadow.group, finder.first(), finder.end(),
                         densityOf(shadow.openness), columns_.size()});
      for (int row = finder.first(); row < finder.end(); ++row) columns_.push_back(finder.at(row));
    }
    starts_.push_back(tracks_.size());
  }
}

void ShadeTrack::widen(std::size_t step, std::vector<Columns>& rows) const {
  for (std::size_t i = starts_[step]; i < starts_[step + 1]; ++i) {
    const Track& track = tracks_[i];
    for (int row = track.first; row < track.end; ++row) {
      const Columns shade = columns_[track.offset + static_cast<std::size_t>(row - track.first)];
      if (shade.from >= shade.to) continue;
      Columns& widened = rows[static_cast<std::size_t>(row)];
      widened = {std::min(widened.from, shade.from), std::max(widened.to, shade.to)};
    }
  }
}

}  // namespace tussock
