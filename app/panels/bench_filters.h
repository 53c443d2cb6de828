// SPDX-License-Identifier: MIT
// What the bench asks of a species: a search field and chips that narrow, and a second row on
// demand.
#pragma once

#include <optional>
#include <QWidget>

#include "core/catalog/catalogue.h"
#include "core/catalog/choose.h"
#include "core/units/measure_text.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace tussock {

class BenchMore;

class BenchFilters : public QWidget {
  Q_OBJECT

 public:
  explicit BenchFilters(QWidget* parent = nullptr);

  [[nodiscard]] QLineEdit* search() const { return search_; }
  // As chosen; without a place.
  [[nodiscard]] Choice choice() const;
  // The families and colours there are to choose from; the state is that of the yard.
  void offer(const Catalogue& facts, const std::string& state, UnitSystem units);
  enum class PlaceKind { None, Bed, Point };
  void setPlace(PlaceKind kind);
  void setCount(const QString& words);
  void showDeer(DeerAbout about, bool writable);

 signals:
  void changed();
  void deerSaid(tussock::DeerAbout about);  // of the whole yard, to be kept in it

 private:
  QWidget* makeFirstRow();
  void makeSearch(QWidget* bar);
  QWidget* makeChips(QWidget* bar);

  PlantFilter filter_;
  bool fitsWanted_ = true;  // until someone turns it off
  PlaceKind place_ = PlaceKind::None;
  QLineEdit* search_ = nullptr;
  QPushButton* fits_ = nullptr;
  BenchMore* more_ = nullptr;
  QLabel* count_ = nullptr;
};

}  // namespace tussock
