// SPDX-License-Identifier: MIT
#include "app/panels/flow_layout.h"

#include <algorithm>

namespace tussock {

FlowLayout::FlowLayout(int horizontalGap, int verticalGap)
    : horizontalGap_(horizontalGap), verticalGap_(verticalGap) {
  setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
  while (QLayoutItem* item = takeAt(0)) delete item;
}

QLayoutItem* FlowLayout::takeAt(int index) {
  return index >= 0 && index < items_.size() ? items_.takeAt(index) : nullptr;
}

// Calls place(item, rect) for each; gives the height used.
template <class Place>
int FlowLayout::flow(const QRect& rect, Place place) const {
  int x = rect.x(), y = rect.y(), lineHeight = 0;
  for (QLayoutItem* item : items_) {
    if (item->isEmpty()) continue;
    const QSize size = item->sizeHint();
    if (x > rect.x() && x + size.width() > rect.right() + 1) {
      x = rect.x();
      y += lineHeight + verticalGap_;
      lineHeight = 0;
    }
    place(item, QRect(QPoint(x, y), size));
    x += size.width() + horizontalGap_;
    lineHeight = std::max(lineHeight, size.height());
  }
  return y + lineHeight - rect.y();
}

int FlowLayout::heightForWidth(int width) const {
  return flow(QRect(0, 0, width, 0), [](QLayoutItem*, const QRect&) {});
}

void FlowLayout::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  flow(rect, [](QLayoutItem* item, const QRect& place) { item->setGeometry(place); });
}

QSize FlowLayout::sizeHint() const {
  return minimumSize();
}

QSize FlowLayout::minimumSize() const {
  QSize size;
  for (const QLayoutItem* item : items_) size = size.expandedTo(item->minimumSize());
  return size;
}

}  // namespace tussock
