// SPDX-License-Identifier: MIT
#include "app/document/sun_worker.h"

#include <utility>

namespace tussock {

SunWorker::SunWorker(QObject* parent)
    : QObject(parent), thread_([this](const std::stop_token& end) { run(end); }) {}

SunWorker::~SunWorker() {
  thread_.request_stop();
  {
    const std::lock_guard lock(mutex_);
    pending_.reset();
    step_.request_stop();
  }
  wake_.notify_all();
  thread_.join();
}

void SunWorker::request(Job job) {
  {
    const std::lock_guard lock(mutex_);
    pending_ = std::move(job);
  }
  wake_.notify_all();
}

void SunWorker::drop() {
  const std::lock_guard lock(mutex_);
  pending_.reset();
  ready_.reset();
  step_.request_stop();
}

void SunWorker::wait() {
  {
    std::unique_lock lock(mutex_);
    idle_.wait(lock, [this] { return !working_ && !pending_; });
  }
  deliver();
}

void SunWorker::run(const std::stop_token& end) {
  std::unique_lock lock(mutex_);
  while (wake_.wait(lock, end, [this] { return pending_.has_value(); })) {
    const Job job = std::exchange(pending_, std::nullopt).value();
    working_ = true;
    step_ = std::stop_source();
    const std::stop_token stop = step_.get_token();
    lock.unlock();
    std::optional<Result> result = work(job, stop);
    lock.lock();
    working_ = false;
    if (result && !stop.stop_requested()) {
      ready_ = std::move(result);
      QMetaObject::invokeMethod(
          this, [this] { deliver(); }, Qt::QueuedConnection);
    }
    if (!pending_) idle_.notify_all();
  }
}

std::optional<SunWorker::Result> SunWorker::work(const Job& job, const std::stop_token& stop) {
  try {
    auto map = mapFor(job, stop);
    if (!map) return std::nullopt;
    return Result{std::make_shared<const SunMap>(*std::move(map)), {}};
  } catch (const std::exception& problem) {
    return Result{nullptr, QString::fromUtf8(problem.what())};
  }
}

std::optional<SunMap> SunWorker::mapFor(const Job& job, const std::stop_token& stop) {
  if (job.way == Way::Whole) return computeSunMap(job.yard, job.request, stop);
  if (!live_ || !(liveRequest_ == job.request)) live_.emplace(job.request);
  liveRequest_ = job.request;
  return live_->update(job.yard, stop);
}

void SunWorker::deliver() {
  std::optional<Result> result;
  {
    const std::lock_guard lock(mutex_);
    result = std::exchange(ready_, std::nullopt);
  }
  if (!result) return;
  if (!result->failure.isEmpty())
    emit failed(result->failure);
  else
    emit done(result->map);
}

}  // namespace tussock
