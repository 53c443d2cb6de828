// SPDX-License-Identifier: MIT
// Where someone has seen how long the sun shines.
#include <QCoreApplication>
#include <QLocale>

#include "app/canvas/items.h"

namespace tussock {

namespace {

constexpr Length kReach = Length::centimetres(15);  // so that it can be picked
constexpr double kRing = 6.0;                       // pixels

class ReadingItem : public Item {
 public:
  explicit ReadingItem(const SunReading& reading)
      : Item(refTo(reading.id), Depth::Place), reading_(reading) {
    setArea({disc(reading.at, kReach)});
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const QPointF at = mapping.toPixels(reading_.at);
    painter.setPen(QPen(look.theme.ink, 1.6));
    painter.setBrush(look.theme.raised);
    painter.drawEllipse(at, kRing, kRing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.theme.caution);
    painter.drawEllipse(at, kRing / 2.0, kRing / 2.0);
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    const QString seen = QCoreApplication::translate("Sun", "%1 h seen")
                             .arg(QLocale().toString(reading_.hours, 'f', 1));
    Label label{{seen}, fontFor(TextRole::Note), {}, look.theme.ink};
    label.middle = mapping.toPixels(reading_.at) + QPointF(0.0, 16.0);
    label.weight = 15.0;
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
