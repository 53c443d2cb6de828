// SPDX-License-Identifier: MIT
#include "app/panels/plant_list_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>
#include <set>

#include "app/look/botanical.h"
#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/panels/buttons.h"
#include "app/panels/field_text.h"
#include "app/panels/glyph_mark.h"
#include "app/panels/inline_field.h"
#include "app/panels/plant_list_edit.h"
#include "app/panels/species_completer.h"

namespace tussock {

namespace {

QString shareOrOpen(double share) {
  return share > 0.0 ? shareText(share) : QString();
}

}  // namespace

PlantListView::PlantListView(Document& document, Id<Bed> bed, QWidget* parent)
    : QWidget(parent),
      document_(document),
      bed_(bed),
      rows_(new QVBoxLayout(this)),
      add_(new QLineEdit(this)),
      said_(new QLabel(this)),
      keep_(linkButton(
          QStringLiteral("plant-list-planted"), tr("List what is planted"),
          tr("The species that stand in the bed become its plant list, each with the share "
             "that it has of the plants"),
          this)) {
  setObjectName(QStringLiteral("plant-list"));
  rows_->setContentsMargins(0, 0, 0, 0);
  rows_->setSpacing(kSpace1);
  said_->setObjectName(QStringLiteral("plant-list-said"));
  said_->setProperty("look", QStringLiteral("note"));
  said_->setWordWrap(true);
  add_->setObjectName(QStringLiteral("plant-list-add"));
  add_->setPlaceholderText(tr("Add a species by name"));
  add_->setAccessibleName(add_->placeholderText());
  names_ = new SpeciesCompleter(document_, *add_);
  // Queued: the line is given what was chosen only afterwards.
  connect(names_, qOverload<const QString&>(&QCompleter::activated), this, &PlantListView::addTyped,
          Qt::QueuedConnection);
  connect(add_, &QLineEdit::returnPressed, this, &PlantListView::addTyped);
  rows_->addWidget(add_);
  rows_->addWidget(said_);
  rows_->addWidget(keep_, 0, Qt::AlignLeft);
  connect(keep_, &QPushButton::clicked, this, [this] { listPlanted(document_, bed_); });
  refresh();
}

std::vector<ListedSpecies> PlantListView::list() const {
  const Bed* bed = document_.yard().beds.find(bed_);
  return bed ? bed->plantList : std::vector<ListedSpecies>();
}

void PlantListView::say(const QString& words) {
  said_->setText(words);
  said_->setVisible(!words.isEmpty());
}

// A bed may be planted without a list of its own: from one proposed, or by hand.
void PlantListView::sayWhatIsSo(const std::vector<ListedSpecies>& now) {
  std::set<std::string> planted;
  for (const Drift* drift : driftsIn(document_.yard(), bed_))
    if (!drift->existing()) planted.insert(drift->species);
  double sum = 0.0;
  for (const ListedSpecies& entry : now) sum += entry.share;
  keep_->setVisible(now.empty() && !planted.empty() && !document_.isReadOnly());
  if (now.empty())
    return say(planted.empty()
                   ? tr("No species chosen yet. Filling then takes a list from the plant facts "
                        "that suits this bed.")
                   : tr("The bed has no list of its own; %1 species are planted. List them to "
                        "choose among them and to fill from them again.")
                         .arg(planted.size()));
  say(sum > 1.0005 ? tr("The shares come to %1, more than the whole. Lower some of them.")
                         .arg(shareText(sum))
                   : QString());
}

void PlantListView::refresh() {
  const std::vector<ListedSpecies> now = list();
  sayWhatIsSo(now);
  add_->setEnabled(!document_.isReadOnly());
  if (content_ && now == shown_) return;
  shown_ = now;
  if (content_) {  // one of its own fields may have asked for this
    content_->hide();
    content_->deleteLater();
  }
  content_ = new QWidget(this);
  auto* column = new QVBoxLayout(content_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  for (std::size_t i = 0; i < now.size(); ++i) addRow(now[i], i);
  // Under the field that adds, which stays in sight above a long list.
  rows_->insertWidget(rows_->indexOf(keep_), content_);
  content_->show();
}

void PlantListView::addRow(const ListedSpecies& entry, std::size_t index) {
  auto* row = new QWidget(content_);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(kSpace2);
  const QString name = QString::fromStdString(entry.species);
  auto* glyph = new GlyphMark(document_, entry.species, row);
  glyph->setObjectName(QStringLiteral("plant-list-glyph"));
  line->addWidget(glyph);
  auto* label = new QLabel(botanicalHtml(name), row);
  label->setTextFormat(Qt::RichText);
  label->setObjectName(QStringLiteral("plant-list-name"));
  label->setWordWrap(true);  // a long name takes a second line rather than lose its end
  line->addWidget(label, 1);
  auto* share = new InlineField(
      [this, index] {
        const auto now = list();
        return index < now.size() ? shareOrOpen(now[index].share) : QString();
      },
      [this, index](const QString& typed) { return setShare(index, typed); }, row);
  share->setFixedWidth(72);
  share->line()->setObjectName(QStringLiteral("plant-list-share"));
  share->line()->setPlaceholderText(tr("open"));
  share->line()->setAccessibleName(tr("Share of %1").arg(name));
  share->line()->setToolTip(tr("Share of the bed's plants, such as 15 %; open leaves it free"));
  line->addWidget(share);
  line->addWidget(matrixButton(entry, index, row));
  auto* out = new QPushButton(row);
  out->setObjectName(QStringLiteral("plant-list-remove"));
  out->setProperty("look", QStringLiteral("quiet"));
  out->setIcon(icon(QStringLiteral("close")));
  out->setFixedSize(28, 28);
  out->setStyleSheet(QStringLiteral("padding: 0"));
  out->setAccessibleName(tr("Take %1 off the list").arg(name));
  out->setToolTip(out->accessibleName());
  connect(out, &QPushButton::clicked, this, [this, index] { remove(index); });
  line->addWidget(out);
  row->setEnabled(!document_.isReadOnly());
  content_->layout()->addWidget(row);
}

QPushButton* PlantListView::matrixButton(const ListedSpecies& entry, std::size_t index,
                                         QWidget* row) {
  auto* matrix = new QPushButton(row);
  matrix->setObjectName(QStringLiteral("plant-list-matrix"));
  matrix->setProperty("look", QStringLiteral("quiet"));
  matrix->setIcon(icon(QStringLiteral("matrix")));
  matrix->setFixedSize(28, 28);
  matrix->setStyleSheet(QStringLiteral("padding: 0"));
  matrix->setCheckable(true);
  matrix->setChecked(entry.matrix);
  matrix->setAccessibleName(tr("%1 as a matrix plant").arg(QString::fromStdString(entry.species)));
  matrix->setToolTip(
      tr("Matrix plant: fills what the drifts of the others leave, two fifths of the "
         "bed unless a share is given"));
  connect(matrix, &QPushButton::clicked, this,
          [this, index](bool checked) { setMatrix(index, checked); });
  return matrix;
}

void PlantListView::addTyped() {
  const QString typed = add_->text().trimmed();
  if (typed.isEmpty()) return;
  if (const std::string offered = names_->speciesOf(typed); !offered.empty()) return add(offered);
  const auto named = document_.facts().named(typed.toStdString());
  if (named.size() == 1) return add(named.front()->botanicalName);
  refuse(typed, named);
}

// As on the command line, what may be meant is told and never guessed; here it can be chosen.
void PlantListView::refuse(const QString& typed, const std::vector<const Species*>& named) {
  const auto found = named.empty() ? document_.facts().search(typed.toStdString()) : named;
  if (!named.empty())
    say(tr("%1 may mean %n species. Choose one of the names offered.", "", int(named.size()))
            .arg(typed));
  else if (!found.empty())
    say(tr("No species goes by the name %1 alone. Choose one of the names offered.").arg(typed));
  else
    return say(tr("The plant facts have no %1. Write its botanical name.").arg(typed));
  // Later: the choices are put away by the key that brought this up.
  QTimer::singleShot(0, this, [this, typed] {
    const Catalogue& facts = document_.facts();
    const auto meant = facts.named(typed.toStdString());
    if (add_->text().trimmed() == typed && add_->isVisible())
      names_->offer(meant.empty() ? facts.search(typed.toStdString()) : meant);
  });
}

void PlantListView::add(const std::string& species) {
  add_->clear();
  addToPlantList(document_, bed_, species);
}

void PlantListView::remove(std::size_t index) {
  auto now = list();
  if (index >= now.size()) return;
  now.erase(now.begin() + std::ptrdiff_t(index));
  writePlantList(document_, bed_, std::move(now), tr("Take a species off the plant list"));
}

void PlantListView::setMatrix(std::size_t index, bool matrix) {
  auto now = list();
  if (index >= now.size() || now[index].matrix == matrix) return;
  now[index].matrix = matrix;
  writePlantList(document_, bed_, std::move(now),
                 matrix ? tr("Make a species the matrix plant") : tr("Plant a species in drifts"));
}

QString PlantListView::setShare(std::size_t index, const QString& typed) {
  auto now = list();
  if (index >= now.size()) return {};
  double share = 0.0;
  if (!typed.trimmed().isEmpty())
    if (QString wrong = readShare(typed, share); !wrong.isEmpty()) return wrong;
  if (now[index].share == share) return {};
  now[index].share = share;
  writePlantList(document_, bed_, std::move(now), tr("Change a share"));
  return {};
}

}  // namespace tussock
