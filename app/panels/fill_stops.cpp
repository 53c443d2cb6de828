// SPDX-License-Identifier: MIT
#include "app/panels/fill_stops.h"

#include <QHBoxLayout>

#include "app/look/theme.h"
#include "app/panels/buttons.h"

namespace tussock {

FillStops::FillStops(Filling& filling, const QString& name, QWidget* parent)
    : QWidget(parent),
      filling_(filling),
      keep_(pushButton(name + QStringLiteral("-keep"), tr("Stop and keep"), QString(), this)),
      leave_(pushButton(name, tr("Leave as it was"),
                        tr("Stops; the bed stays as it was before (Escape)"), this)) {
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(kSpace2);
  line->addWidget(keep_);
  line->addWidget(leave_);
  line->addStretch(1);
  connect(keep_, &QPushButton::clicked, &filling_, &Filling::keep);
  connect(leave_, &QPushButton::clicked, &filling_, &Filling::stop);
  connect(&filling_, &Filling::started, this, &FillStops::follow);
  connect(&filling_, &Filling::progressed, this, &FillStops::follow);
  follow();
}

void FillStops::follow() {
  keep_->setEnabled(filling_.canKeep());
  keep_->setToolTip(filling_.canKeep()
                        ? tr("Stops, and plants what the plan shows now (Ctrl+Shift+B)")
                        : tr("The drifts still grow: nothing stands yet that could be kept"));
}

}  // namespace tussock
