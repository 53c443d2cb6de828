// SPDX-License-Identifier: MIT
#include "app/panels/plant_desk.h"

#include <algorithm>
#include <QCoreApplication>
#include <QRegularExpression>
#include <stdexcept>

#include "app/panels/plant_columns.h"
#include "app/panels/species_marks.h"
#include "core/catalog/entry_checks.h"
#include "core/catalog/fact_words.h"
#include "core/catalog/season_weeks.h"
#include "core/catalog/usual_flowers.h"

namespace tussock {

namespace {

QString deskTr(const char* source) {
  return QCoreApplication::translate("PlantDesk", source);
}

QString notKept() {
  return deskTr("The yard could not take it; the bar above says why.");
}

}  // namespace

QString PlantDesk::wordsOf(const std::vector<CatalogueError>& errors,
                           const std::string& column) const {
  for (const CatalogueError& error : errors)
    if (error.column == column) return faultWords(error, column);
  return errors.empty() ? QString() : faultWords(errors.front(), column);
}

// "bloom_start_month (6)" as "bloom_start_month (June)": as the field of that name has it.
QString PlantDesk::asShown(QString words) const {
  static const QRegularExpression figure(
      QStringLiteral("([a-z]+(?:_[a-z]+)+) \\(([0-9.]+)(?: cm)?\\)"));
  for (auto match = figure.match(words); match.hasMatch();) {
    const QString value = shown(match.captured(1).toStdString(), match.captured(2).toStdString());
    words.replace(match.capturedStart(2), match.capturedEnd() - 1 - match.capturedStart(2), value);
    match = figure.match(words, match.capturedStart(2) + value.size());
  }
  return words;
}

QString PlantDesk::faultWords(const CatalogueError& error, const std::string& column) const {
  if (error.column != column) {
    CatalogueError told = error;
    told.value = shown(error.column, error.value).toStdString();
    return withLabels(asShown(text(told.text())));
  }
  const PlantColumn* known = plantColumn(column);
  if (error.value.empty() && (!known || known->needed)) return deskTr("This is needed.");
  return deskTr("Write %1.").arg(withLabels(asShown(text(error.expected))));
}

void PlantDesk::lay(const std::string& name) {
  name_ = name;
  draft_.reset();
}

void PlantDesk::begin(PlantCells cells) {
  name_.clear();
  draft_ = std::move(cells);
}

PlantCells PlantDesk::copied() const {
  return copiedCells(document_.plantLayers(), name_);
}

QString PlantDesk::shown(const std::string& column, const std::string& value) const {
  return text(shownFact(column, moved(column, value), document_.yard().settings.units));
}

bool PlantDesk::isMoved(const std::string& column) const {
  return tellsTime(column) && document_.facts().hemisphere() == Hemisphere::South;
}

// From the table to the yard, and back.
std::string PlantDesk::moved(const std::string& column, const std::string& value) const {
  return isMoved(column) ? halfAYearOn(column, value) : value;
}

PlantValue PlantDesk::value(const std::string& column) const {
  PlantValue value{column, {}, Origin::Published, {}, {}};
  if (draft_) {
    const auto at = draft_->find(column);
    if (at != draft_->end()) value.value = at->second;
    value.origin = scope_ == OwnScope::ThisYard ? Origin::Yard : Origin::Personal;
    return value;
  }
  for (const PlantValue& one : valuesOf(document_.plantLayers(), name_))
    if (one.column == column) return one;
  return value;
}

QString PlantDesk::impliedBy(const std::string& column) const {
  const Species* species = draft_ ? nullptr : document_.facts().find(name_);
  if (species)
    if (const std::string usual = standInWords(*species, column); !usual.empty())
      return deskTr("drawn %1").arg(text(usual));
  const auto weeks = species ? species->bloomWeeks() : std::nullopt;
  const bool first = column == "bloom_start_week";
  if (!weeks || (!first && column != "bloom_end_week")) return {};
  const std::string there = std::to_string((first ? weeks->first : weeks->last) + 1);
  const QString week = text(shownFact(column, there, document_.yard().settings.units));
  return first ? deskTr("%1: the first of the month").arg(week)
               : deskTr("%1: the last of the month").arg(week);
}

QString PlantDesk::familyNote() const {
  const std::string name = draft_ ? value("botanical_name").value : name_;
  const std::string genus(genusOf(name));
  if (genus.empty() || value("family").value.empty() || !hasOwnFamily()) return {};
  if (isGenusOf(document_.plantLayers().published, genus)) return {};
  return deskTr("not checked: the genus %1 is not known here").arg(text(genus));
}

bool PlantDesk::hasOwnFamily() const {
  return draft_ || value("family").origin != Origin::Published;
}

QString PlantDesk::set(const std::string& column, const QString& typed) {
  const auto [read, trouble] =
      readFact(column, typed.trimmed().toStdString(), document_.yard().settings.units);
  if (!trouble.empty()) return text(trouble);
  const std::string value = moved(column, read);
  if (draft_) {
    draft_->insert_or_assign(column, value);
    return {};
  }
  return scope_ == OwnScope::ThisYard ? setInYard(column, value) : setPersonal(column, value);
}

QString PlantDesk::setInYard(const std::string& column, const std::string& value) {
  const PlantEdit made =
      setOwnValue(document_.plantLayers(), name_, column, value, document_.ids());
  if (!made.errors.empty()) return wordsOf(made.errors, column);
  if (made.edit.empty()) return {};
  return document_.commit(made.edit) ? QString() : notKept();
}

// The yard's own value goes before that of all yards; the one it carries of a plant must follow.
bool PlantDesk::isCarried(const std::string& column) const {
  const OwnSpecies* own = findOwn(document_.yard(), name_);
  return own && !document_.isReadOnly() &&
         std::any_of(own->facts.begin(), own->facts.end(),
                     [&](const OwnFact& fact) { return fact.column == column; });
}

QString PlantDesk::setPersonal(const std::string& column, const std::string& value) {
  const PersonalPlantEdit made = setPersonalValue(document_.plantLayers(), name_, column, value);
  if (!made.errors.empty()) return wordsOf(made.errors, column);
  const bool carried = isCarried(column);
  if (carried) {
    const PlantEdit inYard =
        setOwnValue(document_.plantLayers(), name_, column, value, document_.ids());
    if (!inYard.errors.empty()) return wordsOf(inYard.errors, column);
  }
  if (QString trouble =
          makePersonal(made.edit, deskTr("Change %1 in all your yards").arg(text(name_)));
      !trouble.isEmpty() || !carried)
    return trouble;
  if (QString trouble = setInYard(column, value); !trouble.isEmpty()) return trouble;
  if (made.edit.before != made.edit.after) personal_.joinYardEdit();
  return {};
}

QString PlantDesk::makePersonal(const PersonalEdit& edit, const QString& label) {
  try {
    personal_.make(edit, label);
    return {};
  } catch (const std::runtime_error& problem) {
    return QString::fromUtf8(problem.what());
  }
}

PlantDesk::Kept PlantDesk::keepInYard() {
  PlantEdit made = addOwnPlant(document_.plantLayers(), *draft_, document_.ids());
  if (!made.errors.empty()) return {std::move(made.errors), {}};
  return {{}, document_.commit(made.edit) ? QString() : notKept()};
}

PlantDesk::Kept PlantDesk::keepPersonal() {
  PersonalPlantEdit made = addPersonalPlant(document_.plantLayers(), *draft_);
  if (!made.errors.empty()) return {std::move(made.errors), {}};
  return {{},
          makePersonal(made.edit,
                       deskTr("Add %1 in all your yards").arg(text(draft_->at("botanical_name"))))};
}

PlantDesk::Kept PlantDesk::keep() {
  if (!draft_) return {};
  Kept kept = scope_ == OwnScope::ThisYard ? keepInYard() : keepPersonal();
  if (kept.done()) lay(draft_->at("botanical_name"));
  return kept;
}

bool PlantDesk::hasOwn() const {
  if (draft_) return false;
  return scope_ == OwnScope::ThisYard ? findOwn(document_.yard(), name_) != nullptr
                                      : findOwn(personal_.plants(), name_) != nullptr;
}

// What the yard carries of them goes too, unless the plant would be unknown without it.
QString PlantDesk::clearPersonal() {
  const OwnSpecies* personal = findOwn(personal_.plants(), name_);
  const OwnSpecies* carried = findOwn(document_.yard(), name_);
  const bool both = personal && carried && carried->facts == personal->facts &&
                    document_.plantLayers().published.find(name_) && !document_.isReadOnly();
  if (QString trouble =
          makePersonal(removePersonalPlant(personal_.plants(), name_),
                       deskTr("Take your values of %1 away in all your yards").arg(text(name_)));
      !trouble.isEmpty() || !both)
    return trouble;
  if (!document_.commit(removeOwnPlant(document_.yard(), name_))) return notKept();
  personal_.joinYardEdit();
  return {};
}

QString PlantDesk::clear() {
  if (scope_ == OwnScope::AllYards) return clearPersonal();
  const ChangeSet edit = removeOwnPlant(document_.yard(), name_);
  return edit.empty() || document_.commit(edit) ? QString() : notKept();
}

}  // namespace tussock
