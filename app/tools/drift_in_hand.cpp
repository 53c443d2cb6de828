// SPDX-License-Identifier: MIT
#include "app/tools/drift_in_hand.h"

#include <cmath>

#include "app/tools/drift_count.h"
#include "core/planting/stroke.h"

namespace tussock {

namespace {
constexpr double kFigureAbove = 46.0;  // pixels above the pointer
}

QList<GestureWords> DriftInHand::gestures() {
  return {
      {tr("Drag a card over a bed"),
       tr("Shows the drift that would be planted; let go to plant it")},
      {tr("+ and −, Ctrl and wheel"), tr("Step the count, while carrying")},
      {tr("Shift"), tr("Plants along the way you carry it")},
      {tr("Escape"), tr("Puts the species back")},
  };
}

void DriftInHand::lift(const QString& botanicalName) {
  clear();
  species_ = canvas_.document().facts().find(botanicalName.toStdString());
  if (species_)
    emit hint(
        tr("Carry it over a bed · + and − change the count · Shift plants along your way · Escape "
           "puts it back"));
}

void DriftInHand::carry(QPointF onCanvas, Qt::KeyboardModifiers modifiers) {
  if (!species_ || at_ == onCanvas) return;
  at_ = onCanvas;
  drawAlong(modifiers);
  plan();
}

void DriftInHand::stepCount(int direction) {
  if (!species_) return;
  count_ = direction > 0 ? nextCount(count_) : previousCount(count_);
  if (at_) plan();
}

void DriftInHand::plan() {
  Document& document = canvas_.document();
  planned_.reset();
  const Point at = canvas_.mapping().toSite(*at_);
  const Bed* bed = canvas_.rect().contains(at_->toPoint()) ? bedAt(document.yard(), at) : nullptr;
  if (line_.size() > 1) {
    IdSource ids = document.ids();
    planned_ = plannedAlong(ids);
    nextId_ = ids.next();
  } else if (bed) {
    GrowRequest request;
    request.bed = bed->id;
    request.count = count_;
    request.at = at;
    // A copy: ids are taken for good only when the drift is planted.
    IdSource ids = document.ids();
    planned_ = plantDrift(document.yard(), *species_, request, ids);
    nextId_ = ids.next();
  }
  show();
}

void DriftInHand::show() {
  if (planned_ && !planned_->edit.empty())
    canvas_.show(planned_->edit);
  else
    canvas_.clearPreview();
  const Point above = canvas_.mapping().toSite(*at_ - QPointF(0.0, kFigureAbove));
  if (!canvas_.rect().contains(at_->toPoint())) return canvas_.clearFigure();
  if (!planned_)
    return canvas_.showFigure(above, QString::number(count_), tr("Carry it over a bed"));
  canvas_.showFigure(above, QString::number(planned_->fitted), note());
}

QString DriftInHand::note() const {
  const QString fit = fitNote(planned_->asked, planned_->fitted);
  const Drift* drift = driftIn(planned_->edit, planned_->drift);
  if (!drift) return fit;
  return notesTogether(fit, groundNote(*drift, canvas_.document().yard().settings.units));
}

// With Shift the drift follows the way it is carried.
void DriftInHand::drawAlong(Qt::KeyboardModifiers modifiers) {
  if (!(modifiers & Qt::ShiftModifier)) return line_.clear();
  const Point at = canvas_.mapping().toSite(*at_);
  const double step = species_->spacing.metres() / 3.0;
  if (line_.empty() || distance(line_.back(), at) >= step) line_.push_back(at);
}

DriftEdit DriftInHand::plannedAlong(IdSource& ids) const {
  // As wide as the count is long in an ordinary drift: three plants across for 7.
  const double across = std::max(1.0, std::round(std::sqrt(double(count_) * 1.2)));
  return plantAlong(canvas_.document().yard(), *species_, {line_, species_->spacing * across}, ids);
}

void DriftInHand::drop(QPointF onCanvas) {
  if (!species_) return;
  carry(onCanvas, line_.empty() ? Qt::NoModifier : Qt::ShiftModifier);
  const std::optional<DriftEdit> planned = planned_;
  const std::int64_t next = nextId_;
  const bool overCanvas = canvas_.rect().contains(onCanvas.toPoint());
  clear();
  if (!overCanvas) return;
  if (!planned)
    return canvas_.tell(tr("There is no bed there. Drop plants inside a bed, or draw one first."));
  if (planned->edit.empty())
    return canvas_.tell(
        tr("No plant fits there: the ground is taken or too near the edge. Try a "
           "freer place."));
  canvas_.document().ids().skipTo(next);
  if (canvas_.document().commit(planned->edit)) canvas_.document().select({refTo(planned->drift)});
}

void DriftInHand::putBack() {
  clear();
}

void DriftInHand::clear() {
  species_ = nullptr;
  count_ = kUsualCount;
  at_.reset();
  line_.clear();
  planned_.reset();
  canvas_.clearPreview();
  canvas_.clearFigure();
  emit hint(canvas_.tool() ? canvas_.tool()->hint() : QString());
}

}  // namespace tussock
