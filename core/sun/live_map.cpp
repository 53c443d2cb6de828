// SPDX-License-Identifier: MIT
#include "core/sun/live_map.h"

#include <algorithm>
#include <atomic>

#include "core/sun/shade_tracks.h"
#include "core/sun/side_by_side.h"

namespace tussock {

namespace {

constexpr std::size_t kMostTrackBytes = 64'000'000;  // beyond this nothing is kept

bool sameLeaves(const Solids& a, const Solids& b) {
  return std::equal(a.crowns.begin(), a.crowns.end(), b.crowns.begin(), b.crowns.end(),
                    [](const Crown& x, const Crown& y) {
                      return x.leafOn == y.leafOn && x.leafOff == y.leafOff &&
                             x.evergreen == y.evergreen;
                    });
}

bool sameSunlight(const Settings& a, const Settings& b) {
  return a.latitude == b.latitude && a.longitude == b.longitude &&
         growingSeason(a) == growingSeason(b);
}

struct Change {
  std::size_t caster;
  ShadeTrack track;
};

}  // namespace

struct LiveSunMap::State {
  struct Pen {  // what one thread counts with
    RowLight light;
    std::vector<Span> spans;
  };

  SunMapRequest request;
  Work lastWork = Work::Whole;
  std::optional<Settings> settings;  // of the last yard; nothing before it, or when it was not kept
  SunWork work;
  std::vector<SeasonStep> steps;
  std::vector<std::vector<Part>> parts;  // by class of days
  std::vector<Caster> casters;
  std::vector<ShadeTrack> tracks;
  std::vector<SunCount> sums;  // by mean
  Pen pen;
  std::vector<int> rows;         // of which anything is asked
  std::vector<Columns> touched;  // by row

  [[nodiscard]] bool canFollow(const Settings& now, const Solids& solids,
                               const std::vector<Caster>& next) const {
    if (!settings || !sameSunlight(*settings, now)) return false;
    if (!(solids.horizon == work.solids.horizon) || !sameLeaves(solids, work.solids)) return false;
    return std::equal(casters.begin(), casters.end(), next.begin(), next.end(),
                      [](const Caster& a, const Caster& b) {
                        return a.firstGroup == b.firstGroup &&
                               a.solids.crowns.size() == b.solids.crowns.size();
                      });
  }

  // The light along some columns of a row, added or taken back. What lies outside of them is left
  // as it is, since each span is cut off at the same columns both times.
  void addRow(std::size_t step, int row, Columns within, int sign, Pen& with,
              std::vector<SunCount>& to) const {
    with.spans.clear();
    for (const ShadeTrack& track : tracks) track.spansIn(step, row, within, with.spans);
    const SeasonStep& at = steps[step];
    for (const Part& part : parts[at.dayClass])
      with.light.add(with.spans, at.hours * kUnitsPerHour, to[part.mean].changesOf(at.half, row),
                     sign * part.days);
  }

  // False when the tracks would take too much room, or when stopped.
  bool trackAll(std::stop_token stop) {
    tracks.assign(casters.size(), {});
    std::atomic<std::size_t> bytes = 0;
    inHalves(casters.size(), [&](Share share) {
      for (std::size_t i = share.first; i < casters.size(); i += share.stride) {
        if (stop.stop_requested() || bytes > kMostTrackBytes) return;
        tracks[i] = ShadeTrack(casters[i], steps, work.grid);
        bytes += tracks[i].bytes();
      }
    });
    return !stop.stop_requested() && bytes <= kMostTrackBytes;
  }

  void start(const Yard& yard) {
    lastWork = Work::Whole;
    settings.reset();
    work = workOf(yard, request);
    steps = seasonStepsOf(work);
    parts.clear();
    for (const DayClass& days : work.classes) parts.push_back(work.countingOf(days).parts);
    rows.clear();
    for (int row = 0; row < work.grid.rows; ++row)
      if (work.grid.asked.width(row) > 0) rows.push_back(row);
    casters = castersOf(work.solids);
    sums.assign(work.spans.days.size(), SunCount(work.grid));
  }

