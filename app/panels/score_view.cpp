// SPDX-License-Identifier: MIT
#include "app/panels/score_view.h"

#include <QHelpEvent>
#include <QLocale>
#include <QPainter>
#include <QToolTip>

#include "app/look/theme.h"
#include "app/panels/field_text.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr int kScoreRow = 20;
constexpr int kBar = 56;     // pixels
constexpr int kFigure = 40;  // pixels, at the right
constexpr int kWeight = 28;  // pixels, before the bar

QString weightText(double weight) {
  return QLocale().toString(weight, 'g', 3);
}

}  // namespace

ScoreView::ScoreView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("fill-score"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ScoreView::show(FillScore score) {
  score_ = std::move(score);
  updateGeometry();
  update();
}

QSize ScoreView::sizeHint() const {
  return {260, kScoreRow * int(score_.terms.size())};
}

void ScoreView::paintEvent(QPaintEvent*) {
  const Theme& theme = currentTheme();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(fontFor(TextRole::Note));
  int y = 0;
  for (const TermScore& term : score_.terms) {
    const QRect row(0, y, width(), kScoreRow);
    const QRectF bar(width() - kFigure - kBar, y + kScoreRow / 2.0 - 3, kBar, 6);
    painter.setPen(theme.ink);
    const QRect words = row.adjusted(0, 0, -kBar - kFigure - kSpace2, 0);
    painter.drawText(words.adjusted(0, 0, -kWeight, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     text(factsOf(term.term).title));
    painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, shareText(term.score));
    painter.setPen(theme.quietInk);
    painter.drawText(words, Qt::AlignRight | Qt::AlignVCenter,
                     QStringLiteral("×%1").arg(weightText(term.weight)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.line);
    painter.drawRoundedRect(bar, 3, 3);
    painter.setBrush(term.score < 0.5 ? theme.caution : theme.leaf);
    painter.drawRoundedRect(QRectF(bar.topLeft(), QSizeF(kBar * term.score, 6)), 3, 3);
    y += kScoreRow;
  }
}

bool ScoreView::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const int row = help->pos().y() / kScoreRow;
  if (row < 0 || row >= int(score_.terms.size())) return true;
  QToolTip::showText(help->globalPos(), termTip(score_.terms[std::size_t(row)].term), this);
  return true;
}

QString termTip(FillTerm term) {
  const TermFacts& facts = factsOf(term);
  return QStringLiteral("%1\n%2\n%3")
      .arg(text(facts.asks), ScoreView::tr("Source: %1").arg(text(facts.source)),
           ScoreView::tr("Weight %1").arg(weightText(facts.weight)));
}

}  // namespace tussock
