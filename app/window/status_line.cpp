// SPDX-License-Identifier: MIT
#include "app/window/status_line.h"

#include <cmath>
#include <QDateTime>
#include <QHBoxLayout>
#include <QHelpEvent>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QStyle>
#include <QToolTip>

#include "app/document/edit_order.h"
#include "app/document/sun_view.h"
#include "app/look/theme.h"
#include "app/panels/sun_words.h"

namespace tussock {

namespace {

template <class Label = QLabel>
QLabel* part(const char* name, const char* look = "note") {
  auto* label = new Label;
  label->setObjectName(QString::fromLatin1(name));
  label->setProperty("look", QString::fromLatin1(look));
  return label;
}

// One line that ends in … where there is no room, with the whole of it under the pointer.
class ShortenedLabel : public QLabel {
 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    style()->drawItemText(&painter, contentsRect(), Qt::AlignVCenter | Qt::AlignLeft, palette(),
                          isEnabled(), shortened(), foregroundRole());
  }
  bool event(QEvent* event) override {
    if (event->type() != QEvent::ToolTip) return QLabel::event(event);
    const QPoint at = static_cast<QHelpEvent*>(event)->globalPos();
    QToolTip::showText(at, shortened() == text() ? QString() : text(), this);
    return true;
  }

 private:
  [[nodiscard]] QString shortened() const {
    return fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width());
  }
};

// Lengths are never negative; a coordinate may be.
QString coordinate(double metres, UnitSystem units) {
  const QString text =
      QString::fromStdString(formatLength(Length::metres(std::abs(metres)), units));
  return metres < 0.0 ? QStringLiteral("−") + text : text;
}

}  // namespace

StatusLine::StatusLine(Document& document, const EditOrder& order, const SunView& sun,
                       QWidget* parent)
    : QWidget(parent),
      document_(document),
      order_(order),
      sun_(sun),
      hint_(part<ShortenedLabel>("statusHint")),
      length_(part("statusLength")),
      place_(part("statusPlace")),
      undo_(part("statusUndo")),
      saved_(part("statusSaved")) {
  setObjectName(QStringLiteral("statusLine"));
  setFixedHeight(28);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kSpace4, 0, kSpace4, 0);
  row->setSpacing(kSpace5);
  hint_->setMinimumWidth(0);
  hint_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  row->addWidget(hint_, 1);
  row->addWidget(length_);
  row->addWidget(place_);
  row->addWidget(undo_);
  row->addWidget(saved_);
  connect(&document, &Document::opened, this, [this] { saved_->clear(); });
  connect(&order, &EditOrder::changed, this, &StatusLine::showUndo);
  connect(&document, &Document::saved, this, [this](const QDateTime& at) {
    saved_->setText(tr("Saved %1").arg(at.time().toString(QStringLiteral("HH:mm"))));
  });
  connect(&sun_, &SunView::mapChanged, this, &StatusLine::showPlace);
  connect(&sun_, &SunView::choiceChanged, this, &StatusLine::showPlace);
  connect(&sun_, &SunView::yardChanged, this, &StatusLine::showPlace);
  connect(&document, &Document::sunProgress, this, &StatusLine::showSun);
  connect(&document, &Document::sunMapChanged, this, [this] { showSun(1.0); });
}

void StatusLine::setHint(const QString& hint) {
  hint_->setText(hint);
}

void StatusLine::setPointer(Point at) {
  pointer_ = at;
  showPlace();
}

void StatusLine::clearPointer() {
  pointer_.reset();
  place_->clear();
}

// Also when the sun under a pointer that rests has changed.
void StatusLine::showPlace() {
  if (!pointer_) return;
  const UnitSystem units = document_.yard().settings.units;
  QString words =
      QStringLiteral("%1, %2").arg(coordinate(pointer_->x, units), coordinate(pointer_->y, units));
  const QString sun = briefSunWordsAt(sun_, *pointer_);
  if (!sun.isEmpty()) words += tr(" · %1").arg(sun);
  place_->setText(words);
}

void StatusLine::setLength(const QString& length) {
  length_->setText(length);
}

void StatusLine::showUndo() {
  const auto label = order_.undoLabel();
  undo_->setText(label ? tr("Undo: %1").arg(*label) : QString());
}

void StatusLine::showSun(double share) {
  if (share >= 1.0) {
    if (place_->text().startsWith(tr("Sun: "))) place_->clear();
    return;
  }
  if (!place_->text().contains(QLatin1Char(',')))
    place_->setText(tr("Sun: %1 %").arg(int(share * 100.0)));
}

}  // namespace tussock