  void countStep(std::size_t step, Pen& with, std::vector<SunCount>& to) const {
    const SeasonStep& at = steps[step];
    for (const Part& part : parts[at.dayClass])
      to[part.mean].open[static_cast<int>(at.half)] +=
          part.days * wholeUnits(at.hours * kUnitsPerHour);
    for (const int row : rows) addRow(step, row, {0, work.grid.columns}, 1, with, to);
  }

  bool countAll(std::stop_token stop) {
    std::vector<SunCount> others(sums.size(), SunCount(work.grid));
    inHalves(steps.size(), [&](Share share) {
      Pen own;
      std::vector<SunCount>& to = share.first == 0 ? sums : others;
      for (std::size_t i = share.first; i < steps.size() && !stop.stop_requested();
           i += share.stride)
        countStep(i, own, to);
    });
    for (std::size_t mean = 0; mean < sums.size(); ++mean) sums[mean].add(others[mean], 1);
    return !stop.stop_requested();
  }

  std::optional<SunMap> computeWhole(const Yard& yard, std::stop_token stop) {
    start(yard);
    if (!trackAll(stop)) {
      tracks.clear();
      return stop.stop_requested() ? std::nullopt : computeSunMap(yard, request, stop);
    }
    if (!countAll(stop)) return std::nullopt;
    settings = yard.settings;
    return mapOf(work, sums, yard);
  }

  // Columns in which a changed solid has or had shade, row by row.
  void findTouched(const std::vector<Change>& changes, std::size_t step) {
    touched.assign(static_cast<std::size_t>(work.grid.rows), Columns{work.grid.columns, 0});
    for (const Change& change : changes) {
      tracks[change.caster].widen(step, touched);
      change.track.widen(step, touched);
    }
  }
  void swapTracks(std::vector<Change>& changes) {
    for (Change& change : changes) std::swap(tracks[change.caster], change.track);
  }
  void addTouched(std::size_t step, int sign) {
    for (const int row : rows)
      if (const Columns within = touched[static_cast<std::size_t>(row)]; within.from < within.to)
        addRow(step, row, within, sign, pen, sums);
  }

  // Counts what is touched out as it was, and in as it is.
  void recount(std::vector<Change>& changes, std::stop_token stop) {
    for (std::size_t step = 0; step < steps.size() && !stop.stop_requested(); ++step) {
      findTouched(changes, step);
      addTouched(step, -1);
      swapTracks(changes);
      addTouched(step, 1);
      swapTracks(changes);
    }
    swapTracks(changes);
  }

  std::optional<SunMap> follow(const Yard& yard, Solids solids, std::vector<Caster> next,
                               std::stop_token stop) {
    lastWork = Work::ChangedSolids;
    std::vector<Change> changes;
    for (std::size_t i = 0; i < next.size(); ++i)
      if (!(next[i] == casters[i])) changes.push_back({i, {next[i], steps, work.grid}});
    recount(changes, stop);
    settings.reset();
    if (stop.stop_requested()) return std::nullopt;
    settings = yard.settings;
    casters = std::move(next);
    work.solids = std::move(solids);
    return mapOf(work, sums, yard);
  }
};

SunMapRequest previewRequest(const Yard& yard) {
  SunMapRequest request = seasonRequest(yard);
  request.detail = SunDetail::Season;
  request.stepMinutes = 15;
  return request;
}

LiveSunMap::LiveSunMap(SunMapRequest request) : state_(std::make_unique<State>()) {
  state_->request = std::move(request);
}
LiveSunMap::~LiveSunMap() = default;
LiveSunMap::LiveSunMap(LiveSunMap&&) noexcept = default;
LiveSunMap& LiveSunMap::operator=(LiveSunMap&&) noexcept = default;

std::optional<SunMap> LiveSunMap::update(const Yard& yard, std::stop_token stop) {
  if (state_->request.area.empty()) return SunMap();
  Solids solids = solidsOf(yard);
  std::vector<Caster> next = castersOf(solids);
  if (!state_->canFollow(yard.settings, solids, next)) return state_->computeWhole(yard, stop);
  return state_->follow(yard, std::move(solids), std::move(next), stop);
}

LiveSunMap::Work LiveSunMap::lastWork() const {
  return state_->lastWork;
}

}  // namespace tussock
