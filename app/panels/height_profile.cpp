// SPDX-License-Identifier: MIT
#include "app/panels/height_profile.h"

#include <cmath>
#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include "app/look/glyphs.h"
#include "app/look/oklab.h"
#include "app/look/theme.h"
#include "app/panels/figures_words.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr double kScale = 34.0;               // pixels for the figures at the left
constexpr double kAbove = 8.0, kBelow = 8.0;  // room for half a figure
constexpr double kMostLines = 4.0;

}  // namespace

HeightProfile::HeightProfile(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("height-profile"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(tr("Heights in flower"));
}

void HeightProfile::show(std::vector<HeightStep> heights, UnitSystem units) {
  heights_ = std::move(heights);
  units_ = units;
  update();
}

QRectF HeightProfile::ground() const {
  return QRectF(rect()).adjusted(kScale, kAbove, 0, -kBelow);
}

double HeightProfile::scaleStep() const {
  const double unit = units_ == UnitSystem::Metres ? 0.25 : Length::feet(1).metres();
  const double tallest = heights_.empty() ? unit : heights_.front().high.metres();
  double step = unit;
  while (tallest > step * kMostLines) step *= 2;
  return step;
}

double HeightProfile::scaleTop() const {
  const double step = scaleStep();
  return heights_.empty() ? step : step * std::ceil(heights_.front().high.metres() / step);
}

void HeightProfile::paintScale(QPainter& painter) const {
  const Theme& theme = currentTheme();
  const QRectF box = ground();
  painter.setFont(fontFor(TextRole::Note));
  for (double metres = 0; metres <= scaleTop() + 1e-9; metres += scaleStep()) {
    const double y = box.bottom() - metres / scaleTop() * box.height();
    painter.setPen(QPen(metres == 0.0 ? theme.edge : theme.line, 1));
    painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    painter.setPen(theme.quietInk);
    painter.drawText(QRectF(0, y - 8, kScale - 6, 16), Qt::AlignRight | Qt::AlignVCenter,
                     heightMark(metres, units_));
  }
}

void HeightProfile::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintScale(painter);
  const Theme& theme = currentTheme();
  const QRectF box = ground();
  double left = box.left();
  for (const HeightStep& step : heights_) {
    const GlyphLook look = glyphLook(*step.species, std::nullopt, theme.dark);
    const double width = box.width() * step.share;
    const double high = box.height() * step.high.metres() / scaleTop();
    const double low = box.height() * step.low.metres() / scaleTop();
    const double gap = width > 4 ? 1.0 : 0.0;
    const QRectF upTo(left, box.bottom() - high, width - gap, high);
    painter.setPen(Qt::NoPen);
    painter.setBrush(withAlpha(look.foliage, 0.45));
    painter.drawRect(upTo);
    painter.setBrush(look.foliage);
    painter.drawRect(QRectF(left, box.bottom() - low, width - gap, low));
    if (look.flower.isValid()) {
      painter.setBrush(look.flower);
      painter.drawRect(QRectF(left, upTo.top(), width - gap, 3));
    }
    left += width;
  }
}

QString HeightProfile::sizeText(Length size) const {
  return text(formatPlantSize(size, units_));
}

QString HeightProfile::wordsAt(QPoint at) const {
  const QRectF box = ground();
  double right = box.left();
  for (const HeightStep& step : heights_) {
    right += box.width() * step.share;
    if (at.x() < box.left() || at.x() >= right) continue;
    QString words = tr("%1\n%2 to %3 high in flower, %4 of the plants")
                        .arg(text(step.species->botanicalName), sizeText(step.low),
                             sizeText(step.high), percentWords(step.share));
    if (step.species->foliageLow && step.species->foliageHigh)
      words += tr("\nLeaves %1 to %2 high")
                   .arg(sizeText(*step.species->foliageLow), sizeText(*step.species->foliageHigh));
    return words;
  }
  return {};
}

bool HeightProfile::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  QToolTip::showText(help->globalPos(), plainTip(wordsAt(help->pos())), this);
  return true;
}

}  // namespace tussock
