// SPDX-License-Identifier: MIT
#include "app/tools/drift_in_hand.h"

#include "app/tools/drift_count.h"

namespace tussock {

namespace {
constexpr double kFigureAbove = 46.0;  // pixels above the pointer
}

void DriftInHand::lift(const QString& botanicalName) {
  clear();
  species_ = canvas_.document().facts().find(botanicalName.toStdString());
  if (species_)
    emit hint(tr("Carry it over a bed · + and − change the count · Escape puts it back"));
}

void DriftInHand::carry(QPointF onCanvas) {
  if (!species_ || at_ == onCanvas) return;
  at_ = onCanvas;
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
  if (bed) {
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
  canvas_.showFigure(above, QString::number(planned_->fitted),
                     fitNote(planned_->asked, planned_->fitted));
}

void DriftInHand::drop(QPointF onCanvas) {
  if (!species_) return;
  carry(onCanvas);
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
  planned_.reset();
  canvas_.clearPreview();
  canvas_.clearFigure();
  emit hint(canvas_.tool() ? canvas_.tool()->hint() : QString());
}

}  // namespace tussock
