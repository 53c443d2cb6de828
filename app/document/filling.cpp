// SPDX-License-Identifier: MIT
#include "app/document/filling.h"

#include <exception>
#include <mutex>
#include <QMetaObject>
#include <utility>

#include "core/checks/checked_fill.h"
#include "core/planting/arrangements.h"
#include "core/planting/planted_list.h"

namespace tussock {

// What the thread comes back with: a result, nothing (stopped), or what went wrong.
struct Filling::Outcome {
  std::optional<FillResult> result;
  QString failure;
};

// The newest that the thread has told and the window has not yet shown: where showing takes longer
// than planting, what came between is left out.
struct Filling::Told {
  std::mutex guard;
  double share = 0.0;
  std::optional<ChangeSet> growing;
  std::optional<FillResult> best;
  bool waits = false;  // the window has been asked to show it
};

namespace {

// The yard with the drifts as they grow; nothing while there are none.
std::optional<ChangeSet> growingIn(const FillProgress& progress, const Yard& yard, IdSource ids,
                                   const FillRequest& request) {
  if (progress.grown.empty()) return std::nullopt;
  const auto instead = [&](const Drift& drift) { return takesOut(request, drift); };
  return plantKept(yard, request.bed, progress.grown, instead, {}, ids);
}

Id<Bed> bedOf(const Object& object) {
  if (const auto* bed = std::get_if<Bed>(&object)) return bed->id;
  const auto* drift = std::get_if<Drift>(&object);
  return drift ? drift->bed : Id<Bed>();
}

}  // namespace

Filling::Filling(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document_, &Document::committed, this, [this] { edited_ = true; });
  connect(&document_, &Document::changed, this, [this](const ChangeSet& edit) {
    forgetNotes(edit);
    if (running() && !committing_) giveWay();
  });
  connect(&document_, &Document::opened, this, [this] {
    stop();
    seeds_.clear();
    proposed_.clear();
    notes_.clear();
  });
}

Filling::~Filling() {
  ++run_;
  thread_ = {};  // asks it to stop and waits
}

std::optional<Id<Bed>> Filling::bed() const {
  return running() ? std::optional(request_.bed) : std::nullopt;
}

int Filling::seedOf(Id<Bed> bed) const {
  const auto found = seeds_.find(bed);
  return found == seeds_.end() ? 1 : found->second;
}

const std::vector<ListedSpecies>& Filling::proposedFor(Id<Bed> bed) const {
  static const std::vector<ListedSpecies> none;
  const auto found = proposed_.find(bed);
  return found == proposed_.end() ? none : found->second;
}

const std::vector<std::string>& Filling::notesOf(Id<Bed> bed) const {
  static const std::vector<std::string> none;
  const auto found = notes_.find(bed);
  return found == notes_.end() ? none : found->second;
}

void Filling::start(FillRequest request) {
  stop();
  request_ = std::move(request);
  share_ = 0.0;
  best_.reset();
  const std::uint64_t run = ++run_;
  thread_ = std::jthread([this, run, yard = document_.yard(), facts = document_.facts(),
                          sun = document_.sunMap(), ids = document_.ids(),
                          asked = request_](const std::stop_token& asksToStop) mutable {
    const auto told = std::make_shared<Told>();
    const auto onProgress = [&, this](const FillProgress& progress) {
      auto growing = growingIn(progress, yard, ids, asked);
      auto best = plantedSoFar(yard, facts, asked, progress, ids);
      const std::lock_guard lock(told->guard);
      told->share = progress.share;
      if (growing) told->growing = std::move(growing);
      if (best) told->best = std::move(best), told->growing.reset();
      if (std::exchange(told->waits, true)) return;
      QMetaObject::invokeMethod(this, [this, run, told] { showTold(run, *told); });
    };
    Outcome outcome;
    try {
      outcome.result = fillChecked(yard, facts, sun.get(), asked, ids, asksToStop, onProgress);
    } catch (const std::exception& failure) {
      outcome.failure = QString::fromUtf8(failure.what());
    }
    QMetaObject::invokeMethod(this, [this, run, outcome = std::move(outcome)]() mutable {
      hand(run, std::move(outcome));
    });
  });
  emit started();
}

