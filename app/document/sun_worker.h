// SPDX-License-Identifier: MIT
// Works out sun maps to look at, on a thread of its own. The latest request wins: the one in hand
// is finished and told, those between are never begun, so that a map under the pointer keeps up.
#pragma once

#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>
#include <QObject>
#include <stop_token>
#include <thread>

#include "core/sun/live_map.h"

namespace tussock {

class SunWorker : public QObject {
  Q_OBJECT

 public:
  // A map that follows a drag counts only what has changed since the last one of the same request.
  enum class Way { Whole, Follow };
  struct Job {
    Yard yard;
    SunMapRequest request;
    Way way = Way::Whole;
  };

  explicit SunWorker(QObject* parent = nullptr);
  ~SunWorker() override;

  void request(Job job);
  void drop();  // what has been asked for is no longer told
  void wait();  // until there is nothing to do; what is ready has been told on return

 signals:
  void done(std::shared_ptr<const tussock::SunMap> map);
  void failed(const QString& message);

 private:
  struct Result {
    std::shared_ptr<const SunMap> map;
    QString failure;
  };
  void run(const std::stop_token& end);
  [[nodiscard]] std::optional<Result> work(const Job& job, const std::stop_token& stop);
  [[nodiscard]] std::optional<SunMap> mapFor(const Job& job, const std::stop_token& stop);
  void deliver();

  // The working thread only.
  std::optional<LiveSunMap> live_;
  SunMapRequest liveRequest_;

  std::mutex mutex_;  // guards what follows
  std::condition_variable_any wake_;
  std::condition_variable idle_;
  std::optional<Job> pending_;
  std::optional<Result> ready_;
  std::stop_source step_;
  bool working_ = false;

  std::jthread thread_;  // last: starts when all else stands, ends first
};

}  // namespace tussock
