// SPDX-License-Identifier: MIT
#include "app/document/document.h"

#include <algorithm>
#include <QFileInfo>
#include <QFileSystemWatcher>
#include <QTimer>
#include <utility>

#include "app/document/analysis.h"
#include "app/document/pictures.h"
#include "app/document/plant_facts.h"
#include "core/catalog/edit_plants.h"

namespace tussock {

struct Document::State {
  explicit State(Catalogue published) : facts(std::move(published)) {}

  PlantFacts facts;
  std::optional<YardFile> file;
  bool readOnly = false;
  Yard none;
  IdSource noIds;
  std::vector<ObjectRef> selection;
  mutable Pictures pictures;
  QFileSystemWatcher watcher;
  // The step that another may be joined to: its label and what it changed.
  std::optional<std::pair<std::string, std::vector<ObjectRef>>> step;
  QTimer outside;  // lets a writer finish before the file is looked at
  Analysis analysis;
};

namespace {

constexpr int kSettleMilliseconds = 150;

std::filesystem::path fileSystemPath(const QString& path) {
  return QFileInfo(path).filesystemAbsoluteFilePath();
}

QString textOf(const std::exception& problem) {
  return QString::fromUtf8(problem.what());
}

}  // namespace

Document::Document(Catalogue facts, QObject* parent)
    : QObject(parent), state_(std::make_unique<State>(std::move(facts))) {
  State& s = *state_;
  s.outside.setSingleShot(true);
  s.outside.setInterval(kSettleMilliseconds);
  connect(&s.watcher, &QFileSystemWatcher::fileChanged, &s.outside, qOverload<>(&QTimer::start));
  connect(&s.outside, &QTimer::timeout, this, &Document::takeInOutsideChanges);
  connect(&s.analysis, &Analysis::sunMapChanged, this, &Document::sunMapChanged);
  connect(&s.analysis, &Analysis::findingsChanged, this, &Document::findingsChanged);
  connect(&s.analysis, &Analysis::sunProgress, this, &Document::sunProgress);
  connect(&s.analysis, &Analysis::failed, this, &Document::notice);
}

Document::~Document() = default;

void Document::open(const QString& path) {
  try {
    takeIn(YardFile::open(fileSystemPath(path)), false);
  } catch (const StoreError& problem) {
    if (problem.reason() != StoreError::Reason::ReadOnly) throw;
    takeIn(YardFile::open(fileSystemPath(path), YardFile::Access::ReadOnly), true);
  }
}

void Document::create(const QString& path, const Yard& yard) {
  takeIn(YardFile::create(fileSystemPath(path), yard), false);
}

void Document::takeIn(YardFile file, bool readOnly) {
  letGo();
  state_->file.emplace(std::move(file));
  state_->readOnly = readOnly;
  state_->watcher.addPath(path());
  followFacts();
  state_->analysis.request(yard(), facts());
  emit opened();
}

void Document::copyTo(const QString& path) const {
  if (isOpen()) state_->file->copyTo(fileSystemPath(path));
}

void Document::close() {
  if (!isOpen()) return;
  letGo();
  emit opened();
}

void Document::letGo() {
  State& s = *state_;
  if (!s.watcher.files().isEmpty()) s.watcher.removePaths(s.watcher.files());
  s.outside.stop();
  s.analysis.forget();
  s.pictures.clear();
  s.selection.clear();
  s.step.reset();
  s.file.reset();
  s.readOnly = false;
}

bool Document::isOpen() const {
  return state_->file.has_value();
}

bool Document::isReadOnly() const {
  return state_->readOnly;
}

QString Document::path() const {
  return isOpen() ? QString::fromStdString(state_->file->path().string()) : QString();
}

const Yard& Document::yard() const {
  return isOpen() ? state_->file->yard() : state_->none;
}

const Catalogue& Document::facts() const {
  return state_->facts.catalogue();
}

PlantLayers Document::plantLayers() const {
  return state_->facts.layers(yard());
}

void Document::setPersonalPlants(std::vector<OwnSpecies> plants, std::vector<Species> read) {
  state_->facts.setPersonal(std::move(plants), std::move(read));
  followFacts();
  if (!isOpen()) return;
  state_->step.reset();
  state_->analysis.request(yard(), facts());
  emit changed({});
}

void Document::followFacts() {
  if (state_->facts.follow(yard())) emit factsChanged();
}

IdSource& Document::ids() {
  return isOpen() ? state_->file->ids() : state_->noIds;
}

bool Document::tell(const QString& message) {
  emit editFailed(message);
  return false;
}

bool Document::commit(const ChangeSet& edit) {
  return commit(edit, Joined::No);
}

bool Document::commitStep(const ChangeSet& edit) {
  std::pair<std::string, std::vector<ObjectRef>> step{edit.label, {}};
  for (const Change& change : edit.changes) step.second.push_back(subjectOf(change));
  const std::int64_t before = lastEdit();
  if (!commit(edit, state_->step == step ? Joined::ToLast : Joined::No)) return false;
  // Back where the run began there is nothing left to join to.
  if (lastEdit() >= before && !edit.empty()) state_->step = std::move(step);
  return true;
}

bool Document::commit(const ChangeSet& edit, Joined joined) {
  if (edit.empty()) return true;
  if (!isOpen()) return tell(tr("There is no yard open to change. Open one or start a new one."));
  const Yard before = yard();
  try {
    const ChangeSet whole = carrying(state_->facts.layers(before), edit, ids());
    joined == Joined::ToLast ? state_->file->commitIntoLast(whole) : state_->file->commit(whole);
  } catch (const EditConflict&) {
    return tell(tr("“%1” no longer fits: what it changes is no longer as it was. Try it again on "
                   "the yard as it is shown now.")
                    .arg(QString::fromStdString(edit.label)));
  } catch (const StoreError& problem) {
    if (problem.reason() == StoreError::Reason::Changed) return commitAgain(edit);
    return tell(textOf(problem));
  } catch (const std::exception& problem) {
    return tell(textOf(problem));
  }
  emit saved(QDateTime::currentDateTime());
  emit committed();
  show(before, edit.label);
  return true;
}

// Another program has written: its yard first, then the edit on top of it where it still fits.
bool Document::commitAgain(const ChangeSet& edit) {
  takeInOutsideChanges();
  const Yard before = yard();
  try {
    state_->file->commit(carrying(state_->facts.layers(before), edit, ids()));
  } catch (const EditConflict&) {
    return tell(tr("Another program has changed what “%1” was about to change. The yard as it is "
                   "in the file is shown; make the edit again if it is still wanted.")
                    .arg(QString::fromStdString(edit.label)));
  } catch (const std::exception& problem) {
    return tell(textOf(problem));
  }
  emit saved(QDateTime::currentDateTime());
  emit committed();
  show(before, edit.label);
  return true;
}

// Tells everyone how the yard shown differs from `before`, and has it analysed.
void Document::show(const Yard& before, const std::string& label) {
  State& s = *state_;
  s.step.reset();
  followFacts();
  s.analysis.request(yard(), facts());
  emit changed(difference(before, yard(), label));
  std::vector<ObjectRef> left = s.selection;
  std::erase_if(left, [this](ObjectRef ref) { return !objectAt(yard(), ref); });
  select(std::move(left));
}

void Document::takeInOutsideChanges() {
  if (!isOpen()) return;
  const Yard before = yard();
  try {
    if (!state_->file->changedOutside()) return;
    state_->file->reload();
  } catch (const StoreError& problem) {
    tell(textOf(problem));
    return;
  }
  if (!state_->watcher.files().contains(path())) state_->watcher.addPath(path());
  show(before, tr("Changes by another program").toStdString());
  emit notice(tr("Another program has changed this yard. Its changes are shown."));
}

void Document::step(std::optional<std::string> (YardFile::*move)()) {
  if (!isOpen()) return;
  takeInOutsideChanges();
  const Yard before = yard();
  try {
    const auto label = ((*state_->file).*move)();
    if (!label) return;
    emit saved(QDateTime::currentDateTime());
    show(before, *label);
  } catch (const std::exception& problem) {
    tell(textOf(problem));
  }
}

void Document::undo() {
  step(&YardFile::undo);
}

void Document::redo() {
  step(&YardFile::redo);
}

std::int64_t Document::lastEdit() const {
  return isOpen() ? state_->file->lastEdit() : 0;
}

std::optional<QString> Document::undoLabel() const {
  const auto label = isOpen() ? state_->file->undoLabel() : std::nullopt;
  return label ? std::optional(QString::fromStdString(*label)) : std::nullopt;
}

std::optional<QString> Document::redoLabel() const {
  const auto label = isOpen() ? state_->file->redoLabel() : std::nullopt;
  return label ? std::optional(QString::fromStdString(*label)) : std::nullopt;
}

std::string Document::keepPicture(const QByteArray& bytes) {
  const QImage image = isOpen() ? decodePicture(bytes) : QImage();
  if (image.isNull()) return {};
  std::string hash = state_->file->putBlob(bytes.toStdString());
  state_->pictures.keep(QString::fromStdString(hash), image);
  return hash;
}

QImage Document::picture(const std::string& hash) const {
  if (!isOpen()) return {};
  try {
    return state_->pictures.get(QString::fromStdString(hash), [&] {
      return QByteArray::fromStdString(state_->file->blob(hash));
    });
  } catch (const StoreError&) {
    return {};  // the picture alone is lost; `verify` tells of it
  }
}

const std::vector<ObjectRef>& Document::selection() const {
  return state_->selection;
}

void Document::select(std::vector<ObjectRef> refs) {
  if (refs == state_->selection) return;
  state_->selection = std::move(refs);
  state_->step.reset();
  emit selectionChanged();
}

SharedSunMap Document::sunMap() const {
  return state_->analysis.sunMap();
}

bool Document::sunMapSettled() const {
  return state_->analysis.sunMapSuits(yard());
}

SharedFindings Document::findings() const {
  return state_->analysis.findings();
}

void Document::waitForAnalysis() {
  state_->analysis.wait();
}

}  // namespace tussock
