// SPDX-License-Identifier: MIT
#include "app/panels/plant_sheet.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/botanical.h"
#include "app/look/glyphs.h"
#include "app/look/theme.h"
#include "app/panels/flow_layout.h"
#include "app/panels/plain_label.h"
#include "app/panels/plant_columns.h"
#include "app/panels/plant_fields.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr int kSheetGlyphRadius = 23;

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
  connect(&document_, &Document::changed, this, &PlantSheet::followEdit);
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
  column->addLayout(makeNames());
}

QComboBox* PlantSheet::makeScope(QWidget* parent) {
  scope_ = new QComboBox(parent);
  scope_->setObjectName(QStringLiteral("plant-scope"));
  scope_->addItems({tr("Written for this yard"), tr("Written for all my yards")});
  scope_->setAccessibleName(tr("Where what is written holds"));
  scope_->setToolTip(
      tr("What I write into the fields holds in this yard alone, or in all my yards"));
  connect(scope_, &QComboBox::activated, this, [this](int scope) {
    desk_.setScope(OwnScope(scope));
    document_.isReadOnly() ? rebuild() : refresh();  // what can be written may be another thing now
  });
  return scope_;
}

QLayout* PlantSheet::makeNames() {
  picture_ = new QLabel(this);
  picture_->setObjectName(QStringLiteral("plant-picture"));
  botanical_ = plainLabel({}, "heading", this);
  botanical_->setObjectName(QStringLiteral("plant-botanical"));
  botanical_->setTextFormat(Qt::RichText);
  common_ = plainLabel({}, "quiet", this);
  auto* names = new QVBoxLayout;
  names->setSpacing(2);
  names->addWidget(botanical_);
  names->addWidget(common_);
  names->addStretch(1);
  auto* row = new QHBoxLayout;
  row->setSpacing(kSpace3);
  row->addWidget(picture_, 0, Qt::AlignTop);
  row->addLayout(names, 1);
  return row;
}

void PlantSheet::addActions(QVBoxLayout* column) {
  auto* row = new QWidget(this);
  row->setLayout(new FlowLayout(kSpace2, kSpace2));
  row->layout()->addWidget(makeScope(row));
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
  said_ = plainLabel({}, "error", this);
  said_->setObjectName(QStringLiteral("plant-said"));
  column->addWidget(said_);
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
  fields_->startTyping();
}

void PlantSheet::rebuild() {
  if (fields_) {  // one of its own fields may have asked for this
    fields_->hide();
    fields_->deleteLater();
  }
  const bool editable = !document_.isReadOnly() || desk_.scope() == OwnScope::AllYards;
  fields_ = new PlantFields(desk_, editable, this);
  fieldsColumn_->addWidget(fields_);
  fields_->show();
  say({});
  refresh();
}

void PlantSheet::refresh() {
  if (isEmpty()) return;
  refreshHead();
  fields_->refresh();
}

// What can be done again has been undone: whoever does that is done with a refused value too.
void PlantSheet::followEdit() {
  if (!isEmpty() && document_.redoLabel()) fields_->forgetRefused();
  refresh();
}

void PlantSheet::refreshHead() {
  const Species* species = document_.facts().find(desk_.name());
  botanical_->setText(desk_.writing() ? tr("A new plant") : botanicalHtml(text(desk_.name())));
  common_->setText(desk_.writing() ? tr("A plant of your own. Write sizes with their unit, as in "
                                        "18 in or 45 cm, and commas between several words.")
                   : species       ? text(document_.facts().nameApart(*species))
                                   : tr("no longer in the plant facts"));
  showPicture(desk_.writing() ? nullptr : species);
  scope_->setCurrentIndex(int(desk_.scope()));
  keep_->setVisible(desk_.writing());
  copy_->setVisible(!desk_.writing());
  clear_->setVisible(desk_.hasOwn());
}

void PlantSheet::showPicture(const Species* species) {
  picture_->setVisible(species != nullptr);
  if (species)
    picture_->setPixmap(glyphSprite(glyphLook(*species, std::nullopt, currentTheme().dark),
                                    kSheetGlyphRadius, devicePixelRatioF()));
}

void PlantSheet::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange && !isEmpty()) refreshHead();
  QWidget::changeEvent(event);
}

void PlantSheet::keep() {
  const PlantDesk::Kept kept = desk_.keep();
  if (kept.done()) return rebuild();
  QStringList lines;
  for (const CatalogueError& error : kept.errors) {
    const PlantColumn* column = plantColumn(error.column);
    const QString where = column ? labelOf(*column) : tr("Botanical");
    lines << tr("%1: %2").arg(where, desk_.faultWords(error, error.column));
  }
  if (!kept.trouble.isEmpty()) lines << kept.trouble;
  say(lines.join(QLatin1Char('\n')));
}

void PlantSheet::say(const QString& words) {
  said_->setText(words);
  said_->setVisible(!words.isEmpty());
}

}  // namespace tussock
