// SPDX-License-Identifier: MIT
#include "app/canvas/finding_marks.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <QPixmap>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "core/checks/registry.h"

namespace tussock {

namespace {

constexpr double kSamePlace = 0.05;  // metres; marks nearer than this stand side by side

constexpr int kOutline = 2;  // pixels of paper around a mark
constexpr int kOutlineSteps = 16;

// The marks' colours read on paper (4.5:1 and more), so a mark with paper around it is told from
// any ground: where its own colour fails the outline does not, nor the other way round.
QPixmap outlined(const QPixmap& mark, const QColor& paper) {
  const double dpr = mark.devicePixelRatio();
  QPixmap shape = mark;
  QPainter tint(&shape);
  tint.setCompositionMode(QPainter::CompositionMode_SourceIn);
  tint.fillRect(shape.rect(), paper);
  tint.end();
  const int around = int(std::lround(2.0 * kOutline * dpr));
  QPixmap picture(mark.size() + QSize(around, around));
  picture.setDevicePixelRatio(dpr);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  const QPointF middle(kOutline, kOutline);
  for (int i = 0; i < kOutlineSteps; ++i) {
    const double turn = 2.0 * std::numbers::pi * i / kOutlineSteps;
    painter.drawPixmap(middle + kOutline * QPointF(std::cos(turn), std::sin(turn)), shape);
  }
  painter.drawPixmap(middle, mark);
  return picture;
}

// The upper rim, so that a mark hides neither the middle of what it is about nor its label.
Point rimOf(const Polygon& place) {
  return *std::max_element(place.outer.begin(), place.outer.end(),
                           [](Point a, Point b) { return a.y < b.y; });
}

}  // namespace

void FindingMarks::take(const std::vector<Finding>& findings, const Yard& yard) {
  marks_.clear();
  for (const Finding& finding : findings)
    if (!finding.place.empty() && !finding.place.front().empty() && !acceptanceOf(yard, finding))
      marks_.push_back({rimOf(finding.place.front()), finding.severity, keyOf(finding)});
  // Alerts are painted last, over the others.
  std::stable_sort(marks_.begin(), marks_.end(), [](const FindingMark& a, const FindingMark& b) {
    return a.severity < b.severity;
  });
  for (std::size_t i = 0; i < marks_.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (distance(marks_[i].at, marks_[j].at) < kSamePlace) marks_[i].at.x += 0.3;
}

QRectF FindingMarks::boxOf(const FindingMark& mark, const SceneMapping& mapping) {
  QRectF box(0.0, 0.0, kSide, kSide);
  box.moveCenter(mapping.toPixels(mark.at));
  return box;
}

const FindingMark* FindingMarks::at(QPointF pixels, const SceneMapping& mapping) const {
  for (auto mark = marks_.rbegin(); mark != marks_.rend(); ++mark)
    if (boxOf(*mark, mapping).contains(pixels)) return &*mark;
  return nullptr;
}

void FindingMarks::paint(QPainter& painter, const SceneMapping& mapping) const {
  const QRectF view(QPointF(), mapping.view());
  const double dpr = painter.device()->devicePixelRatioF();
  std::map<Severity, QPixmap> pictures;
  for (const FindingMark& mark : marks_) {
    const QRectF box = boxOf(mark, mapping);
    if (!view.intersects(box)) continue;
    QPixmap& picture = pictures[mark.severity];
    if (picture.isNull())
      picture = outlined(icon(findingMark(mark.severity)).pixmap(box.size().toSize(), dpr),
                         currentTheme().paper);
    painter.drawPixmap(box.topLeft().toPoint() - QPoint(kOutline, kOutline), picture);
  }
}

}  // namespace tussock
