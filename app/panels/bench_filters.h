// SPDX-License-Identifier: MIT
// What the bench asks of a species: a search field, chips that narrow, and in a second row, shown
// on demand, the order and the finer filters.
#pragma once

#include <optional>
#include <QWidget>

#include "core/catalog/catalogue.h"
#include "core/catalog/choose.h"
#include "core/units/measure_text.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace tussock {

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
  void makeFirstRow();
  void makeSecondRow();
  void makeCombos(QWidget* row);
  void offerHeights(UnitSystem units);
  void offerState(const std::string& state);
  QPushButton* makeChip(QWidget* row, const char* name, const QString& words);
  template <class E>
  void addChips(QWidget* row, std::set<E>& chosen,
                const std::vector<std::tuple<E, const char*, QString>>& chips);
  QComboBox* makeCombo(QWidget* row, const char* name, const QString& says);
  static void refill(QComboBox& combo, const QString& any, const std::set<std::string>& words);

  PlantFilter filter_;
  bool fitsWanted_ = true;  // until someone turns it off
  PlaceKind place_ = PlaceKind::None;
  std::string state_;
  QLineEdit* search_ = nullptr;
  QPushButton* fits_ = nullptr;
  QPushButton* leftOut_ = nullptr;
  QPushButton* native_ = nullptr;
  QPushButton* deer_ = nullptr;
  QPushButton* more_ = nullptr;
  QWidget* second_ = nullptr;
  QComboBox* order_ = nullptr;
  QComboBox* month_ = nullptr;
  QComboBox* colour_ = nullptr;
  QComboBox* family_ = nullptr;
  QComboBox* height_ = nullptr;
  QLabel* count_ = nullptr;
};

}  // namespace tussock
