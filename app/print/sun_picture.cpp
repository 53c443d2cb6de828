// SPDX-License-Identifier: MIT
#include "app/print/sun_picture.h"

#include <algorithm>
#include <cmath>
#include <QFontMetrics>
#include <QImage>
#include <QPainter>
#include <vector>

#include "app/files/whole_file.h"
#include "app/look/sun_scale.h"
#include "app/look/theme.h"
#include "app/print/sun_plan.h"

namespace tussock {

namespace {

constexpr int kHeaderHeight = 64;
constexpr int kLegendHeight = 92;
constexpr int kLeastWidth = 640;    // of a map that has its legend below it
constexpr int kBesideWidth = 600;   // of the legend beside a narrower one
constexpr int kScaleRoom = 200;     // beside the title, for north and the scale
constexpr double kBarPixels = 120;  // the scale's length at most

void paintHeader(QPainter& painter, const SunPictureText& text, int width, const Theme& theme) {
  painter.setPen(theme.ink);
  painter.setFont(fontFor(TextRole::LargeHeading));
  painter.drawText(
      QRect(kSpace5, kSpace2, width, 28), Qt::AlignVCenter,
      painter.fontMetrics().elidedText(QString::fromStdString(text.title), Qt::ElideRight, width));
  painter.setFont(fontFor(TextRole::Body));
  painter.setPen(theme.quietInk);
  painter.drawText(QRect(kSpace5, 34, width, 20), Qt::AlignVCenter,
                   QString::fromStdString(text.heading));
}

// A round length in the yard's units that takes up no more than kBarPixels.
struct Bar {
  double pixels = 0.0;
  QString words;
};

Bar barFor(const SceneMapping& mapping, UnitSystem units) {
  const bool feet = units == UnitSystem::FeetInches;
  const double unit = mapping.scale() * (feet ? kMetresPerFoot : 1.0);
  const double power = std::pow(10.0, std::floor(std::log10(kBarPixels / unit)));
  double length = power;
  for (const double step : {2.0, 5.0})
    if (step * power * unit <= kBarPixels) length = step * power;
  return {length * unit, (feet ? QObject::tr("%1 ft") : QObject::tr("%1 m")).arg(length)};
}

// North is up. Beside the arrow, a length to go by.
void paintNorthAndScale(QPainter& painter, const Bar& bar, int right, const Theme& theme) {
  painter.setPen(QPen(theme.ink, 1.5));
  painter.setFont(fontFor(TextRole::Body));
  const int foot = kHeaderHeight - kSpace3;
  const QPolygonF arrow{QPointF(right - 5, foot - 18), QPointF(right - 10, foot),
                        QPointF(right - 5, foot - 4), QPointF(right, foot)};
  painter.setBrush(theme.ink);
  painter.drawPolygon(arrow);
  painter.setBrush(Qt::NoBrush);
  painter.drawText(QRect(right - 15, foot - 40, 20, 20), Qt::AlignCenter, QObject::tr("N"));
  const int end = right - kSpace6 - kSpace2;
  const int start = end - qRound(bar.pixels);
  painter.drawLine(start, foot, end, foot);
  for (const int x : {start, end}) painter.drawLine(x, foot - kSpace1, x, foot);
  painter.drawText(QRect(start - 60, foot - 26, end - start + 120, 20), Qt::AlignCenter, bar.words);
}

void paintLegend(QPainter& painter, QRect strip, const Theme& theme) {
  const QList<QRgb> ramp = sunRamp();
  const double step = static_cast<double>(strip.width()) / static_cast<double>(ramp.size());
  for (qsizetype i = 0; i < ramp.size(); ++i)
    painter.fillRect(QRectF(strip.left() + static_cast<double>(i) * step, strip.top(), step + 1.0,
                            strip.height()),
                     QColor(ramp[i]));
  painter.setPen(theme.ink);
  painter.setFont(fontFor(TextRole::Body));
  for (int hour = 0; hour <= static_cast<int>(kSunScaleTop); hour += 2) {
    const int x = strip.left() + static_cast<int>(hour / kSunScaleTop * strip.width());
    painter.drawLine(x, strip.bottom(), x, strip.bottom() + kSpace1);
    const QString label = hour < static_cast<int>(kSunScaleTop)
                              ? QObject::tr("%1 h").arg(hour)
                              : QObject::tr("%1 h and more").arg(hour);
    painter.drawText(QRect(x - 60, strip.bottom() + kSpace2, 120, 20), Qt::AlignHCenter, label);
  }
}

// Where the classes of sun begin, under the hours.
void paintClasses(QPainter& painter, QRect strip, const SunProfile& classes, const Theme& theme) {
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(theme.quietInk);
  const auto mark = [&](double hours, const QString& words) {
    const int x = strip.left() + static_cast<int>(hours / kSunScaleTop * strip.width());
    painter.drawText(QRect(x - 120, strip.bottom() + 28, 240, 18), Qt::AlignHCenter, words);
    painter.fillRect(QRect(x, strip.top() - kSpace1, 1, strip.height() + kSpace1), theme.ink);
  };
  mark(classes.partFrom, QObject::tr("part sun from %1 h").arg(classes.partFrom));
  mark(classes.fullFrom, QObject::tr("full sun from %1 h").arg(classes.fullFrom));
}

// Notes in columns of one width, each as many lines as its words need.
class Notes {
 public:
  Notes(const std::vector<SunNote>& notes, int columns, int width)
      : width_(width / columns), metrics_(fontFor(TextRole::Note)) {
    int all = 0;
    for (const SunNote& note : notes) all += heightOf(note);
    int column = 0, top = 0;
    for (const SunNote& note : notes) {
      placed_.push_back({&note, {column * width_, top, width_, heightOf(note)}});
      top += heightOf(note);
      height_ = std::max(height_, top);
      if (column + 1 < columns && top * columns >= all) ++column, top = 0;
    }
  }
  [[nodiscard]] int height() const { return height_; }
  void paint(QPainter& painter, QPoint at, const Theme& theme) const {
    painter.setFont(fontFor(TextRole::Note));
    for (const Placed& each : placed_) {
      const QRect box = each.box.translated(at);
      painter.setPen(theme.quietInk);
      painter.drawText(box, Qt::AlignTop, QString::fromStdString(each.note->name));
      painter.setPen(theme.ink);
      painter.drawText(box.adjusted(kNameWidth, 0, -kSpace4, 0), Qt::AlignTop | Qt::TextWordWrap,
                       QString::fromStdString(each.note->value));
    }
  }

