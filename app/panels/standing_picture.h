// SPDX-License-Identifier: MIT
// The selected bed as it looks from where people stand, in the week shown. The ground rises a
// little towards the back so that what stands behind shows; heights are true to the widths.
#pragma once

#include <optional>
#include <QPixmap>
#include <QWidget>

#include "app/document/document.h"
#include "core/planting/standing_view.h"

namespace tussock {

class StandingPicture : public QWidget {
  Q_OBJECT

 public:
  StandingPicture(Document& document, Id<Bed> bed, std::optional<int> week,
                  QWidget* parent = nullptr);

  void setWeek(std::optional<int> week);
  void refresh();
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  // The drift of the nearest plant drawn under a place of the widget, if any.
  [[nodiscard]] std::optional<Id<Drift>> driftAt(QPointF at) const;
  // Where a plant's foot is drawn.
  [[nodiscard]] std::optional<QPointF> footOf(Id<Plant> plant) const;
  [[nodiscard]] double pixelsPerMetre() const;
  // From where the bed is seen; or, where no one side is set, from where it is drawn.
  [[nodiscard]] QString caption() const;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  bool event(QEvent* event) override;

 private:
  [[nodiscard]] const Species* speciesOf(Id<Drift> drift) const;
  [[nodiscard]] QPointF foot(const StandingPlant& plant) const;
  [[nodiscard]] double heightShown() const;  // metres
  void paintPlants(QPainter& painter) const;
  void paintScale(QPainter& painter) const;

  Document& document_;
  Id<Bed> bed_;
  std::optional<int> week_;
  StandingView view_;
  double tallest_ = 0.0;  // metres
  QPixmap drawn_;         // null when it must be drawn again
};

}  // namespace tussock
