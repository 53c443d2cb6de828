// SPDX-License-Identifier: MIT
// The open yard: the only writer of its file, and the background work on it. Everyone else listens.
#pragma once

#include <memory>
#include <optional>
#include <QDateTime>
#include <QImage>
#include <QObject>
#include <vector>

#include "core/catalog/own_plants.h"
#include "core/checks/finding.h"
#include "core/edit/change.h"
#include "core/store/yard_file.h"
#include "core/sun/map.h"

namespace tussock {

class Document : public QObject {
  Q_OBJECT

 public:
  explicit Document(Catalogue facts, QObject* parent = nullptr);
  ~Document() override;

  // Both throw StoreError and leave the document as it was.
  void open(const QString& path);
  void create(const QString& path, const Yard& yard);
  void close();

  [[nodiscard]] bool isOpen() const;
  [[nodiscard]] bool isReadOnly() const;
  [[nodiscard]] QString path() const;
  [[nodiscard]] const Yard& yard() const;  // an empty yard when none is open
  // The published facts with the user's own before them.
  [[nodiscard]] const Catalogue& facts() const;
  // Published, personal and the yard's own, for editing plants.
  [[nodiscard]] PlantLayers plantLayers() const;
  // Own plants that hold in every yard; a yard that uses one carries it from then on.
  void setPersonalPlants(std::vector<OwnSpecies> plants, std::vector<Species> read = {});
  [[nodiscard]] IdSource& ids();

  // Writes a whole copy of the file, history too. Throws StoreError.
  void copyTo(const QString& path) const;

  // True once the edit is on disk. False when it could not be written: editFailed says why, and the
  // yard shown is that of the file.
  bool commit(const ChangeSet& edit);
  // The same for the steps of a slider and the like: one edit in the history with the step before,
  // where that has the same label and changed the same, and nothing was edited, undone or selected
  // since.
  bool commitStep(const ChangeSet& edit);
  void undo();
  void redo();
  // Takes in what another program has written to the file, if it has. Called on its own when the
  // file changes; a window may call it when it comes to the front.
  void takeInOutsideChanges();
  // The number of the edit that undo takes back next; 0 when there is none.
  [[nodiscard]] std::int64_t lastEdit() const;
  [[nodiscard]] std::optional<QString> undoLabel() const;
  [[nodiscard]] std::optional<QString> redoLabel() const;

  // Bytes of a picture; gives the content hash to name in a Photo.
  std::string keepPicture(const QByteArray& bytes);
  // Decoded with its orientation applied, cached; null when it cannot be read.
  [[nodiscard]] QImage picture(const std::string& hash) const;

  // What is selected; not part of the file.
  [[nodiscard]] const std::vector<ObjectRef>& selection() const;
  void select(std::vector<ObjectRef> refs);

  // Results of the background work for the yard as it was a moment ago; null until there are any.
  [[nodiscard]] std::shared_ptr<const SunMap> sunMap() const;
  [[nodiscard]] std::shared_ptr<const std::vector<Finding>> findings() const;
  [[nodiscard]] bool sunMapSettled() const;  // the sun map is that of the yard as it is now
  // Blocks until the background work has caught up; for tests, scripts and printing.
  void waitForAnalysis();

 signals:
  void opened();                                 // another yard, or none: take in everything
  void factsChanged();                           // before `changed` or `opened` tell of the yard
  void changed(const tussock::ChangeSet& edit);  // after commit, undo, redo
  void committed();                              // a new edit, before `changed`: redo is lost
  void selectionChanged();
  void editFailed(const QString& message);
  void notice(const QString& message);  // something to tell that is no failure
  void remark(const QString& message);  // of the edit just made or refused; until the next
  void sunMapChanged();
  void findingsChanged();
  void sunProgress(double share);  // 0 to 1
  void saved(const QDateTime& at);

 private:
  struct State;
  void takeIn(YardFile file, bool readOnly);
  void letGo();
  void show(const Yard& before, const std::string& label);
  void followFacts();
  enum class Joined { No, ToLast };
  bool commit(const ChangeSet& edit, Joined joined);
  bool commitAgain(const ChangeSet& edit);
  bool tell(const QString& message);
  void step(std::optional<std::string> (YardFile::*move)());

  std::unique_ptr<State> state_;
};

}  // namespace tussock
