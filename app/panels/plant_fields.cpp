// SPDX-License-Identifier: MIT
#include "app/panels/plant_fields.h"

#include <QCompleter>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/inline_field.h"
#include "app/panels/inline_prose.h"
#include "app/panels/plain_label.h"
#include "app/panels/plant_columns.h"
#include "app/panels/species_marks.h"
#include "core/catalog/fact_choices.h"
#include "core/catalog/fact_words.h"
#include "core/catalog/source_names.h"
#include "core/catalog/tolerances.h"

namespace tussock {

namespace {

constexpr int kFactLabelWidth = 110;
constexpr PlantColumn kNameColumn{"botanical_name", QT_TRANSLATE_NOOP("PlantColumns", "Botanical"),
                                  true};

// How a published value goes with its source, where it was not just read there.
QString toleranceTip(const PlantValue& value) {
  const std::string_view tolerance = toleranceOf(value.column);
  if (tolerance.empty() || value.sources.empty() || value.sources == "memory") return {};
  return PlantFields::tr("Not always the very figure read there: %1").arg(text(tolerance));
}

// What the keys stand for, a line each.
QString sourceTip(const PlantValue& value) {
  const bool own = !value.ownSources.empty();
  const std::string& keys = own ? value.ownSources : value.sources;
  if (keys == "memory") return PlantFields::tr("Not read in a source: general knowledge");
  QStringList lines;
  for (const QString& key : text(keys).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    const auto known = shippedSourceNames().find(key.toStdString());
    if (known != shippedSourceNames().end())
      lines << QStringLiteral("%1: %2").arg(key, text(known->second));
  }
  if (const QString tolerance = toleranceTip(value); !own && !tolerance.isEmpty())
    lines << tolerance;
  return plainTip(lines.join(QLatin1Char('\n')));
}

// The first source by its title; the tip has them all.
QString sourceWords(const std::string& keys) {
  if (keys == "memory") return PlantFields::tr("general knowledge");
  const QStringList all = text(keys).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  if (all.isEmpty()) return {};
  const auto known = shippedSourceNames().find(all.front().toStdString());
  const QString first =
      known == shippedSourceNames().end() ? all.front() : text(shortTitle(known->second));
  return all.size() == 1
             ? PlantFields::tr("source: %1").arg(first)
             : PlantFields::tr("sources: %1 and %2 more").arg(first).arg(all.size() - 1);
}

// Words that may stand there come up as one types, where only one may; else they are told.
void offerChoices(QLineEdit& line, const std::string& column) {
  QStringList choices;
  for (const std::string& choice : factChoices(column)) choices << text(choice);
  if (choices.isEmpty()) return;
  line.setToolTip(choices.join(QStringLiteral(", ")));
  if (holdsSeveral(column)) return;
  auto* completer = new QCompleter(choices, &line);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  completer->setFilterMode(Qt::MatchContains);
  line.setCompleter(completer);
}

}  // namespace

PlantFields::PlantFields(PlantDesk& desk, bool editable, QWidget* parent)
    : QWidget(parent), desk_(desk), editable_(editable) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kSpace3);
  if (desk_.writing()) column->addWidget(makeGroup({}, {kNameColumn}));
  for (const PlantColumnGroup& group : plantColumnGroups())
    column->addWidget(makeGroup(titleOf(group), {group.columns.begin(), group.columns.end()}));
}

void PlantFields::startTyping() {
  fields_.front().field->setFocus();
}

void PlantFields::forgetRefused() {
  for (const Field& one : fields_) one.field->forgetRefused();
}

QWidget* PlantFields::makeGroup(const QString& title, const std::vector<PlantColumn>& columns) {
  auto* box = new QWidget(this);
  auto* grid = new QGridLayout(box);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kSpace2);
  grid->setVerticalSpacing(3);
  grid->setColumnMinimumWidth(0, kFactLabelWidth);
  grid->setColumnStretch(1, 1);
  if (!title.isEmpty()) grid->addWidget(plainLabel(title, "strong", box), 0, 0, 1, 2);
  for (const PlantColumn& column : columns) addField(box, column);
  return box;
}

