// SPDX-License-Identifier: MIT
#include "app/canvas/label.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <QFontMetricsF>
#include <QHash>
#include <QPainterPath>
#include <QPixmapCache>

#include "app/look/icons.h"

namespace tussock {

namespace {

constexpr double kHalo = 3.6;  // pixels, the width of its pen and the room left for it
constexpr int kMostKnown = 4000;
constexpr double kApart = 3.0;                         // pixels between two labels side by side
constexpr double kLines = 2.0;                         // and between two, one over the other
constexpr double kAfarStep = 14.0, kFarthest = 560.0;  // pixels from the middle
constexpr int kWays = 24;
constexpr double kEnd = 2.0;  // pixels, the radius of the dot that a line ends in
constexpr double kMarkShare = 0.72, kMarkGap = 2.0;  // of a line's height; pixels
constexpr double kLeastOfSet = 0.4;                  // share of a set that must have found a place

const QFont& fontOf(const Label& label, qsizetype line) {
  return line == 0 ? label.font : label.otherFont;
}

// Measured once: the same few words come again at every scale.
QSizeF sizeOf(const QString& line, const QFont& font) {
  static QHash<std::pair<QFont, QString>, QSizeF> known;
  const std::pair key(font, line);
  if (const auto found = known.constFind(key); found != known.constEnd()) return *found;
  if (known.size() >= kMostKnown) known.clear();
  const QFontMetricsF metrics(font);
  return *known.insert(key, {metrics.horizontalAdvance(line), metrics.height()});
}

// With the gap to the words; its side is kMarkShare of the line's height.
double markWidth(const Label& label, qsizetype line) {
  if (line != 0 || label.mark.isEmpty()) return 0.0;
  return kMarkShare * QFontMetricsF(label.font).height() + kMarkGap;
}

QSizeF sizeOf(const Label& label) {
  QSizeF size;
  for (qsizetype i = 0; i < label.lines.size(); ++i) {
    const QSizeF line = sizeOf(label.lines[i], fontOf(label, i)) + QSizeF(markWidth(label, i), 0.0);
    size = {std::max(size.width(), line.width()), size.height() + line.height()};
  }
  return size;
}

// Boxes that nothing may lie over, found by the cells they touch.
class Taken {
 public:
  void add(const QRectF& box) {
    forCells(box, [&](std::uint64_t cell) { cells_[cell].append(box); });
  }
  [[nodiscard]] bool meets(const QRectF& box) const {
    bool met = false;
    forCells(box, [&](std::uint64_t cell) {
      const auto found = cells_.constFind(cell);
      if (met || found == cells_.constEnd()) return;
      met = std::any_of(found->begin(), found->end(),
                        [&](const QRectF& other) { return box.intersects(other); });
    });
    return met;
  }

 private:
  static constexpr double kCell = 96.0;  // pixels, about the width of a label

  template <class F>
  static void forCells(const QRectF& box, F f) {
    const auto cell = [](double at) { return std::int32_t(std::floor(at / kCell)); };
    for (std::int32_t x = cell(box.left()); x <= cell(box.right()); ++x)
      for (std::int32_t y = cell(box.top()); y <= cell(box.bottom()); ++y)
        f(std::uint64_t(std::uint32_t(x)) << 32 | std::uint32_t(y));
  }

