// SPDX-License-Identifier: MIT
#include "app/canvas/reading_marks.h"

#include <cmath>
#include <QCoreApplication>
#include <QLocale>

#include "app/look/theme.h"

namespace tussock {

namespace {
constexpr double kBelow = 31.0;  // pixels under the reading, beneath what was seen
}

void ReadingMarks::take(const std::vector<ReadingCompared>& compared, const Yard& yard) {
  marks_.clear();
  for (const ReadingCompared& each : compared)
    if (const SunReading* reading = yard.sunReadings.find(each.reading))
      marks_.push_back({reading->at, QCoreApplication::translate("Sun", "%1 h computed")
                                         .arg(QLocale().toString(each.computed, 'f', 1))});
}

void ReadingMarks::paint(QPainter& painter, const SceneMapping& mapping,
                         const CanvasLook& look) const {
  const QRectF view(QPointF(), mapping.view());
  std::vector<Label> wishes;
  for (const Mark& mark : marks_) {
    Label label{{mark.words}, fontFor(TextRole::Note), {}, look.theme.ink};
    label.middle = mapping.toPixels(mark.at) + QPointF(0.0, kBelow);
    if (view.contains(label.middle)) wishes.push_back(std::move(label));
  }
  for (PlacedLabel& placed : placeLabels(std::move(wishes), {}))
    paintLabel(painter, placed, {}, look.theme.paper);
}

}  // namespace tussock
