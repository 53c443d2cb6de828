// SPDX-License-Identifier: MIT
// Filling a bed on a thread of its own: the drifts as they grow and the best so far are told, and
// the finished filling, or the best shown when it is to be kept early, is committed as one edit. An
// edit of the yard meanwhile stops it.
#pragma once

#include <map>
#include <QObject>
#include <thread>

#include "app/document/document.h"
#include "core/planting/fill.h"

namespace tussock {

class Filling : public QObject {
  Q_OBJECT

 public:
  explicit Filling(Document& document, QObject* parent = nullptr);
  ~Filling() override;

  void start(FillRequest request);  // stops what is under way
  // All of the bed in the last arrangement asked for, with the bed selected.
  void fillWhole(Id<Bed> bed);
  void stop();  // leaves the bed as it was
  void keep();  // stops, and plants the best that was told; nothing while there is none
  [[nodiscard]] bool canKeep() const { return running() && best_.has_value(); }
  [[nodiscard]] bool running() const { return thread_.joinable(); }
  [[nodiscard]] std::optional<Id<Bed>> bed() const;      // that is being filled
  [[nodiscard]] double share() const { return share_; }  // of the work under way, 0 to 1
  // Which arrangement was planted last; 1 at first.
  [[nodiscard]] int seedOf(Id<Bed> bed) const;
  // What the bed was planted from last, when that was proposed for it; empty otherwise.
  [[nodiscard]] const std::vector<ListedSpecies>& proposedFor(Id<Bed> bed) const;
  // What the last filling of this bed had to say; nothing once the bed has been changed since, or
  // an edit taken back or made again.
  [[nodiscard]] const std::vector<std::string>& notesOf(Id<Bed> bed) const;

 signals:
  void started();
  void progressed(double share);  // 0 to 1
  // Not committed: the drifts as they grow, then the best planting so far; empty when over.
  void bestChanged(const tussock::ChangeSet& preview);
  void ended();  // finished, stopped or failed
  void notesForgotten();

 private:
  struct Outcome;
  struct Told;
  void hand(std::uint64_t run, Outcome outcome);
  void showTold(std::uint64_t run, Told& told);
  void finish(const FillResult& result);
  [[nodiscard]] std::vector<std::string> notesFrom(const FillResult& result) const;
  [[nodiscard]] std::string proposalNote(const ChangeSet& edit) const;
  void forgetNotes(const ChangeSet& edit);
  void end();
  void giveWay();

  Document& document_;
  FillRequest request_;
  std::uint64_t run_ = 0;  // what a stopped thread still hands over is for nobody
  double share_ = 0.0;
  std::optional<FillResult> best_;  // told last; the drifts as they grow are not yet by the rules
  bool committing_ = false;
  bool edited_ = false;  // the change about to be told is a new edit
  std::map<Id<Bed>, int> seeds_;
  std::map<Id<Bed>, std::vector<ListedSpecies>> proposed_;
  std::map<Id<Bed>, std::vector<std::string>> notes_;
  std::jthread thread_;
};

}  // namespace tussock
