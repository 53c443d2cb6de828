// SPDX-License-Identifier: MIT
#include "app/panels/year_ruler.h"

#include <algorithm>
#include <cmath>
#include <QDate>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>

#include "app/look/oklab.h"
#include "app/look/theme.h"
#include "core/catalog/season_weeks.h"

namespace tussock {

namespace {

constexpr int kOpenHeight = 92, kFoldedHeight = 30;
constexpr double kSide = 14.0;       // room for the handle at both ends
constexpr double kMonthLine = 20.0;  // below the names of the months
constexpr double kFrostLine = 17.0;  // for their words, at the foot

// A day of a common year, 0 to 365, in weeks.
double weeksTo(MonthDay day) {
  return dayOfYear(day) / 7.0;
}

// The weeks of a band from the left.
std::vector<bool> placesOf(const BloomBand& band, Hemisphere where) {
  std::vector<bool> places;
  for (int place = 0; place < kWeeksInYear; ++place)
    places.push_back(band.weeks[std::size_t(weekAtPlace(place, where))]);
  return places;
}

bool clash(const std::vector<bool>& a, const std::vector<bool>& b) {
  for (std::size_t w = 0; w < a.size(); ++w) {
    const bool near = a[w] && (b[w] || (w > 0 && b[w - 1]) || (w + 1 < b.size() && b[w + 1]));
    if (near) return true;
  }
  return false;
}

// Each band goes on the first row where it is in nobody's way.
std::vector<int> packed(const std::vector<std::vector<bool>>& bands) {
  std::vector<int> rows;
  for (std::size_t i = 0; i < bands.size(); ++i) {
    int row = 0;
    for (bool moved = true; moved;) {
      moved = false;
      for (std::size_t k = 0; k < i && !moved; ++k)
        moved = rows[k] == row && clash(bands[i], bands[k]);
      if (moved) ++row;
    }
    rows.push_back(row);
  }
  return rows;
}

}  // namespace

YearRuler::YearRuler(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(tr("Week shown"));
}

QString YearRuler::weekWords(int week) {
  return QLocale().toString(QDate(2027, 1, 1).addDays(7 * week), QStringLiteral("d MMMM"));
}

void YearRuler::setForm(Form form) {
  form_ = form;
  updateGeometry();
  update();
}

void YearRuler::setHalf(Hemisphere where) {
  if (where == where_) return;
  where_ = where;
  setBands(std::move(bands_));
}

void YearRuler::setBands(std::vector<BloomBand> bands) {
  bands_ = std::move(bands);
  places_.clear();
  for (const BloomBand& band : bands_) places_.push_back(placesOf(band, where_));
  rows_ = packed(places_);
  rowCount_ = rows_.empty() ? 0 : *std::max_element(rows_.begin(), rows_.end()) + 1;
  update();
}

void YearRuler::setFrosts(std::optional<MonthDay> last, std::optional<MonthDay> first) {
  lastFrost_ = last;
  firstFrost_ = first;
  update();
}

void YearRuler::setWeek(std::optional<int> week) {
  week_ = week;
  setAccessibleDescription(week ? wordsAt(*week) : tr("Every species in flower"));
  update();
}

void YearRuler::choose(std::optional<int> week) {
  if (week == week_) return;
  setWeek(week);
  emit weekChanged(week);
}

double YearRuler::xOfPlace(double place) const {
  return kSide + (width() - 2.0 * kSide) * place / kWeeksInYear;
}

double YearRuler::xOfWeek(double week) const {
  const int whole = std::min(int(week), kWeeksInYear - 1);
  return xOfPlace(placeInYear(whole, where_) + week - whole);
}

int YearRuler::weekAt(double x) const {
  const double share = (x - kSide) / (width() - 2.0 * kSide);
  const int place = std::clamp(int(std::floor(share * kWeeksInYear)), 0, kWeeksInYear - 1);
  return weekAtPlace(place, where_);
}

QSize YearRuler::sizeHint() const {
  return {640, form_ == Form::Open ? kOpenHeight : kFoldedHeight};
}

QSize YearRuler::minimumSizeHint() const {
  return {300, sizeHint().height()};
}

void YearRuler::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintMonths(painter);
  paintBands(painter);
  if (form_ == Form::Open) paintFrosts(painter);
  paintHandle(painter);
  if (!hasFocus() || !ring_) return;
  painter.setPen(QPen(currentTheme().sky, 2));
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), kCorner, kCorner);
}

// Of the month that begins there; the year's first begins where the year does, though 1 July is
// the last day of its week.
double YearRuler::xOfMonth(int place) const {
  if (place == 0) return xOfPlace(0);
  if (place == 12) return xOfPlace(kWeeksInYear);
  return xOfWeek(weeksTo(std::chrono::month{unsigned(monthAtPlace(place, where_))} / 1));
}

void YearRuler::paintMonths(QPainter& painter) const {
  const Theme& theme = currentTheme();
  const double foot = form_ == Form::Open ? height() - 4.0 : kMonthLine;
  painter.setFont(fontFor(TextRole::Note));
  for (int place = 0; place < 12; ++place) {
    const int month = monthAtPlace(place, where_);
    const double left = xOfMonth(place);
    const double right = xOfMonth(place + 1);
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(std::round(left) + 0.5, 4), QPointF(std::round(left) + 0.5, foot));
    painter.setPen(theme.quietInk);
    painter.drawText(QRectF(left, 2, right - left, kMonthLine - 4), Qt::AlignCenter,
                     QLocale().standaloneMonthName(month, QLocale::ShortFormat));
  }
  if (form_ == Form::Folded) return;
  painter.setPen(QPen(theme.line, 1));
  for (int place = 0; place <= kWeeksInYear; ++place) {
    const double x = std::round(xOfPlace(place)) + 0.5;
    painter.drawLine(QPointF(x, kMonthLine - 1), QPointF(x, kMonthLine + 2));
  }
}

