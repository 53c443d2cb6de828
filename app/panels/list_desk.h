// SPDX-License-Identifier: MIT
// The plant list of the selected bed with its figures beside it, across the bench.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/document.h"

class QHBoxLayout;
class QLabel;

namespace tussock {

class FiguresView;
class PlantListView;

class ListDesk : public QWidget {
  Q_OBJECT

 public:
  explicit ListDesk(Document& document, QWidget* parent = nullptr);

 signals:
  void left();  // back to the plants

 private:
  void addHead();
  void follow();
  void build(const Bed& bed);
  void refresh();

  Document& document_;
  std::optional<Id<Bed>> bed_;
  QLabel* title_ = nullptr;
  QLabel* empty_ = nullptr;
  QWidget* content_ = nullptr;
  QHBoxLayout* place_ = nullptr;
  PlantListView* list_ = nullptr;
  FiguresView* figures_ = nullptr;
};

}  // namespace tussock
