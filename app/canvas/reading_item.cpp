// SPDX-License-Identifier: MIT
// Where someone has seen how long the sun shines.
#include <algorithm>
#include <optional>

#include "app/canvas/items.h"
#include "app/canvas/reading_words.h"

namespace tussock {

namespace {

constexpr Length kReach = Length::centimetres(15);  // so that it can be picked
constexpr double kRing = 6.0;                       // pixels
constexpr double kBelow = 17.0;                     // pixels from the ring to its words

class ReadingItem : public Item {
 public:
  explicit ReadingItem(const SunReading& reading)
      : Item(refTo(reading.id), Depth::Place), reading_(reading) {
    setArea({disc(reading.at, kReach)});
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const QPointF at = mapping.toPixels(reading_.at);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.theme.paper);
    painter.drawEllipse(at, kRing + 2.5, kRing + 2.5);
    painter.setPen(QPen(look.theme.ink, 1.6));
    painter.setBrush(look.theme.raised);
    painter.drawEllipse(at, kRing, kRing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.theme.caution);
    painter.drawEllipse(at, kRing / 2.0, kRing / 2.0);
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    const auto at = std::ranges::find(look.readings, reading_.id, &ReadingCompared::reading);
    const auto computed = at == look.readings.end() ? std::nullopt : std::optional(at->computed);
    Label label{
        {readingWords(reading_.hours, computed)}, fontFor(TextRole::Note), {}, look.theme.ink};
    label.middle = mapping.toPixels(reading_.at) + QPointF(0.0, kBelow);
    label.weight = 90.0;
    label.slide = 2.0 * kBelow;
    label.always = true;  // what was measured is never left out
    const QPointF ring(kRing + 3.0, kRing + 3.0);
    const QRectF mark(mapping.toPixels(reading_.at) - ring, mapping.toPixels(reading_.at) + ring);
    label.allowed = [mark](const QRectF& box) { return !box.intersects(mark); };
    labels.push_back(label);
  }

 private:
  SunReading reading_;
};

}  // namespace

std::unique_ptr<Item> makeReadingItem(const SunReading& reading) {
  return std::make_unique<ReadingItem>(reading);
}

}  // namespace tussock
