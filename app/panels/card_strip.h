// SPDX-License-Identifier: MIT
// The row of species cards on the bench. Only the cards in view are painted. A card is picked up by
// pressing and dragging it, or with Enter; what happens on the way is told by signals.
#pragma once

#include <functional>
#include <QAbstractScrollArea>
#include <vector>

#include "core/catalog/species.h"
#include "core/units/measure_text.h"

namespace tussock {

class CardStrip : public QAbstractScrollArea {
  Q_OBJECT

 public:
  explicit CardStrip(QWidget* parent = nullptr);

  // The species must outlive the strip. Notes, if there are any, one for each, stand on the cards
  // in place of sizes and needs.
  void show(std::vector<const Species*> species, QStringList notes = {});
  void setUnits(UnitSystem units);
  void setEmptyText(const QString& text);
  [[nodiscard]] QString emptyText() const { return emptyText_; }
  // What else the tool tip of a card says, in a paragraph of its own.
  void setMore(std::function<QString(const Species&)> more) { more_ = std::move(more); }

  [[nodiscard]] const std::vector<const Species*>& species() const { return species_; }
  [[nodiscard]] const QStringList& notes() const { return notes_; }
  [[nodiscard]] const Species* current() const;
  void setCurrent(int index);
  [[nodiscard]] QRect cardRect(int index) const;        // in the viewport
  [[nodiscard]] int cardAt(const QPoint& point) const;  // -1 for none
  [[nodiscard]] bool carrying() const { return carrying_; }

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 signals:
  void lifted(const QString& botanicalName);
  void carried(const QPoint& globalPos, Qt::KeyboardModifiers modifiers);
  void dropped(const QPoint& globalPos);
  void putBack();
  void countStepped(int step);  // + or − pressed while a species is in hand
  void currentChanged();
  void factsWanted(const QString& botanicalName);  // double click, or the space bar

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void scrollContentsBy(int dx, int dy) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  bool event(QEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  bool keyWhileCarrying(QKeyEvent* event);
  void lift();
  void letGo();
  void reveal(int index);
  void updateScrollBar();
  [[nodiscard]] QString wordsOf(const Species& species) const;
  void setHovered(int index);

  std::vector<const Species*> species_;
  QStringList notes_;
  UnitSystem units_ = UnitSystem::FeetInches;
  QString emptyText_;
  std::function<QString(const Species&)> more_;
  int current_ = -1;
  int hovered_ = -1;
  QPoint pressedAt_;
  bool pressed_ = false;
  bool carrying_ = false;
};

}  // namespace tussock
