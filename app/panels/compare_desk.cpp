// SPDX-License-Identifier: MIT
#include "app/panels/compare_desk.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShowEvent>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/arrangement_picture.h"
#include "app/panels/arrangements_view.h"
#include "app/panels/desk_body.h"
#include "app/panels/field_text.h"
#include "app/panels/score_pair_view.h"
#include "app/panels/scrolled.h"
#include "app/panels/selection.h"
#include "app/panels/species_marks.h"
#include "core/planting/arrangements.h"

namespace tussock {

namespace {

constexpr int kScores = 400;  // pixels

QLabel* note(const QString& name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(name);
  label->setProperty("look", QStringLiteral("note"));
  label->setTextFormat(Qt::PlainText);
  return label;
}

QString words(const ArrangementFacts& facts) {
  return CompareDesk::tr(
             "%1 plants · %2 drifts · %3 species · %4 % of the ground · score %5 at %6 · "
             "findings %7")
      .arg(facts.plants)
      .arg(facts.drifts)
      .arg(facts.species)
      .arg(qRound(100.0 * facts.taken))
      .arg(shareText(facts.score.total), mannerText(facts.wildness))
      .arg(facts.findings);
}

// What is asked of drift sizes and of repeating depends on it.
QString mannerTip(bool kept) {
  return kept ? CompareDesk::tr(
                    "Scored where the slider from formal to natural stood when this "
                    "was kept, wherever it stands now")
              : CompareDesk::tr("Scored where the slider from formal to natural stands now");
}

}  // namespace

CompareDesk::CompareDesk(Document& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("compare-desk"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace4, 0, kSpace4, kSpace2);
  column->setSpacing(kSpace2);
  addHead();
  empty_ = note(QStringLiteral("compare-empty"), this);
  empty_->setText(tr("Select a bed to compare its arrangements."));
  empty_->setAlignment(Qt::AlignCenter);
  makeBody();
  auto* desk = new DeskBody(this);
  auto* place = new QVBoxLayout(desk);
  place->setContentsMargins(0, 0, 0, 0);
  place->addWidget(empty_);
  place->addWidget(body_);
  column->addWidget(desk);
  connect(&document_, &Document::opened, this, &CompareDesk::follow);
  connect(&document_, &Document::changed, this, &CompareDesk::follow);
  connect(&document_, &Document::selectionChanged, this, &CompareDesk::follow);
  follow();
}

void CompareDesk::makeBody() {
  body_ = new QWidget;
  auto* row = new QHBoxLayout(body_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kSpace5);
  row->addWidget(makeSide(sides_[0], QStringLiteral("left")), 1);
  row->addWidget(makeMiddle());
  row->addWidget(makeSide(sides_[1], QStringLiteral("right")), 1);
}

QWidget* CompareDesk::makeMiddle() {
  auto* middle = new QWidget;
  auto* rules = new QVBoxLayout(middle);
  rules->setContentsMargins(0, 0, kSpace2, 0);
  same_ = note(QStringLiteral("compare-same"), middle);
  same_->setAlignment(Qt::AlignCenter);
  same_->setWordWrap(true);
  scores_ = new ScorePairView(middle);
  manner_ = note(QStringLiteral("compare-manner"), middle);
  manner_->setAlignment(Qt::AlignCenter);
  manner_->setWordWrap(true);
  rules->addWidget(same_);
  rules->addWidget(scores_);
  rules->addWidget(manner_);
  rules->addStretch(1);
  QWidget* scores = scrolled(middle, QStringLiteral("compare-scores"));
  scores->setFixedWidth(kScores);
  return scores;
}

void CompareDesk::addHead() {
  auto* head = new QHBoxLayout;
  title_ = new QLabel(this);
  title_->setObjectName(QStringLiteral("compare-title"));
  title_->setProperty("look", QStringLiteral("strong"));
  title_->setTextFormat(Qt::PlainText);
  auto* back = new QPushButton(tr("Back to the plants"), this);
  back->setObjectName(QStringLiteral("compare-back"));
  back->setProperty("look", QStringLiteral("link"));
  connect(back, &QPushButton::clicked, this, &CompareDesk::left);
  head->addWidget(title_, 1);
  head->addWidget(back);
  static_cast<QVBoxLayout*>(layout())->addLayout(head);
}

QWidget* CompareDesk::makeSide(Side& side, const QString& name) {
  side.box = new QWidget(body_);
  auto* column = new QVBoxLayout(side.box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kSpace1);
  auto* line = new QHBoxLayout;
  side.choice = new QComboBox(side.box);
  side.choice->setObjectName(QStringLiteral("compare-%1").arg(name));
  side.choice->setAccessibleName(name == QLatin1String("left") ? tr("Arrangement on the left")
                                                               : tr("Arrangement on the right"));
  connect(side.choice, &QComboBox::activated, this, [this, &side](int index) {
    const std::int64_t id = side.choice->itemData(index).toLongLong();
    side.shown = id > 0 ? std::optional(Id<Arrangement>(id)) : std::nullopt;
    refresh();
  });
  side.plant = new QPushButton(tr("Plant this one"), side.box);
  side.plant->setObjectName(QStringLiteral("compare-plant-%1").arg(name));
  connect(side.plant, &QPushButton::clicked, this, [this, &side] { plant(side); });
  line->addWidget(side.choice, 1);
  line->addWidget(side.plant);
  column->addLayout(line);
  side.place = new QHBoxLayout;
  column->addLayout(side.place, 1);
  side.facts = note(QStringLiteral("compare-facts-%1").arg(name), side.box);
  side.facts->setWordWrap(true);
  column->addWidget(side.facts);
  return side.box;
}

// Opened anew it shows two that differ, whatever was planted since.
void CompareDesk::showEvent(QShowEvent* event) {
  if (!event->spontaneous()) bed_.reset();
  follow();
}

// What is on the ground beside the last that was kept and is another, until something else is
// chosen.
void CompareDesk::follow() {
  if (!isVisible()) return;
  const Bed* bed = bedOfSelection(document_.yard(), document_.selection());
  const std::optional<Id<Bed>> id = bed ? std::optional(bed->id) : std::nullopt;
  title_->setText(
      bed ? tr("Arrangements of %1").arg(bed->name.empty() ? tr("this bed") : text(bed->name))
          : tr("Arrangements"));
  empty_->setVisible(!bed);
  body_->setVisible(bed != nullptr);
  if (id != bed_) {
    bed_ = id;
    sides_[0].shown.reset();
    sides_[1].shown.reset();
    if (bed) sides_[1].shown = lastOther();
  }
  if (bed) refresh();
}

std::optional<Id<Arrangement>> CompareDesk::lastOther() const {
  std::optional<Id<Arrangement>> last;
  for (const Arrangement* kept : arrangementsOf(document_.yard(), *bed_))
    if (!last || !isPlantedAs(document_.yard(), kept->id)) last = kept->id;
  return last;
}

void CompareDesk::refresh() {
  const auto sun = document_.sunMap();
  std::array<ArrangementFacts, 2> facts;
  for (std::size_t i = 0; i < 2; ++i) {
    Side& side = sides_[i];
    if (side.shown && !document_.yard().arrangements.find(*side.shown)) side.shown.reset();
    offer(side);
    draw(side);
    facts[i] = arrangementFacts({yardWith(side), document_.facts(), sun.get()}, *bed_);
    side.facts->setText(words(facts[i]));
    side.facts->setToolTip(mannerTip(side.shown.has_value()));
    side.plant->setEnabled(side.shown && !document_.isReadOnly());
  }
  auto pairs = differingTerms(facts[0].score, facts[1].score);
  same_->setText(arrangementsOf(document_.yard(), *bed_).empty()
                     ? tr("Keep an arrangement first, then plant another and compare the two.")
                     : tr("Both keep every rule alike."));
  same_->setVisible(pairs.empty());
  scores_->setVisible(!pairs.empty());
  scores_->show(std::move(pairs));
  manner_->setVisible(facts[0].wildness != facts[1].wildness);
  manner_->setText(tr("Scored at %1 on the left, %2 on the right: more natural asks for smaller "
                      "drifts, repeated more often.")
                       .arg(mannerText(facts[0].wildness), mannerText(facts[1].wildness)));
}

void CompareDesk::offer(Side& side) {
  const QSignalBlocker quiet(side.choice);
  side.choice->clear();
  side.choice->addItem(tr("On the ground"), 0);
  for (const Arrangement* kept : arrangementsOf(document_.yard(), *bed_)) {
    side.choice->addItem(text(kept->name), QVariant::fromValue(qlonglong(kept->id.value())));
    if (side.shown == kept->id) side.choice->setCurrentIndex(side.choice->count() - 1);
  }
}

void CompareDesk::draw(Side& side) {
  while (QLayoutItem* item = side.place->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  std::vector<KeptDrift> drifts;
  const Yard yard = yardWith(side);
  for (const Drift* drift : driftsIn(yard, *bed_)) drifts.push_back(keptFrom(*drift));
  auto* picture = new ArrangementPicture(document_, *bed_, std::move(drifts), side.box);
  picture->setEnabled(false);
  picture->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  side.place->addWidget(picture);
}

Yard CompareDesk::yardWith(const Side& side) const {
  return side.shown ? withArrangement(document_.yard(), *side.shown) : document_.yard();
}

void CompareDesk::plant(const Side& side) {
  if (side.shown) plantArrangement(document_, *side.shown);
}

}  // namespace tussock
