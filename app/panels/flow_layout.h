// SPDX-License-Identifier: MIT
// Lays widgets in a line and goes on in the next when there is no room, as words on a page.
#pragma once

#include <QLayout>
#include <QList>

namespace tussock {

class FlowLayout : public QLayout {
 public:
  FlowLayout(int horizontalGap, int verticalGap);
  ~FlowLayout() override;

  void addItem(QLayoutItem* item) override { items_.append(item); }
  [[nodiscard]] int count() const override { return int(items_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override { return items_.value(index); }
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  void setGeometry(const QRect& rect) override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSize() const override;

 private:
  template <class Place>
  int flow(const QRect& rect, Place place) const;

  QList<QLayoutItem*> items_;
  int horizontalGap_;
  int verticalGap_;
};

}  // namespace tussock
