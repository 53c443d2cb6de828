// SPDX-License-Identifier: MIT
// A bed with its drifts as a small plan, north up, to compare arrangements by.
#pragma once

#include <optional>
#include <QAbstractButton>
#include <QPainterPath>
#include <QTransform>
#include <vector>

#include "app/document/document.h"

namespace tussock {

class ArrangementPicture : public QAbstractButton {
  Q_OBJECT

 public:
  ArrangementPicture(Document& document, Id<Bed> bed, std::vector<KeptDrift> drifts,
                     QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override { return {132, 84}; }
  // What stands at a place of the picture: the species, how many here and in all.
  [[nodiscard]] QString wordsAt(QPointF at);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  // A drift as it is drawn, in metres.
  struct Shape {
    QPainterPath outline;
    QColor colour;
    const KeptDrift* drift = nullptr;
  };
  [[nodiscard]] QTransform onPicture(const Bed& bed) const;  // from metres to pixels
  void shapeDrifts();
  [[nodiscard]] Shape shapeOf(const KeptDrift& drift) const;
  void paintBed(QPainter& painter, const Bed& bed) const;
  void paintDrifts(QPainter& painter, double scale) const;

  Document& document_;
  Id<Bed> bed_;
  std::vector<KeptDrift> drifts_;
  std::vector<Shape> shapes_;  // once they are asked for
  bool dark_ = false;          // the theme they are for
};

}  // namespace tussock