void YearRuler::paintBands(QPainter& painter) const {
  if (bands_.empty()) return;
  const Theme& theme = currentTheme();
  const bool folded = form_ == Form::Folded;
  const double top = kMonthLine + (folded ? 1.0 : 6.0);
  const double room = height() - top - (folded ? 2.0 : kFrostLine);
  const double pitch = std::min(6.0, room / rowCount_);
  const double thick = std::max(1.2, pitch * 0.62);
  for (std::size_t i = 0; i < bands_.size(); ++i) {
    const bool pale = !theme.dark && toOklab(bands_[i].colour).lightness > 0.86;
    painter.setPen(pale && !folded ? QPen(theme.edge, 0.7) : QPen(Qt::NoPen));
    painter.setBrush(bands_[i].colour);
    for (int place = 0; place < kWeeksInYear;) {
      int end = place;
      while (end < kWeeksInYear && places_[i][std::size_t(end)]) ++end;
      if (end > place)
        painter.drawRoundedRect(QRectF(xOfPlace(place), top + rows_[i] * pitch,
                                       xOfPlace(end) - xOfPlace(place) - 1.0, thick),
                                thick / 2, thick / 2);
      place = std::max(end, place + 1);
    }
  }
}

void YearRuler::paintFrosts(QPainter& painter) const {
  if (lastFrost_) paintFrost(painter, *lastFrost_, tr("last frost"));
  if (firstFrost_) paintFrost(painter, *firstFrost_, tr("first frost"));
}

void YearRuler::paintFrost(QPainter& painter, MonthDay day, const QString& words) const {
  const QColor sky = currentTheme().sky;
  const double x = xOfWeek(weeksTo(day));
  painter.setPen(QPen(sky, 1.2, Qt::DotLine));
  painter.drawLine(QPointF(x, kMonthLine), QPointF(x, height() - 4));
  painter.setPen(sky);
  painter.setFont(fontFor(TextRole::Note));
  const QString label = words + QLatin1Char(' ') + QString::fromStdString(readableMonthDay(day));
  const double wide = QFontMetricsF(painter.font()).horizontalAdvance(label);
  const bool left = x + 5 + wide > width() - kSide;
  painter.drawText(QPointF(left ? x - 5 - wide : x + 5, height() - 5), label);
}

void YearRuler::paintHandle(QPainter& painter) const {
  if (!week_) return;
  const Theme& theme = currentTheme();
  const double x = std::round(xOfWeek(*week_ + 0.5)) + 0.5;
  painter.setPen(QPen(theme.ink, 1.6));
  painter.drawLine(QPointF(x, 4), QPointF(x, height() - 3));
  QPainterPath grip;
  grip.moveTo(x - 6, 1);
  grip.lineTo(x + 6, 1);
  grip.lineTo(x, 10);
  grip.closeSubpath();
  painter.setPen(QPen(theme.panel, 1));
  painter.setBrush(theme.ink);
  painter.drawPath(grip);
  if (form_ == Form::Folded) return;
  const QString label = weekWords(*week_);
  QFont font = fontFor(TextRole::Note);
  font.setBold(true);
  const double wide = QFontMetricsF(font).horizontalAdvance(label) + 12;
  const double left = std::clamp(x - wide / 2, 2.0, width() - wide - 2.0);
  const QRectF flag(left, height() - 19, wide, 17);
  painter.setPen(Qt::NoPen);
  painter.drawRoundedRect(flag, 8, 8);
  painter.setPen(theme.panel);
  painter.setFont(font);
  painter.drawText(flag, Qt::AlignCenter, label);
}

QString YearRuler::wordsAt(int week) const {
  QStringList names;
  for (const BloomBand& band : bands_)
    if (band.weeks[std::size_t(week)]) names << band.name;
  const QString when = tr("Week of %1").arg(weekWords(week));
  if (names.isEmpty()) return tr("%1: nothing in flower").arg(when);
  return tr("%1, in flower: %2").arg(when, names.join(QStringLiteral(", ")));
}

bool YearRuler::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  QToolTip::showText(help->globalPos(), wordsAt(weekAt(help->pos().x())), this);
  return true;
}

void YearRuler::focusInEvent(QFocusEvent* event) {
  const Qt::FocusReason why = event->reason();
  ring_ = why == Qt::TabFocusReason || why == Qt::BacktabFocusReason ||
          why == Qt::ShortcutFocusReason || why == Qt::OtherFocusReason;
  QWidget::focusInEvent(event);
}

void YearRuler::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) choose(weekAt(event->position().x()));
}

void YearRuler::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) choose(weekAt(event->position().x()));
}

void YearRuler::keyPressEvent(QKeyEvent* event) {
  const int now = week_ ? placeInYear(*week_, where_) : weekOf(std::chrono::July / 1);
  const auto go = [this](int place) { choose(weekAtPlace(place, where_)); };
  switch (event->key()) {
    case Qt::Key_Left:
      return go(std::max(0, now - 1));
    case Qt::Key_Right:
      return go(std::min(kWeeksInYear - 1, now + 1));
    case Qt::Key_Home:
      return go(0);
    case Qt::Key_End:
      return go(kWeeksInYear - 1);
    case Qt::Key_Escape:
    case Qt::Key_Delete:
      return choose(std::nullopt);
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace tussock
