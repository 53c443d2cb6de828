// SPDX-License-Identifier: MIT
#include "app/panels/fill_running.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QProgressBar>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/buttons.h"
#include "app/panels/fill_stops.h"
#include "app/panels/species_marks.h"

namespace tussock {

FillRunning::FillRunning(Document& document, Filling& filling, QWidget* parent)
    : QWidget(parent), document_(document), filling_(filling) {
  setObjectName(QStringLiteral("fill-running"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace4 + kSpace1, kSpace2, kSpace4, kSpace2);
  column->setSpacing(kSpace2);
  auto* line = new QHBoxLayout;
  line->setSpacing(kSpace3);
  bed_ = linkButton(QStringLiteral("fill-running-bed"), QString(), tr("Selects the bed"), this);
  connect(bed_, &QPushButton::clicked, this, [this] {
    if (const auto bed = filling_.bed()) document_.select({refTo(*bed)});
  });
  line->addWidget(bed_);
  progress_ = new QProgressBar(this);
  progress_->setObjectName(QStringLiteral("fill-running-progress"));
  progress_->setTextVisible(false);
  progress_->setFixedHeight(8);
  line->addWidget(progress_, 1);
  column->addLayout(line);
  column->addWidget(new FillStops(filling_, QStringLiteral("fill-running-stop"), this));
  connect(&filling_, &Filling::started, this, &FillRunning::follow);
  connect(&filling_, &Filling::ended, this, &FillRunning::follow);
  connect(&filling_, &Filling::progressed, this, &FillRunning::follow);
  connect(&document_, &Document::selectionChanged, this, &FillRunning::follow);
  follow();
}

void FillRunning::setOwnBarInSight(bool inSight) {
  ownBarInSight_ = inSight;
  follow();
}

void FillRunning::follow() {
  const auto filled = filling_.bed();
  const Bed* bed = filled ? document_.yard().beds.find(*filled) : nullptr;
  if (bed) {
    bed_->setText(bed->name.empty() ? tr("Filling a bed") : tr("Filling %1").arg(text(bed->name)));
    progress_->setValue(qRound(filling_.share() * 100.0));
  }
  const bool hasBar = bed && ownBarInSight_ && document_.selection() == std::vector{refTo(bed->id)};
  setVisible(bed && !hasBar);
}

void FillRunning::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(QRect(0, 0, width(), 1), currentTheme().line);
}

}  // namespace tussock