void Filling::fillWhole(Id<Bed> bed) {
  document_.select({refTo(bed)});
  FillRequest request;
  request.bed = bed;
  request.seed = seedOf(bed);
  start(std::move(request));
}

void Filling::stop() {
  if (running()) end();
}

void Filling::keep() {
  if (!canKeep()) return;
  thread_.request_stop();
  finish(*std::exchange(best_, std::nullopt));
  end();
}

// What is being planted no longer fits the yard. Whoever made the edit may look elsewhere.
void Filling::giveWay() {
  const Bed* bed = document_.yard().beds.find(request_.bed);
  const QString name = bed ? QString::fromStdString(bed->name) : QString();
  stop();
  if (!bed) return;
  emit document_.notice(
      (name.isEmpty()
           ? tr("The bed is no longer being filled, as the yard was changed meanwhile.")
           : tr("%1 is no longer being filled, as the yard was changed meanwhile.").arg(name)) +
      tr(" Fill it again."));
}

void Filling::end() {
  ++run_;
  thread_ = {};
  emit bestChanged({});
  emit ended();
}

void Filling::showTold(std::uint64_t run, Told& told) {
  std::optional<ChangeSet> growing;
  std::optional<FillResult> best;
  double share = 0.0;
  {
    const std::lock_guard lock(told.guard);
    growing = std::exchange(told.growing, std::nullopt);
    best = std::exchange(told.best, std::nullopt);
    share = told.share;
    told.waits = false;
  }
  if (run != run_) return;
  share_ = share;
  if (best) best_ = std::move(best), growing = best_->edit;
  if (growing) emit bestChanged(*growing);
  emit progressed(share_);
}

void Filling::hand(std::uint64_t run, Outcome outcome) {
  if (run != run_) return;
  if (outcome.result) finish(*outcome.result);
  if (!outcome.failure.isEmpty())
    emit document_.notice(tr("The bed could not be filled: %1").arg(outcome.failure));
  end();
}

void Filling::finish(const FillResult& result) {
  seeds_[request_.bed] = request_.seed;
  notes_[request_.bed] = notesFrom(result);
  emit bestChanged({});
  if (result.edit.empty()) return;
  if (result.proposed) proposed_[request_.bed] = result.plants;
  committing_ = true;
  document_.commit(result.edit);
  committing_ = false;
}

std::vector<std::string> Filling::notesFrom(const FillResult& result) const {
  std::vector<std::string> notes = result.notes;
  if (result.edit.empty() && !result.unchanged) {
    const std::string nothing = tr("Nothing was planted.").toStdString();
    if (notes.empty()) notes.emplace_back();
    notes.front() = notes.front().empty() ? nothing : nothing + ' ' + notes.front();
  } else if (result.proposed && !result.edit.empty() && request_.what == FillWhat::WholeBed) {
    notes.insert(notes.begin(), proposalNote(result.edit));
  }
  if (result.stopped)
    notes.insert(notes.begin(),
                 tr("Stopped early: the best by then was kept, before all was tried. "
                    "To let it finish, undo and fill again.")
                     .toStdString());
  return notes;
}

// Nobody asked for these species in the place of those.
std::string Filling::proposalNote(const ChangeSet& edit) const {
  const Yard& before = document_.yard();
  const auto gone = int(speciesGone(before, apply(before, edit), request_.bed));
  QString note = tr("The bed has no plant list, so one was proposed from the plant facts.");
  if (gone == 1)
    note += tr(" 1 species that stood there was replaced. Undo brings it back;");
  else if (gone > 1)
    note += tr(" %1 species that stood there were replaced. Undo brings them back;").arg(gone);
  if (gone > 0) note += tr(" “List what is planted” before filling keeps what stands there.");
  return note.toStdString();
}

// Those of the beds that are no longer as the filling left them.
void Filling::forgetNotes(const ChangeSet& edit) {
  const bool takenBack = !std::exchange(edited_, false) && !edit.empty();
  if (committing_ || notes_.empty()) return;
  if (takenBack) notes_.clear();
  for (const Change& change : edit.changes)
    for (const auto* side : {&change.before, &change.after})
      if (*side) notes_.erase(bedOf(**side));
  emit notesForgotten();
}

}  // namespace tussock
