// SPDX-License-Identifier: MIT
#include "app/panels/bloom_chart.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QHelpEvent>
#include <QLocale>
#include <QPainter>
#include <QToolTip>

#include "app/look/botanical.h"
#include "app/look/glyphs.h"
#include "app/look/oklab.h"
#include "app/look/theme.h"
#include "app/panels/figures_words.h"
#include "app/panels/species_marks.h"
#include "app/panels/year_ruler.h"
#include "core/catalog/season_weeks.h"

namespace tussock {

namespace {

constexpr double kRow = 17.0, kLeastRow = 13.0;
constexpr double kBand = 8.0;
constexpr double kCounts = 16.0;  // height of the counts under the rows
constexpr double kMonths = 16.0;
constexpr double kMostNames = 0.52;  // of the width, for the longest name
constexpr double kShares = 34.0;     // at the right
constexpr int kMostInFlower = 5;     // more than that are drawn as high

QString countsWords() {
  return BloomChart::tr("In flower at once");
}

}  // namespace

BloomChart::BloomChart(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("bloom-chart"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(tr("Weeks in flower"));
}

void BloomChart::show(const PlantFigures& figures, WeekSet season, Hemisphere where) {
  rows_.clear();
  for (const HeightStep& step : figures.heights)
    rows_.push_back({step.species, step.share,
                     showsFlowers(*step.species) ? weeksInFlower(*step.species) : WeekSet{0}});
  const auto order = [where](const Row& row) {
    return std::pair{row.weeks == 0 ? kWeeksInYear : firstBloomPlace(*row.species, where),
                     std::string_view(row.species->botanicalName)};
  };
  std::sort(rows_.begin(), rows_.end(),
            [&](const Row& a, const Row& b) { return order(a) < order(b); });
  for (std::size_t week = 0; week < counts_.size(); ++week)
    counts_[week] = int(figures.inFlower[week].size());
  season_ = season;
  where_ = where;
  updateGeometry();
  update();
}

QSize BloomChart::sizeHint() const {
  return {280, heightWith(kRow)};
}

QSize BloomChart::minimumSizeHint() const {
  return {0, heightWith(kLeastRow)};
}

int BloomChart::heightWith(double row) const {
  return int(std::ceil(row * double(rows_.size()) + kCounts + kMonths));
}

// Between what is asked for and what can be read, as the chart is given height.
double BloomChart::rowHeight() const {
  if (rows_.empty()) return kRow;
  return std::clamp((height() - kCounts - kMonths) / double(rows_.size()), kLeastRow, kRow);
}

QFont BloomChart::nameFont() const {
  QFont font = fontFor(TextRole::Note);
  font.setPixelSize(rowHeight() < 15.0 ? 11 : 12);
  return font;
}

// As wide as the longest name asks for, so that none is cut while there is room.
double BloomChart::namesWidth() const {
  const QFont font = nameFont();
  double widest = QFontMetricsF(fontFor(TextRole::Note)).horizontalAdvance(countsWords());
  for (const Row& row : rows_)
    widest = std::max(widest, botanicalWidth(text(row.species->botanicalName), font));
  return std::min(widest + kSpace3, width() * kMostNames);
}

QRectF BloomChart::weeksRect() const {
  const double left = namesWidth();
  return {left, 0, width() - left - kShares, rowHeight() * double(rows_.size())};
}

void BloomChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintMonthLines(painter);
  double top = 0;
  for (const Row& row : rows_) {
    paintRow(painter, row, top);
    top += rowHeight();
  }
  paintCounts(painter);
  paintMonths(painter);
}

// Between the months, for the eye to follow up from their names.
void BloomChart::paintMonthLines(QPainter& painter) const {
  const QRectF weeks = weeksRect();
  painter.setPen(QPen(withAlpha(currentTheme().line, 0.6), 1));
  for (int month = 0; month <= 12; ++month) {
    const double x = weeks.left() + month * weeks.width() / 12.0;
    painter.drawLine(QPointF(x, weeks.top()), QPointF(x, weeks.bottom() + kCounts));
  }
}

bool BloomChart::has(WeekSet weeks, int place) const {
  return (weeks >> weekAtPlace(place, where_) & 1U) != 0;
}

void BloomChart::paintRow(QPainter& painter, const Row& row, double top) const {
  const Theme& theme = currentTheme();
  const QRectF weeks = weeksRect();
  const double high = rowHeight();
  painter.setPen(theme.ink);
  drawBotanical(painter, QPointF(0, top + high / 2 + 4), weeks.left() - kSpace2,
                text(row.species->botanicalName), nameFont());
  painter.setFont(fontFor(TextRole::Note));
  painter.drawText(QRectF(weeks.right(), top, kShares, high), Qt::AlignRight | Qt::AlignVCenter,
                   percentWords(row.share));
  const double middle = top + high / 2;
  painter.setPen(QPen(theme.line, 1));
  painter.drawLine(QPointF(weeks.left(), middle), QPointF(weeks.right(), middle));
  const QColor flower = glyphLook(*row.species, std::nullopt, theme.dark).flower;
  const bool pale = !theme.dark && flower.isValid() && toOklab(flower).lightness > 0.86;
  painter.setPen(pale ? QPen(theme.edge, 0.8) : QPen(Qt::NoPen));
  painter.setBrush(flower.isValid() ? flower : theme.edge);
  const double step = weeks.width() / kWeeksInYear;
  for (int place = 0; place < kWeeksInYear;) {
    int end = place;
    while (end < kWeeksInYear && has(row.weeks, end)) ++end;
    if (end > place)
      painter.drawRoundedRect(
          QRectF(weeks.left() + place * step, middle - kBand / 2, (end - place) * step, kBand), 2,
          2);
    place = end + 1;
  }
}

void BloomChart::paintCounts(QPainter& painter) const {
  const Theme& theme = currentTheme();
  const QRectF weeks = weeksRect();
  const double step = weeks.width() / kWeeksInYear, base = weeks.bottom() + kCounts - 2;
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(theme.quietInk);
  painter.drawText(QRectF(0, weeks.bottom(), weeks.left() - kSpace2, kCounts),
                   Qt::AlignLeft | Qt::AlignBottom, countsWords());
  painter.setPen(Qt::NoPen);
  for (int place = 0; place < kWeeksInYear; ++place) {
    const int count = counts_[std::size_t(weekAtPlace(place, where_))];
    const bool gap = count == 0 && has(season_, place);
    const double height =
        gap ? 3.0 : (kCounts - 5) * std::min(count, kMostInFlower) / kMostInFlower;
    painter.setBrush(gap ? theme.caution : theme.leaf);
    painter.drawRect(QRectF(weeks.left() + place * step, base - height, step, height));
  }
}

void BloomChart::paintMonths(QPainter& painter) const {
  const QRectF weeks = weeksRect();
  const double step = weeks.width() / 12.0;
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(currentTheme().quietInk);
  for (int place = 0; place < 12; ++place)
    painter.drawText(
        QRectF(weeks.left() + place * step, weeks.bottom() + kCounts, step, kMonths),
        Qt::AlignCenter,
        QLocale().standaloneMonthName(monthAtPlace(place, where_), QLocale::NarrowFormat));
}

QString BloomChart::wordsAt(QPoint at) const {
  const QRectF weeks = weeksRect();
  const auto row = std::size_t(std::max(0.0, at.y() / rowHeight()));
  if (at.y() >= 0 && row < rows_.size()) {
    const Species& species = *rows_[row].species;
    return tr("%1, %2\n%3")
        .arg(text(species.botanicalName), text(species.commonName), bloomWords(species));
  }
  if (at.x() < weeks.left() || at.x() >= weeks.right()) return {};
  const int place = int((at.x() - weeks.left()) / weeks.width() * kWeeksInYear);
  const int week = weekAtPlace(place, where_);
  return tr("%1: %n in flower", "", counts_[std::size_t(week)]).arg(YearRuler::weekWords(week));
}

bool BloomChart::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  QToolTip::showText(help->globalPos(), plainTip(wordsAt(help->pos())), this);
  return true;
}

}  // namespace tussock
