// SPDX-License-Identifier: MIT
#include "app/document/analysis.h"

#include <cmath>
#include <exception>
#include <utility>

namespace tussock {

Analysis::Analysis(QObject* parent)
    : QObject(parent), thread_([this](const std::stop_token& end) { run(end); }) {}

Analysis::~Analysis() {
  thread_.request_stop();
  {
    const std::lock_guard lock(mutex_);
    step_.request_stop();
  }
  wake_.notify_all();
  thread_.join();
}

void Analysis::request(const Yard& yard, const Catalogue& facts) {
  {
    const std::lock_guard lock(mutex_);
    const bool sunStillRight = sunInHand_ && sameSun(*sunInHand_, yard);
    if (!sunStillRight) step_.request_stop();
    pending_ = Asked{yard, facts};
  }
  wake_.notify_all();
}

void Analysis::forget() {
  const std::lock_guard lock(mutex_);
  pending_.reset();
  ready_ = {};
  forgotten_ = working_;
  step_.request_stop();
  sunMap_.reset();
  sunMapFor_.reset();
  findings_.reset();
}

void Analysis::wait() {
  {
    std::unique_lock lock(mutex_);
    idle_.wait(lock, [this] { return !working_ && !pending_; });
  }
  deliver();
}

void Analysis::run(const std::stop_token& end) {
  std::unique_lock lock(mutex_);
  while (wake_.wait(lock, end, [this] { return pending_.has_value(); })) {
    const Asked asked = std::exchange(pending_, std::nullopt).value();
    working_ = true;
    forgotten_ = false;
    lock.unlock();
    work(asked);
    lock.lock();
    working_ = false;
    if (!pending_) idle_.notify_all();
  }
}

void Analysis::work(const Asked& asked) {
  try {
    workOutSun(asked.yard);
    {
      const std::lock_guard lock(mutex_);
      if (pending_) return;  // a newer yard asks for its own findings
    }
    workOutFindings(asked);
  } catch (const std::exception& problem) {
    hand({.sunMap = std::nullopt,
          .sunMapFor = std::nullopt,
          .findings = std::nullopt,
          .failure = QString::fromUtf8(problem.what())});
  }
}

// Anything asked for before this counts as not to be stopped by it.
std::stop_token Analysis::beginStep(std::optional<Yard> sunFor) {
  const std::lock_guard lock(mutex_);
  step_ = std::stop_source();
  sunInHand_ = std::move(sunFor);
  if (pending_ || forgotten_) step_.request_stop();
  return step_.get_token();
}

void Analysis::workOutSun(const Yard& yard) {
  if (mapFor_ && sameSun(*mapFor_, yard)) return handSun();
  mapFor_.reset();
  workingMap_.reset();
  const SunMapRequest request = seasonRequest(yard);
  if (!request.area.empty()) {
    double shown = 0.0;
    const auto progress = [this, &shown](double share) {
      if (share - shown < 0.02 && share < 1.0) return;
      shown = share;
      QMetaObject::invokeMethod(
          this, [this, share] { emit sunProgress(share); }, Qt::QueuedConnection);
    };
    auto map = computeSunMap(yard, request, beginStep(yard), progress);
    if (!map) return;
    workingMap_ = std::make_shared<const SunMap>(*std::move(map));
  }
  mapFor_ = yard;
  handSun();
}

void Analysis::handSun() {
  hand({.sunMap = workingMap_, .sunMapFor = mapFor_, .findings = std::nullopt, .failure = {}});
}

void Analysis::workOutFindings(const Asked& asked) {
  auto found = kept_.run(asked.yard, asked.facts, workingMap_, beginStep(std::nullopt));
  if (!found) return;
  hand({.sunMap = std::nullopt,
        .sunMapFor = std::nullopt,
        .findings = std::make_shared<const std::vector<Finding>>(*std::move(found)),
        .failure = {}});
}

void Analysis::hand(Results results) {
  const std::lock_guard lock(mutex_);
  if (forgotten_) return;
  if (results.sunMap) {
    ready_.sunMap = std::move(results.sunMap);
    ready_.sunMapFor = std::move(results.sunMapFor);
  }
  if (results.findings) ready_.findings = std::move(results.findings);
  if (!results.failure.isEmpty()) ready_.failure = std::move(results.failure);
  QMetaObject::invokeMethod(
      this, [this] { deliver(); }, Qt::QueuedConnection);
}

void Analysis::deliver() {
  Results results;
  {
    const std::lock_guard lock(mutex_);
    results = std::exchange(ready_, {});
  }
  if (results.sunMap) {
    const bool changed = *results.sunMap != sunMap_;
    sunMap_ = *results.sunMap;
    sunMapFor_ = std::move(results.sunMapFor);
    if (changed) emit sunMapChanged();
  }
  if (results.findings) {
    findings_ = *results.findings;
    emit findingsChanged();
  }
  if (!results.failure.isEmpty()) emit failed(results.failure);
}

}  // namespace tussock
