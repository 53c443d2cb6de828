// SPDX-License-Identifier: MIT
#include "app/document/sun_view.h"

#include "core/sun/horizon.h"
#include "core/sun/tree_growth.h"

namespace tussock {

namespace {

bool sameJob(const SunWorker::Job& a, const SunWorker::Job& b) {
  return a.way == b.way && a.request == b.request && sameSun(a.yard, b.yard);
}

}  // namespace

SunView::SunView(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document_, &Document::opened, this, [this] {
    preview_.reset();
    asked_.reset();
    worker_.drop();
    choice_.day = CivilDay::today(document_.yard().settings);
    takeMap(nullptr);
    takeYard();
    emit choiceChanged();
  });
  connect(&document_, &Document::changed, this, &SunView::takeYard);
  connect(&document_, &Document::sunMapChanged, this, &SunView::refresh);
  connect(&worker_, &SunWorker::done, this, [this](const std::shared_ptr<const SunMap>& map) {
    if (asked_) takeMap(map);
  });
  connect(&worker_, &SunWorker::failed, this, &SunView::failed);
  choice_.day = CivilDay::today(document_.yard().settings);
  takeYard();
}

SunView::~SunView() = default;

void SunView::choose(const SunChoice& choice) {
  if (choice == choice_) return;
  const bool otherTrees = choice.yearsAhead != choice_.yearsAhead;
  choice_ = choice;
  grid_.reset();
  if (otherTrees)
    takeYard();
  else
    refresh();
  emit choiceChanged();
}

void SunView::preview(std::optional<Yard> yard) {
  if (!yard && !preview_) return;
  preview_ = std::move(yard);
  if (preview_) return takeYard();
  // The edit may follow at once; going back to the map before it would flicker.
  shown_ = grownYard();
  QMetaObject::invokeMethod(this, &SunView::refresh, Qt::QueuedConnection);
  emit yardChanged();
}

void SunView::takeYard() {
  shown_ = grownYard();
  refresh();
  emit yardChanged();
}

Yard SunView::grownYard() const {
  const Yard& base = preview_ ? *preview_ : document_.yard();
  return choice_.yearsAhead > 0 ? grownBy(base, choice_.yearsAhead) : base;
}

bool SunView::documentsMapDoes() const {
  return !preview_ && choice_.yearsAhead == 0;
}

// While something is dragged the ground stays that of the yard as it is, so that the map can
// follow. Months are only counted where one of them is looked at.
SunWorker::Job SunView::job() const {
  if (!preview_) return {shown_, seasonRequest(shown_), SunWorker::Way::Whole};
  SunWorker::Job job{shown_, previewRequest(document_.yard()), SunWorker::Way::Follow};
  if (choice_.span != SunSpan::Season) job.request.detail = SunDetail::Months;
  return job;
}

// What is shown stays until there is better, so that nothing flickers between.
void SunView::refresh() {
  if (documentsMapDoes()) {
    asked_.reset();
    worker_.drop();
    if (document_.sunMapSettled()) takeMap(document_.sunMap());
    return;
  }
  if (choice_.look != SunLook::Hours) return;
  SunWorker::Job wanted = job();
  if (wanted.request.area.empty() || (asked_ && sameJob(*asked_, wanted))) return;
  asked_ = wanted;
  worker_.request(std::move(wanted));
}

void SunView::takeMap(std::shared_ptr<const SunMap> map) {
  if (map == map_) return;
  map_ = std::move(map);
  grid_.reset();
  if (!map_)
    months_.clear();
  else if (!map_->months().empty())
    months_ = map_->months();
  emit mapChanged();
}

const HourGrid& SunView::grid() const {
  if (!grid_) grid_ = map_ ? gridOf(*map_) : HourGrid();
  return *grid_;
}

HourGrid SunView::gridOf(const SunMap& map) const {
  switch (choice_.span) {
    case SunSpan::Season:
      return hourGridOf(map);
    case SunSpan::Month:
      return hourGridOf(map, choice_.month);
    case SunSpan::WorstMonth:
      return worstHourGridOf(map);
  }
  return {};
}

CivilDay SunView::civilDay() const {
  return {choice_.day, document_.yard().settings};
}

UtcTime SunView::instant() const {
  return civilDay().at(choice_.minute);
}

SunPosition SunView::sun() const {
  const Settings& settings = document_.yard().settings;
  return sunPosition(instant(), settings.latitude, settings.longitude);
}

bool SunView::isLitAt(int minute) const {
  const Settings& settings = document_.yard().settings;
  const UtcTime time = civilDay().at(minute);
  return Horizon(settings).clears(sunPosition(time, settings.latitude, settings.longitude));
}

void SunView::waitForMap() {
  document_.waitForAnalysis();
  refresh();
  worker_.wait();
}

}  // namespace tussock