 private:
  static constexpr int kNameWidth = 64;
  struct Placed {
    const SunNote* note;
    QRect box;
  };
  [[nodiscard]] int heightOf(const SunNote& note) const {
    const QRect room(0, 0, width_ - kNameWidth - kSpace4, 10000);
    return metrics_.boundingRect(room, Qt::TextWordWrap, QString::fromStdString(note.value))
               .height() +
           kSpace1;
  }

  int width_, height_ = 0;
  QFontMetrics metrics_;
  std::vector<Placed> placed_;
};

// The legend and the notes under the map, or beside one that is too narrow for them.
struct Page {
  Page(QSize plan, const std::vector<SunNote>& texts)
      : map(QPoint(kSpace5, kHeaderHeight), plan),
        beside(plan.width() < kLeastWidth),
        legend(beside ? QPoint(map.right() + 1 + kSpace6, map.top())
                      : QPoint(map.left(), map.bottom() + 1 + kSpace4)),
        width(beside ? kBesideWidth : map.width()),
        notes(texts, beside ? 1 : 2, width) {
    const int foot = std::max(map.bottom() + 1, notesAt().y() + notes.height());
    size = {legend.x() + width + kSpace5, foot + kSpace4};
  }
  [[nodiscard]] QRect strip() const {
    return {legend.x() + 60, legend.y() + kSpace1, width - 120, kSpace4};
  }
  [[nodiscard]] QPoint notesAt() const { return legend + QPoint(0, kLegendHeight - kSpace4); }

  QRect map;
  bool beside;
  QPoint legend;
  int width;
  Notes notes;
  QSize size;
};

}  // namespace

void writeSunPicture(const SunMap& map, const Yard& yard, const SunPictureText& text,
                     const QString& path) {
  const Theme theme = Theme::light();
  const SceneMapping mapping = sunPlanMapping(map);
  const Page page(mapping.view().toSize(), text.notes);
  QImage image(page.size, QImage::Format_RGB32);
  image.fill(theme.paper);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
  painter.save();
  painter.setClipRect(page.map);
  painter.translate(page.map.topLeft());
  paintSunPlan(painter, mapping, map, yard, text.classes,
               text.bedsOnly ? SunGround::Beds : SunGround::Whole);
  painter.restore();
  const int right = page.size.width() - kSpace5;
  paintHeader(painter, text, right - kSpace5 - kScaleRoom, theme);
  paintNorthAndScale(painter, barFor(mapping, yard.settings.units), right, theme);
  paintLegend(painter, page.strip(), theme);
  paintClasses(painter, page.strip(), text.classes, theme);
  page.notes.paint(painter, page.notesAt(), theme);
  painter.end();
  savePng(path, image);
}

}  // namespace tussock
