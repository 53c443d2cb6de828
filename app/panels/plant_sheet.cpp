// SPDX-License-Identifier: MIT
#include "app/panels/plant_sheet.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/botanical.h"
#include "app/look/theme.h"
#include "app/panels/flow_layout.h"
#include "app/panels/inline_field.h"
#include "app/panels/plant_columns.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr int kLabelWidth = 122;
constexpr PlantColumn kNameColumn{"botanical_name", QT_TRANSLATE_NOOP("PlantColumns", "Botanical"),
                                  true};

QLabel* label(const QString& words, const char* look, QWidget* parent) {
  auto* made = new QLabel(words, parent);
  made->setProperty("look", QLatin1String(look));
  made->setWordWrap(true);
  made->setTextFormat(Qt::PlainText);  // a plant's own text may look like markup
  return made;
}

}  // namespace

PlantSheet::PlantSheet(Document& document, PersonalCatalogue& personal, QWidget* parent)
    : QWidget(parent), document_(document), desk_(document, personal) {
  setObjectName(QStringLiteral("plant-sheet"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace4 + kSpace1, kSpace4, kSpace4, kSpace4);
  column->setSpacing(kSpace2);
  addHead(column);
  addActions(column);
  fieldsColumn_ = new QVBoxLayout;
  column->addLayout(fieldsColumn_);
  column->addStretch(1);
  connect(&document_, &Document::changed, this, &PlantSheet::refresh);
  connect(&document_, &Document::opened, this, [this] { emit left(); });
}

void PlantSheet::putAway() {
  desk_.lay({});
}

void PlantSheet::addHead(QVBoxLayout* column) {
  auto* back = new QPushButton(tr("‹ Back to the selection"), this);
  back->setObjectName(QStringLiteral("plant-back"));
  back->setProperty("look", QStringLiteral("link"));
  connect(back, &QPushButton::clicked, this, &PlantSheet::left);
  column->addWidget(back, 0, Qt::AlignLeft);
  botanical_ = label({}, "heading", this);
  botanical_->setObjectName(QStringLiteral("plant-botanical"));
  botanical_->setTextFormat(Qt::RichText);
  column->addWidget(botanical_);
  common_ = label({}, "quiet", this);
  column->addWidget(common_);
  scope_ = new QComboBox(this);
  scope_->setObjectName(QStringLiteral("plant-scope"));
  scope_->addItems(
      {tr("What I write holds in this yard"), tr("What I write holds in all my yards")});
  scope_->setAccessibleName(tr("Where what is written holds"));
  connect(scope_, &QComboBox::activated, this, [this](int scope) {
    desk_.setScope(OwnScope(scope));
    refresh();
  });
  column->addWidget(scope_);
  said_ = label({}, "error", this);
  said_->setObjectName(QStringLiteral("plant-said"));
  column->addWidget(said_);
}

void PlantSheet::addActions(QVBoxLayout* column) {
  auto* row = new QWidget(this);
  row->setLayout(new FlowLayout(kSpace2, kSpace2));
  const auto button = [&](const char* name, const QString& words, const QString& says) {
    auto* made = new QPushButton(words, row);
    made->setObjectName(QLatin1String(name));
    made->setToolTip(says);
    row->layout()->addWidget(made);
    return made;
  };
  keep_ =
      button("plant-keep", tr("Add this plant"), tr("Keeps it, once all that is needed is there"));
  keep_->setProperty("look", QStringLiteral("primary"));
  copy_ = button("plant-copy", tr("Duplicate"), tr("A new plant that begins with these values"));
  clear_ = button("plant-clear", tr("Take my values away"),
                  tr("The published values hold again; a plant that is only yours leaves"));
  connect(keep_, &QPushButton::clicked, this, &PlantSheet::keep);
  connect(copy_, &QPushButton::clicked, this, [this] { begin(desk_.copied()); });
  connect(clear_, &QPushButton::clicked, this, [this] { say(desk_.clear()); });
  column->addWidget(row);
}

void PlantSheet::showPlant(const std::string& name) {
  desk_.lay(name);
  rebuild();
}

void PlantSheet::startNew() {
  begin({});
}

void PlantSheet::begin(PlantCells cells) {
  desk_.begin(std::move(cells));
  rebuild();
  fields_.front().field->line()->setFocus();
}

void PlantSheet::rebuild() {
  if (fieldsBox_) {  // one of its own fields may have asked for this
    fieldsBox_->hide();
    fieldsBox_->deleteLater();
  }
  fields_.clear();
  fieldsBox_ = new QWidget(this);
  auto* column = new QVBoxLayout(fieldsBox_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kSpace3);
  if (desk_.writing()) column->addWidget(makeGroup({}, {kNameColumn}));
  for (const PlantColumnGroup& group : plantColumnGroups())
    column->addWidget(makeGroup(titleOf(group), {group.columns.begin(), group.columns.end()}));
  fieldsColumn_->addWidget(fieldsBox_);
  fieldsBox_->show();
  say({});
  refresh();
}

QWidget* PlantSheet::makeGroup(const QString& title, const std::vector<PlantColumn>& columns) {
  auto* box = new QWidget(fieldsBox_);
  auto* grid = new QGridLayout(box);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kSpace2);
  grid->setVerticalSpacing(3);
  grid->setColumnMinimumWidth(0, kLabelWidth);
  grid->setColumnStretch(1, 1);
  if (!title.isEmpty()) grid->addWidget(label(title, "strong", box), 0, 0, 1, 2);
  for (const PlantColumn& column : columns) addField(box, column);
  return box;
}

