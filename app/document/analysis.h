// SPDX-License-Identifier: MIT
// Sun map and findings of the latest yard, worked out on a thread of its own. A newer yard stops
// work that has become useless; a sun map that is still right is kept.
#pragma once

#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>
#include <QObject>
#include <stop_token>
#include <thread>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/checks/kept_findings.h"
#include "core/sun/map.h"

namespace tussock {

using SharedSunMap = std::shared_ptr<const SunMap>;
using SharedFindings = std::shared_ptr<const std::vector<Finding>>;

class Analysis : public QObject {
  Q_OBJECT

 public:
  explicit Analysis(QObject* parent = nullptr);
  ~Analysis() override;

  void request(const Yard& yard, const Catalogue& facts);
  void forget();  // results and work in hand
  void wait();    // until there is nothing to do; results are in place on return

  [[nodiscard]] SharedSunMap sunMap() const { return sunMap_; }
  // Whether that map is right for the yard.
  [[nodiscard]] bool sunMapSuits(const Yard& yard) const {
    return sunMapFor_ && sameSun(*sunMapFor_, yard);
  }
  [[nodiscard]] SharedFindings findings() const { return findings_; }

 signals:
  void sunMapChanged();
  void findingsChanged();
  void sunProgress(double share);
  void failed(const QString& message);

 private:
  // What the thread has ready for the window; taken by deliver().
  struct Results {
    std::optional<SharedSunMap> sunMap;
    std::optional<Yard> sunMapFor;
    std::optional<SharedFindings> findings;
    QString failure;
  };

  void run(const std::stop_token& end);
  struct Asked {
    Yard yard;
    Catalogue facts;
  };
  void work(const Asked& asked);
  void workOutSun(const Yard& yard);
  void handSun();
  void workOutFindings(const Asked& asked);
  [[nodiscard]] std::stop_token beginStep(std::optional<Yard> sunFor);
  void hand(Results results);
  void deliver();

  // The window's thread only.
  SharedSunMap sunMap_;
  std::optional<Yard> sunMapFor_;
  SharedFindings findings_;
  // The working thread only.
  SharedSunMap workingMap_;
  std::optional<Yard> mapFor_;
  KeptFindings kept_;

  std::mutex mutex_;  // guards what follows
  std::condition_variable_any wake_;
  std::condition_variable idle_;
  std::optional<Asked> pending_;
  std::optional<Yard> sunInHand_;  // the yard whose sun is being worked out
  std::stop_source step_;
  Results ready_;
  bool working_ = false;
  bool forgotten_ = false;  // results of the work in hand are for nobody

  std::jthread thread_;  // last: starts when all else stands, ends first
};

}  // namespace tussock