  QHash<std::uint64_t, QList<QRectF>> cells_;
};

// With the room that is left around it.
QRectF spread(const QRectF& box, const Label& label) {
  const double over = std::max(kLines, label.over);
  return box.adjusted(-kApart, -over, kApart, over);
}

QPointF endOf(const Label& label) {
  return label.end.value_or(label.middle);
}

// A label that was moved so far that it may seem to name what lies beside.
bool isFar(const Label& label, const QRectF& box) {
  const QPointF moved = box.center() - label.middle;
  return std::hypot(moved.x(), moved.y()) > label.near;
}

// Near, with a line where it was moved far.
PlacedLabel placedNear(Label label, const QRectF& box) {
  const bool afar = isFar(label, box);
  return {std::move(label), box, afar};
}

// The middle first, then further off: shares of the way the label may be moved.
constexpr std::array<std::pair<double, double>, 13> kMoves{{{0, 0},
                                                            {0, 0.5},
                                                            {0, -0.5},
                                                            {0, 1},
                                                            {0, -1},
                                                            {0.5, 0},
                                                            {-0.5, 0},
                                                            {1, 0},
                                                            {-1, 0},
                                                            {0.7, 0.7},
                                                            {-0.7, 0.7},
                                                            {0.7, -0.7},
                                                            {-0.7, -0.7}}};

std::optional<QRectF> placeFor(const Label& label, const Taken& taken) {
  const QSizeF size = sizeOf(label);
  if (size.width() > label.room || size.width() * size.height() > label.ground) return std::nullopt;
  for (const auto& [across, down] : kMoves) {
    if ((across != 0.0 && label.aside <= 0.0) || (down != 0.0 && label.slide <= 0.0)) continue;
    QRectF box(QPointF(), size);
    box.moveCenter(label.middle + QPointF(across * label.aside, down * label.slide));
    if (taken.meets(spread(box, label))) continue;
    if (!label.allowed || label.allowed(box)) return box;
  }
  return std::nullopt;
}

// The nearest free place round the middle.
std::optional<QRectF> placeAfar(const Label& label, const Taken& taken) {
  const QSizeF size = sizeOf(label);
  for (double away = kAfarStep; away <= kFarthest; away += kAfarStep)
    for (int way = 0; way < kWays; ++way) {
      const double angle = 2.0 * std::numbers::pi * way / kWays;
      QRectF box(QPointF(), size);
      box.moveCenter(label.middle + QPointF(std::cos(angle), std::sin(angle)) * away);
      if (!taken.meets(spread(box, label))) return box;
    }
  return std::nullopt;
}

// As it is, with the first line alone, with a line from afar, or in brief.
std::optional<PlacedLabel> place(Label wish, const Taken& taken) {
  if (const auto box = placeFor(wish, taken)) return placedNear(std::move(wish), *box);
  if (wish.lines.size() > 1) {
    wish.lines = {wish.lines.first()};
    if (const auto box = placeFor(wish, taken)) return placedNear(std::move(wish), *box);
  }
  const bool soonInBrief = wish.sooner && !wish.brief.isEmpty();
  if (wish.always && !soonInBrief)
    if (const auto box = placeAfar(wish, taken)) return PlacedLabel{std::move(wish), *box, true};
  if (wish.brief.isEmpty()) return std::nullopt;
  wish.lines = {wish.brief};
  if (const auto box = placeFor(wish, taken)) return placedNear(std::move(wish), *box);
  if (wish.always && soonInBrief)
    if (const auto box = placeAfar(wish, taken)) return PlacedLabel{std::move(wish), *box, true};
  return std::nullopt;
}

// The words as one path, from the top left corner of their box.
QPainterPath pathOf(const PlacedLabel& placed) {
  QPainterPath path;
  double top = 0.0;
  for (qsizetype i = 0; i < placed.label.lines.size(); ++i) {
    const QFont& font = fontOf(placed.label, i);
    const QFontMetricsF metrics(font);
    const double mark = markWidth(placed.label, i);
    const double width = metrics.horizontalAdvance(placed.label.lines[i]) + mark;
    path.addText(QPointF((placed.box.width() - width) / 2.0 + mark, top + metrics.ascent()), font,
                 placed.label.lines[i]);
    top += metrics.height();
  }
  return path;
}

// Of the icon before the first line, from the top left corner of the box.
QRectF markBox(const PlacedLabel& placed) {
  const double mark = markWidth(placed.label, 0), side = mark - kMarkGap;
  const QSizeF line = sizeOf(placed.label.lines.first(), placed.label.font);
  return {(placed.box.width() - line.width() - mark) / 2.0, (line.height() - side) / 2.0, side,
          side};
}

void paintMark(QPainter& painter, const PlacedLabel& placed, const QColor& halo) {
  if (placed.label.mark.isEmpty()) return;
  const QRectF box = markBox(placed);
  painter.setPen(Qt::NoPen);
  painter.setBrush(halo);
  painter.drawRoundedRect(box.adjusted(-1, -1, 1, 1), 3.0, 3.0);
  paintIcon(painter, placed.label.mark, box);
}

QPixmap drawPicture(const PlacedLabel& placed, double dpr, const QColor& halo) {
  const QSizeF size = placed.box.size() + QSizeF(2.0 * kHalo, 2.0 * kHalo);
  QPixmap picture((size * dpr).toSize() + QSize(1, 1));
  picture.setDevicePixelRatio(dpr);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(kHalo, kHalo);
  const QPainterPath path = pathOf(placed);
  painter.strokePath(path, QPen(halo, kHalo, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.fillPath(path, placed.label.ink);
  paintMark(painter, placed, halo);
  return picture;
}

// Kept for all labels that read alike, whatever the scale.
QPixmap pictureOf(const PlacedLabel& placed, double dpr, const QColor& halo) {
  const Label& label = placed.label;
  const QString key =
      QStringLiteral("label/%1/%2/%3/%4/%5/%6/%7")
          .arg(dpr)
          .arg(label.ink.rgba())
          .arg(halo.rgba())
          .arg(label.font.key(), label.otherFont.key(), label.lines.join('\n'), label.mark);
  QPixmap picture;
  if (QPixmapCache::find(key, &picture)) return picture;
  picture = drawPicture(placed, dpr, halo);
  QPixmapCache::insert(key, picture);
  return picture;
}

}  // namespace

QRectF reachOf(const PlacedLabel& placed) {
  const QPointF to = endOf(placed.label);
  const QRectF end(to - QPointF(1, 1), QSizeF(2, 2));
  return (placed.afar ? placed.box | end : placed.box).adjusted(-4, -4, 4, 4);
}

std::vector<PlacedLabel> placeLabels(std::vector<Label> wishes, std::vector<QRectF> taken) {
  std::stable_sort(wishes.begin(), wishes.end(),
                   [](const Label& a, const Label& b) { return a.weight > b.weight; });
  Taken occupied;
  for (const QRectF& box : taken) occupied.add(box);
  QHash<std::int64_t, std::pair<int, int>> sets;  // placed, wished
  std::vector<PlacedLabel> placed;
  for (Label& wish : wishes) {
    auto& [found, wished] = sets[wish.set];
    ++wished;
    auto label = place(std::move(wish), occupied);
    if (!label) continue;
    ++found;
    occupied.add(label->box);
    placed.push_back(std::move(*label));
  }
  std::erase_if(placed, [&](const PlacedLabel& label) {
    const auto [found, wished] = sets.value(label.label.set);
    return label.label.set != 0 && found < kLeastOfSet * wished;
  });
  return placed;
}

void paintLabelLine(QPainter& painter, const PlacedLabel& placed, QPointF origin,
                    const QColor& halo) {
  if (!placed.afar) return;
  const QPointF to = endOf(placed.label);
  const QPointF from(std::clamp(to.x(), placed.box.left(), placed.box.right()),
                     std::clamp(to.y(), placed.box.top(), placed.box.bottom()));
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  for (const auto& [colour, width] : {std::pair(halo, 3.0), std::pair(placed.label.ink, 1.0)}) {
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(origin + from, origin + to);
  }
  painter.setBrush(placed.label.ink);
  painter.drawEllipse(origin + to, kEnd, kEnd);
  painter.restore();
}

void paintLabel(QPainter& painter, PlacedLabel& placed, QPointF origin, const QColor& halo) {
  const double dpr = painter.device()->devicePixelRatioF();
  if (placed.picture.isNull() || placed.picture.devicePixelRatio() != dpr)
    placed.picture = pictureOf(placed, dpr, halo);
  const QPointF corner = origin + placed.box.topLeft() - QPointF(kHalo, kHalo);
  painter.drawPixmap(corner.toPoint(), placed.picture);
}

}  // namespace tussock