void PlantFields::addField(QWidget* box, const PlantColumn& column) {
  const std::string name(column.column);
  const QString words = labelOf(column);
  InlineEdit* field = makeField(box, column);
  QWidget* editor = field->focusProxy();
  editor->setObjectName(QStringLiteral("plant-") + text(name));
  editor->setAccessibleName(words);
  field->setEnabled(editable_);
  auto* grid = static_cast<QGridLayout*>(box->layout());
  const int row = grid->rowCount();
  QLabel* named = plainLabel(words, "quiet", box);
  named->setBuddy(editor);
  named->setContentsMargins(0, kSpace1 + 2, 0, 0);
  grid->addWidget(named, row, 0, Qt::AlignTop | Qt::AlignLeft);
  grid->addWidget(field, row, 1);
  QLabel* note = plainLabel({}, "source", box);
  note->setObjectName(QStringLiteral("plant-note-") + text(name));
  grid->addWidget(note, row + 1, 1);
  fields_.push_back({name, field, note});
}

InlineEdit* PlantFields::makeField(QWidget* box, const PlantColumn& column) {
  const std::string name(column.column);
  auto read = [this, name] { return desk_.shown(name, desk_.value(name).value); };
  auto write = [this, name](const QString& typed) { return desk_.set(name, typed); };
  if (column.prose) return new InlineProse(std::move(read), std::move(write), box);
  auto* field = new InlineField(std::move(read), std::move(write), box);
  if (column.needed && desk_.writing()) field->line()->setPlaceholderText(tr("needed"));
  offerChoices(*field->line(), name);
  return field;
}

void PlantFields::refresh() {
  for (const Field& one : fields_) {
    one.field->refresh();
    const PlantValue value = desk_.value(one.column);
    QString note = noteFor(value);
    if (one.column == "regulated") note = withRuleCaution(note);
    if (one.column == "family") note = withFamilyNote(note);
    one.note->setText(note);
    one.note->setToolTip(sourceTip(value));
    one.note->setVisible(!note.isEmpty());
  }
}

// What is recorded of rules is a first filter, whatever it says or does not say.
QString PlantFields::withRuleCaution(const QString& note) const {
  const QString caution =
      tr("A first filter; blank does not mean allowed. Ask the department of agriculture of your "
         "state.");
  return note.isEmpty() ? caution : note + QStringLiteral(". ") + caution;
}

// Whether a plant is in the family given can be told only of genera that are published.
QString PlantFields::withFamilyNote(const QString& note) const {
  const QString unchecked = desk_.familyNote();
  if (unchecked.isEmpty()) return note;
  return note.isEmpty() ? unchecked : tr("%1; %2").arg(note, unchecked);
}

// South of the equator the sources tell of another month than what is shown.
QString PlantFields::sourceFor(const PlantValue& value) const {
  if (value.sources.empty()) return {};
  const QString read = sourceWords(value.sources);
  const bool chosen = value.sources != "memory" && !toleranceOf(value.column).empty();
  const QString source = chosen ? tr("%1, within a tolerance").arg(read) : read;
  return desk_.isMoved(value.column) ? tr("%1, half a year on").arg(source) : source;
}

// Where it is from; general knowledge is not a source.
QString PlantFields::noteFor(const PlantValue& value) const {
  if (desk_.writing()) return {};
  if (value.value.empty()) return desk_.impliedBy(value.column);
  if (value.origin == Origin::Published) return sourceFor(value);
  if (value.heldToHeight) return withPublished(tr("held to your height"), value);
  const QString own =
      value.origin == Origin::Yard ? tr("yours, in this yard") : tr("yours, in all your yards");
  return withPublished(
      value.ownSources.empty() ? own : tr("%1 (%2)").arg(own, sourceWords(value.ownSources)),
      value);
}

// The published one stays to be seen beside the user's own.
QString PlantFields::withPublished(const QString& own, const PlantValue& value) const {
  if (value.published.empty()) return own;
  const QString published =
      tr("%1; published: %2").arg(own, desk_.shown(value.column, value.published));
  const QString source = sourceFor(value);
  return source.isEmpty() ? published : tr("%1 (%2)").arg(published, source);
}

}  // namespace tussock
