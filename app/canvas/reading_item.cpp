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
constexpr double kEdge = 2.5;                       // and of paper around it
constexpr double kBelow = 17.0;                     // pixels from the ring to its words
constexpr double kBeside = 34.0;                    // that they may be moved aside
constexpr double kNear = 20.0;                      // without a line to the ring
constexpr double kOver = 2.0;                       // that stay free above and below them

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
    painter.drawEllipse(at, kRing + kEdge, kRing + kEdge);
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
    label.over = kOver;
    label.slide = 2.0 * kBelow;
    label.aside = kBeside;
    label.near = kNear;
    label.end = mapping.toPixels(reading_.at);
    label.brief = briefReading(reading_.hours, computed);
    label.always = label.sooner = true;  // what was measured is never left out
    labels.push_back(label);
  }

  void addTaken(std::vector<QRectF>& taken, const SceneMapping& mapping) const override {
    const QPointF ring(kRing + kEdge, kRing + kEdge);
    taken.emplace_back(mapping.toPixels(reading_.at) - ring, mapping.toPixels(reading_.at) + ring);
  }

 private:
  SunReading reading_;
};

}  // namespace

std::unique_ptr<Item> makeReadingItem(const SunReading& reading) {
  return std::make_unique<ReadingItem>(reading);
}

}  // namespace tussock
