// SPDX-License-Identifier: MIT
#include "app/panels/score_pair_view.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include "app/look/theme.h"
#include "app/panels/field_text.h"
#include "app/panels/score_view.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr int kPairRow = 20;
constexpr int kPairWords = 150;  // pixels, in the middle
constexpr int kPairFigure = 44;  // pixels, at each side

// From the middle outwards; the better one in leaf.
void paintBar(QPainter& painter, QRectF whole, double share, bool better, Qt::Edge from) {
  const Theme& theme = currentTheme();
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.line);
  painter.drawRoundedRect(whole, 3, 3);
  const double length = whole.width() * share;
  QRectF part = whole;
  from == Qt::RightEdge ? part.setLeft(whole.right() - length) : part.setWidth(length);
  painter.setBrush(better ? theme.leaf : theme.edge);
  painter.drawRoundedRect(part, 3, 3);
}

}  // namespace

ScorePairView::ScorePairView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("score-pair"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ScorePairView::show(std::vector<TermPair> pairs) {
  pairs_ = std::move(pairs);
  updateGeometry();
  update();
}

QSize ScorePairView::sizeHint() const {
  return {360, kPairRow * int(pairs_.size())};
}

void ScorePairView::paintEvent(QPaintEvent*) {
  const Theme& theme = currentTheme();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(fontFor(TextRole::Note));
  const double bar = (width() - kPairWords) / 2.0 - kPairFigure;
  int y = 0;
  for (const TermPair& pair : pairs_) {
    const QRect row(0, y, width(), kPairRow);
    const bool first = pair.first > pair.second;
    painter.setPen(theme.ink);
    painter.drawText(row, Qt::AlignCenter, text(factsOf(pair.term).title));
    painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, shareText(pair.first));
    painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, shareText(pair.second));
    const double top = y + kPairRow / 2.0 - 3;
    paintBar(painter, QRectF(kPairFigure, top, bar, 6), pair.first, first, Qt::RightEdge);
    paintBar(painter, QRectF(width() - kPairFigure - bar, top, bar, 6), pair.second, !first,
             Qt::LeftEdge);
    y += kPairRow;
  }
}

bool ScorePairView::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const int row = help->pos().y() / kPairRow;
  if (row >= 0 && row < int(pairs_.size()))
    QToolTip::showText(help->globalPos(), termTip(pairs_[std::size_t(row)].term), this);
  return true;
}

}  // namespace tussock
