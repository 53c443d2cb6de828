// SPDX-License-Identifier: MIT
#include "app/document/personal_catalogue.h"

#include <stdexcept>

#include "app/document/personal_plants.h"

namespace tussock {

PersonalCatalogue::PersonalCatalogue(Document& document, QObject* parent)
    : QObject(parent), document_(document) {
  connect(&document_, &Document::opened, this, &PersonalCatalogue::takeYard);
  connect(&document_, &Document::committed, this, [this] {
    undone_.clear();
    emit stepsChanged();
  });
}

// In another yard they come after all that was done to it before.
void PersonalCatalogue::takeYard() {
  undone_.clear();
  for (Step& step : done_) {
    step.lastEdit = document_.lastEdit();
    step.withYardEdit = false;
  }
  emit stepsChanged();
}

std::vector<CatalogueError> PersonalCatalogue::load() {
  OwnPlantsReading read = readPersonalPlants(document_.plantLayers().published);
  plants_ = std::move(read.plants);
  document_.setPersonalPlants(plants_, std::move(read.species));
  return read.errors;
}

void PersonalCatalogue::make(const PersonalEdit& edit, const QString& label) {
  change(withEdit(plants_, edit), label);
}

QString PersonalCatalogue::take(const std::vector<OwnSpecies>& more, const QString& label) {
  const bool replaces = !rowsReplacedBy(more, document_.plantLayers().published).empty();
  const QString kept = replaces ? keepPersonalPlants() : QString();
  change(withTaken(plants_, more), label, more);
  return kept;
}

void PersonalCatalogue::change(std::vector<OwnSpecies> after, const QString& label,
                               const std::vector<OwnSpecies>& taken) {
  if (after == plants_) return;
  Step step{plants_, {}, label, document_.lastEdit(), false};
  write(after, taken);
  step.after = plants_;
  done_.push_back(std::move(step));
  undone_.clear();
  emit stepsChanged();
}

void PersonalCatalogue::undo() {
  if (done_.empty()) return;
  write(done_.back().before);
  undone_.push_back(std::move(done_.back()));
  done_.pop_back();
  emit stepsChanged();
}

void PersonalCatalogue::redo() {
  if (undone_.empty()) return;
  write(undone_.back().after);
  done_.push_back(std::move(undone_.back()));
  undone_.pop_back();
  emit stepsChanged();
}

void PersonalCatalogue::joinYardEdit() {
  if (done_.empty()) return;
  done_.back().lastEdit = document_.lastEdit();
  done_.back().withYardEdit = true;
  emit stepsChanged();
}

void PersonalCatalogue::write(const std::vector<OwnSpecies>& plants,
                              const std::vector<OwnSpecies>& taken) {
  const Catalogue& published = document_.plantLayers().published;
  if (readPersonalPlants(published).plants != plants_) {
    done_.clear();
    undone_.clear();
    load();
    emit stepsChanged();
    throw std::runtime_error(tr("Your plants were changed elsewhere and are shown as they are now. "
                                "Make the change again "
                                "if it is still wanted.")
                                 .toStdString());
  }
  savePersonalPlants(plants, published, taken);
  load();  // as the file has it: what is published already is not kept
}

}  // namespace tussock
