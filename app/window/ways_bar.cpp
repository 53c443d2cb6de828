// SPDX-License-Identifier: MIT
#include "app/window/ways_bar.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>

#include "app/panels/photo_fade.h"
#include "app/tools/photo_tool.h"
#include "core/edit/draft.h"

namespace tussock {

namespace {
constexpr int kSliderHeight = 22;  // pixels, so that the whole handle shows
}  // namespace

WaysBar::WaysBar(Canvas& canvas, QWidget* parent)
    : QFrame(parent), canvas_(canvas), row_(new QHBoxLayout(this)) {
  setObjectName(QStringLiteral("waysBar"));
  setProperty("look", QStringLiteral("card"));
  setAttribute(Qt::WA_NoMousePropagation);  // a click between the chips is not meant for the plan
  row_->setContentsMargins(kSpace2, kSpace1, kSpace2, kSpace1);
  row_->setSpacing(kSpace2);
  // The fields show only after this bar does; the layout sizes the bar to them then.
  row_->setSizeConstraint(QLayout::SetFixedSize);
  connect(&canvas.document(), &Document::changed, this, &WaysBar::showPhoto);
  connect(&canvas.document(), &Document::opened, this, &WaysBar::showPhoto);
  hide();
}

void WaysBar::show(Tool* tool) {
  tool_ = tool;
  fade_ = nullptr;
  lock_ = nullptr;
  chips_.clear();
  while (QLayoutItem* item = row_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  setVisible(tool && !tool->ways().isEmpty());
  if (!isVisibleTo(parentWidget())) return;
  addWays(*tool);
  if (dynamic_cast<PhotoTool*>(tool)) addPhotoFields();
  move(kSpace3, kSpace3);
  raise();
}

void WaysBar::addWays(Tool& tool) {
  auto* group = new QButtonGroup(this);
  const QStringList ways = tool.ways();
  for (int i = 0; i < int(ways.size()); ++i) {
    auto* chip = new QPushButton(ways[i]);
    chip->setObjectName(QStringLiteral("way%1").arg(i));
    chip->setProperty("look", QStringLiteral("chip"));
    chip->setCheckable(true);
    chip->setChecked(i == tool.way());
    chip->setFocusPolicy(Qt::TabFocus);
    group->addButton(chip, i);
    chips_.append(chip);
    row_->addWidget(chip);
  }
  connect(group, &QButtonGroup::idClicked, this, [this](int way) {
    tool_->setWay(way);
    emit canvas_.hintChanged(tool_->hint());
  });
}

void WaysBar::addPhotoFields() {
  fade_ = new QSlider(Qt::Horizontal);
  fade_->setObjectName(QStringLiteral("photoFade"));
  fade_->setAccessibleName(tr("How far the photo is faded"));
  fade_->setRange(0, kMostFade);
  fade_->setFixedWidth(110);
  fade_->setMinimumHeight(kSliderHeight);
  lock_ = new QCheckBox(tr("Locked"));
  lock_->setObjectName(QStringLiteral("photoLock"));
  auto* label = new QLabel(tr("Fade"));
  label->setProperty("look", QStringLiteral("note"));
  row_->addWidget(label);
  row_->addWidget(fade_);
  row_->addWidget(lock_);
  const auto fade = [this] {
    commitPhoto(tr("Fade photo"), [this](Photo& p) { setFade(p, fade_->value()); });
  };
  connect(fade_, &QSlider::sliderReleased, this, fade);
  connect(fade_, &QSlider::actionTriggered, this, [this, fade] {
    if (!fade_->isSliderDown()) QMetaObject::invokeMethod(this, fade, Qt::QueuedConnection);
  });
  connect(lock_, &QCheckBox::clicked, this, [this](bool on) {
    commitPhoto(on ? tr("Lock photo") : tr("Unlock photo"), [on](Photo& p) { p.locked = on; });
  });
  showPhoto();
}

const Photo* WaysBar::photo() const {
  const auto* tool = dynamic_cast<PhotoTool*>(tool_);
  return tool ? tool->photo() : nullptr;
}

void WaysBar::showPhoto() {
  if (!fade_ || !lock_) return;
  const Photo* shown = photo();
  fade_->setEnabled(shown != nullptr);
  lock_->setEnabled(shown != nullptr);
  const bool locked = shown && shown->locked;
  for (QPushButton* chip : chips_) {
    chip->setEnabled(!locked);
    chip->setToolTip(locked ? tool_->hint() : QString());
  }
  if (!shown) return;
  const QSignalBlocker quietFade(fade_), quietLock(lock_);
  fade_->setValue(fadeOf(*shown));
  lock_->setChecked(shown->locked);
}

void WaysBar::commitPhoto(const QString& label, const std::function<void(Photo&)>& change) {
  const Photo* shown = photo();
  if (!shown) return;
  Photo after = *shown;
  change(after);
  Draft draft(canvas_.document().yard());
  draft.put(after);
  // Each step of the fade is one edit with the last; locking never follows on locking.
  canvas_.document().commitStep(draft.finish(label.toStdString()));
}

}  // namespace tussock
