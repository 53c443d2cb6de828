// SPDX-License-Identifier: MIT
#include "app/panels/drift_head.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/botanical.h"
#include "app/look/glyphs.h"
#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/panels/species_marks.h"
#include "app/tools/locked_drifts.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

constexpr int kHeadGlyphRadius = 30;

QLabel* headLabel(const QString& name, const QString& look, QWidget* parent) {
  auto* made = new QLabel(parent);
  made->setObjectName(name);
  made->setProperty("look", look);
  made->setWordWrap(true);
  made->setTextFormat(Qt::PlainText);  // a plant's own text may look like markup
  return made;
}

}  // namespace

DriftHead::DriftHead(Document& document, Id<Drift> drift, QWidget* parent)
    : QWidget(parent),
      document_(document),
      id_(drift),
      botanical_(headLabel(QStringLiteral("drift-botanical"), QStringLiteral("heading"), this)),
      common_(headLabel(QStringLiteral("drift-common"), QStringLiteral("quiet"), this)),
      said_(headLabel(QStringLiteral("drift-said"), QStringLiteral("note"), this)) {
  botanical_->setTextFormat(Qt::RichText);
  auto* names = new QVBoxLayout;
  names->setContentsMargins(2 * kHeadGlyphRadius + kSpace3, kSpace1, 0, 0);
  names->setSpacing(2);
  names->addWidget(botanical_);
  names->addWidget(common_);
  names->addStretch(1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kSpace2);
  auto* top = new QHBoxLayout;
  top->addLayout(names, 1);
  top->addStrut(2 * kHeadGlyphRadius);
  column->addLayout(top);
  column->addWidget(makeCount());
  column->addWidget(said_);
  said_->hide();
  refresh();
}

QWidget* DriftHead::makeCount() {
  auto* row = new QWidget(this);
  count_ = headLabel(QStringLiteral("drift-count"), QStringLiteral("figure"), row);
  count_->setWordWrap(false);
  unit_ = headLabel(QStringLiteral("drift-count-unit"), QStringLiteral("quiet"), row);
  const auto button = [&](const QString& name, const QString& picture, const QString& words) {
    auto* made = new QPushButton(row);
    made->setObjectName(name);
    made->setProperty("look", QStringLiteral("step"));
    made->setIcon(icon(picture));
    made->setAccessibleName(words);
    made->setToolTip(words);
    return made;
  };
  fewer_ = button(QStringLiteral("drift-fewer"), QStringLiteral("minus"), tr("Fewer plants"));
  more_ = button(QStringLiteral("drift-more"), QStringLiteral("plus"), tr("More plants"));
  connect(fewer_, &QPushButton::clicked, this, [this] {
    if (const Drift* d = drift()) resizeTo(previousCount(int(d->plants.size())));
  });
  connect(more_, &QPushButton::clicked, this, [this] {
    if (const Drift* d = drift()) resizeTo(nextCount(int(d->plants.size())));
  });
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(kSpace2);
  line->addWidget(count_);
  line->addWidget(unit_, 1, Qt::AlignBottom);
  line->addWidget(fewer_);
  line->addWidget(more_);
  unit_->setContentsMargins(0, 0, 0, kSpace2 - 1);
  return row;
}

const Drift* DriftHead::drift() const {
  return document_.yard().drifts.find(id_);
}

void DriftHead::refresh() {
  const Drift* d = drift();
  if (!d) return;
  const Species* species = document_.facts().find(d->species);
  botanical_->setText(botanicalHtml(QString::fromStdString(d->species)));
  common_->setText(species ? text(species->commonName) : tr("not in the plant facts"));
  const std::size_t plants = inHand_.value_or(d->plants.size());
  count_->setText(QString::number(plants));
  unit_->setText(plants == 1 ? tr("plant in this drift") : tr("plants in this drift"));
  fewer_->setEnabled(!document_.isReadOnly() && d->plants.size() > 1);
  more_->setEnabled(!document_.isReadOnly());
  update();
}

void DriftHead::preview(const Drift* inHand) {
  const auto plants = inHand ? std::optional(inHand->plants.size()) : std::nullopt;
  if (plants == inHand_) return;
  inHand_ = plants;
  refresh();
}

// Says so when fewer fit than were asked for; the count then stays or is the most that fits.
void DriftHead::resizeTo(int count) {
  if (const Drift* d = drift(); d && d->locked) {
    said_->setText(lockedWords());
    return said_->show();
  }
  const DriftEdit made = resizeDrift(document_.yard(), id_, count, document_.ids());
  const bool done = !made.edit.empty() && document_.commit(made.edit);
  const bool short_ = made.fitted < made.asked;
  said_->setText(tr("No more than %1 fit here with this spacing. Move the drift or give it less "
                    "spacing.")
                     .arg(made.fitted));
  said_->setVisible(short_);
  if (!done && !short_) said_->hide();
}

void DriftHead::paintEvent(QPaintEvent*) {
  const Drift* d = drift();
  const Species* species = d ? document_.facts().find(d->species) : nullptr;
  if (!species) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  GlyphLook look = glyphLook(*species, std::nullopt, currentTheme().dark);
  look.existing = d->existing();
  paintGlyph(painter, QPointF(kHeadGlyphRadius, kHeadGlyphRadius), kHeadGlyphRadius, look);
}

}  // namespace tussock