void PlantSheet::addField(QWidget* box, const PlantColumn& column) {
  const std::string name(column.column);
  auto* field =
      new InlineField([this, name] { return text(desk_.value(name).value); },
                      [this, name](const QString& typed) { return desk_.set(name, typed); }, box);
  const QString words = labelOf(column);
  field->line()->setObjectName(QStringLiteral("plant-") + text(name));
  field->line()->setAccessibleName(words);
  field->setEnabled(!document_.isReadOnly() || desk_.scope() == OwnScope::AllYards);
  if (column.needed && desk_.writing()) field->line()->setPlaceholderText(tr("needed"));
  auto* grid = static_cast<QGridLayout*>(box->layout());
  const int row = grid->rowCount();
  QLabel* named = label(words, "quiet", box);
  named->setBuddy(field->line());
  named->setContentsMargins(0, kSpace1 + 2, 0, 0);
  grid->addWidget(named, row, 0, Qt::AlignTop | Qt::AlignLeft);
  grid->addWidget(field, row, 1);
  QLabel* note = label({}, "source", box);
  note->setObjectName(QStringLiteral("plant-note-") + text(name));
  note->setToolTip(tr("The keys of sources are those of resources/plants-sources.md"));
  grid->addWidget(note, row + 1, 1);
  fields_.push_back({name, field, note});
}

void PlantSheet::refresh() {
  if (isEmpty()) return;
  refreshHead();
  for (const Field& one : fields_) {
    one.field->refresh();
    const QString note = noteFor(desk_.value(one.column));
    one.note->setText(note);
    one.note->setVisible(!note.isEmpty());
  }
}

void PlantSheet::refreshHead() {
  const Species* species = document_.facts().find(desk_.name());
  botanical_->setText(desk_.writing() ? tr("A new plant") : botanicalHtml(text(desk_.name())));
  common_->setText(desk_.writing() ? tr("A plant of your own. Lists are joined with semicolons, as "
                                        "in full;part.")
                   : species       ? text(document_.facts().nameApart(*species))
                                   : tr("no longer in the plant facts"));
  scope_->setCurrentIndex(int(desk_.scope()));
  keep_->setVisible(desk_.writing());
  copy_->setVisible(!desk_.writing());
  clear_->setVisible(desk_.hasOwn());
}

// What is published stays to be seen beside the user's own; general knowledge is not a source.
QString PlantSheet::noteFor(const PlantValue& value) const {
  if (desk_.writing()) return {};
  const QString source = value.sources.empty()       ? QString()
                         : value.sources == "memory" ? tr("general knowledge")
                                                     : tr("source: %1").arg(text(value.sources));
  if (value.origin == Origin::Published) return source;
  const QString own =
      value.origin == Origin::Yard ? tr("yours, in this yard") : tr("yours, in all your yards");
  if (value.published.empty()) return own;
  const QString published = tr("%1; published: %2").arg(own, text(value.published));
  return source.isEmpty() ? published : tr("%1 (%2)").arg(published, source);
}

void PlantSheet::keep() {
  const PlantDesk::Kept kept = desk_.keep();
  if (kept.done()) return rebuild();
  QStringList lines;
  for (const CatalogueError& error : kept.errors) {
    QString where = text(error.column);
    for (const Field& one : fields_)
      if (one.column == error.column) where = one.field->line()->accessibleName();
    lines << tr("%1: %2").arg(where, faultWords(error, error.column));
  }
  if (!kept.trouble.isEmpty()) lines << kept.trouble;
  say(lines.join(QLatin1Char('\n')));
}

void PlantSheet::say(const QString& words) {
  said_->setText(words);
  said_->setVisible(!words.isEmpty());
}

}  // namespace tussock
