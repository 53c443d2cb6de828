// SPDX-License-Identifier: MIT
#include <algorithm>
#include <mutex>

#include "core/sun/map.h"
#include "core/sun/side_by_side.h"
#include "core/sun/sun_work.h"

namespace tussock {

namespace {

// One for each mean; the workers add to them in turn.
struct Sums {
  std::vector<SunCount> means;
  std::mutex mutex;

  explicit Sums(const SunWork& work) {
    for (std::size_t i = 0; i < work.spans.days.size(); ++i) means.emplace_back(work.grid);
  }
  void add(const SunCount& count, std::size_t mean, int times) {
    const std::lock_guard lock(mutex);
    means[mean].add(count, times);
  }
};

// Counts classes of days. Those that belong to one mean are counted together and handed over when
// the next belong to another.
class Worker {
 public:
  Worker(const SunWork& work, Sums& sums) : work_(work), sums_(sums), tally_(work.grid) {}

  void take(const DayClass& days, std::stop_token stop) {
    const Counting counting = work_.countingOf(days);
    const bool single = counting.parts.size() == 1;
    if (held_ && (!single || *held_ != counting.parts[0].mean)) finish();
    count(days, counting.atOnce, stop);
    if (single) {
      held_ = counting.parts[0].mean;
      return;
    }
    for (const Part& part : counting.parts) sums_.add(tally_.count(), part.mean, part.days);
    tally_.clear();
  }
  void finish() {
    if (!held_) return;
    sums_.add(tally_.count(), *held_, 1);
    tally_.clear();
    held_.reset();
  }

 private:
  void count(const DayClass& days, int times, std::stop_token stop) {
    for (const SunStep& step : work_.stepsOf(days)) {
      if (stop.stop_requested()) return;
      castShadows(work_.solids, step.sun, days.leaves, shadows_);
      tally_.take(shadows_, step.hours * times, step.half);
    }
  }

  const SunWork& work_;
  Sums& sums_;
  SunTally tally_;
  std::vector<Shadow> shadows_;
  std::optional<std::size_t> held_;  // the mean that the tally is for
};

void addClasses(const SunWork& work, Share share, std::stop_token stop, const Progress& progress,
                Sums& sums) {
  Worker worker(work, sums);
  for (std::size_t i = share.first; i < work.classes.size(); i += share.stride) {
    if (stop.stop_requested()) return;
    worker.take(work.classes[i], stop);
    if (progress)
      progress(static_cast<double>(std::min(i + share.stride, work.classes.size())) /
               static_cast<double>(work.classes.size()));
  }
  worker.finish();
}

// The caller's own thread tells how far they have come.
void addAll(const SunWork& work, std::stop_token stop, const Progress& progress, Sums& sums) {
  inHalves(work.classes.size(), [&](Share share) {
    addClasses(work, share, stop, share.first == 0 ? progress : Progress(), sums);
  });
}

}  // namespace

std::optional<SunMap> computeSunMap(const Yard& yard, const SunMapRequest& request,
                                    std::stop_token stop, const Progress& progress) {
  if (request.area.empty()) return SunMap();
  const SunWork work = workOf(yard, request);
  Sums sums(work);
  addAll(work, stop, progress, sums);
  if (stop.stop_requested()) return std::nullopt;
  return mapOf(work, sums.means, yard);
}

}  // namespace tussock
