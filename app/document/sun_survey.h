// SPDX-License-Identifier: MIT
// The sun survey beside what the engine computes, and trees that would fit it better, worked out on
// a thread of its own. Nothing is applied until it is asked for.
#pragma once

#include <QObject>
#include <thread>

#include "app/document/document.h"
#include "core/sun/survey_fit.h"

namespace tussock {

class SunSurvey : public QObject {
  Q_OBJECT

 public:
  explicit SunSurvey(Document& document, QObject* parent = nullptr);
  ~SunSurvey() override;

  // Of the yard as it was a moment ago; empty without readings.
  [[nodiscard]] const std::vector<ReadingCompared>& compared() const { return compared_; }
  void lookForTrees();
  [[nodiscard]] bool looking() const { return looking_; }
  // What was found for the yard as it is; nothing before, and after any edit.
  [[nodiscard]] const std::optional<SurveyFit>& offer() const { return offer_; }
  bool applyOffer();  // as one edit
  void dismissOffer();
  void wait();  // until there is nothing to do; for tests

 signals:
  void changed();

 private:
  void takeYard();
  void compare();
  void stop();
  void takeCompared(std::uint64_t run, const Yard& yard, std::vector<ReadingCompared> compared);
  void takeFit(std::uint64_t run, const Yard& yard, std::optional<SurveyFit> fit);

  Document& document_;
  Yard comparedFor_;
  std::vector<ReadingCompared> compared_;
  std::optional<SurveyFit> offer_;
  bool looking_ = false;
  std::uint64_t run_ = 0;  // what a stopped thread still hands over is for nobody
  std::jthread thread_;
};

}  // namespace tussock
