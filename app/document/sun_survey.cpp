// SPDX-License-Identifier: MIT
#include "app/document/sun_survey.h"

#include <algorithm>
#include <QCoreApplication>
#include <utility>

namespace tussock {

namespace {

bool sameReadings(const Yard& a, const Yard& b) {
  return std::equal(a.sunReadings.begin(), a.sunReadings.end(), b.sunReadings.begin(),
                    b.sunReadings.end());
}

}  // namespace

SunSurvey::SunSurvey(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document_, &Document::opened, this, &SunSurvey::takeYard);
  connect(&document_, &Document::changed, this, &SunSurvey::takeYard);
  takeYard();
}

SunSurvey::~SunSurvey() {
  stop();
}

void SunSurvey::takeYard() {
  stop();
  offer_.reset();
  const Yard& yard = document_.yard();
  if (!sameReadings(comparedFor_, yard) || !sameSun(comparedFor_, yard)) compare();
  emit changed();
}

void SunSurvey::compare() {
  const Yard& now = document_.yard();
  if (now.sunReadings.empty()) return takeCompared(run_, now, {});
  thread_ = std::jthread([this, run = run_, yard = now] {
    QMetaObject::invokeMethod(
        this,
        [this, run, yard, compared = compareReadings(yard)] {
          takeCompared(run, yard, compared);
          if (run == run_) emit changed();
        },
        Qt::QueuedConnection);
  });
}

void SunSurvey::takeCompared(std::uint64_t run, const Yard& yard,
                             std::vector<ReadingCompared> compared) {
  if (run != run_) return;
  comparedFor_ = yard;
  compared_ = std::move(compared);
}

void SunSurvey::stop() {
  ++run_;
  looking_ = false;
  thread_ = std::jthread();
}

void SunSurvey::wait() {
  if (!thread_.joinable()) return;
  thread_.join();
  QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
}

void SunSurvey::lookForTrees() {
  if (looking_) return;
  stop();
  looking_ = true;
  thread_ = std::jthread([this, run = run_, yard = document_.yard()](const std::stop_token& end) {
    QMetaObject::invokeMethod(
        this, [this, run, yard, fit = fitSurvey(yard, end)] { takeFit(run, yard, fit); },
        Qt::QueuedConnection);
  });
  emit changed();
}

void SunSurvey::takeFit(std::uint64_t run, const Yard& yard, std::optional<SurveyFit> fit) {
  if (run != run_) return;
  if (fit) takeCompared(run, yard, fit->before);
  stop();
  offer_ = std::move(fit);
  emit changed();
}

bool SunSurvey::applyOffer() {
  if (!offer_ || offer_->proposal.empty()) return false;
  const ChangeSet edit = offer_->proposal;  // the edit takes the offer away
  return document_.commit(edit);
}

void SunSurvey::dismissOffer() {
  stop();
  offer_.reset();
  emit changed();
}

}  // namespace tussock
