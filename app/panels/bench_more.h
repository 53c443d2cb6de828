// SPDX-License-Identifier: MIT
// The second row of the bench's filters, shown on demand: the order of the cards, what is left out,
// and the finer filters.
#pragma once

#include <QWidget>

#include "core/catalog/catalogue.h"
#include "core/catalog/choose.h"
#include "core/units/measure_text.h"

class QComboBox;
class QPushButton;

namespace tussock {

class BenchMore : public QWidget {
  Q_OBJECT

 public:
  explicit BenchMore(QWidget* parent = nullptr);

  // Puts what is chosen here into the choice.
  void addTo(Choice& choice) const;
  [[nodiscard]] bool wantsLeftOut() const;
  // The families and colours there are to choose from; the state is that of the yard.
  void offer(const Catalogue& facts, const std::string& state, UnitSystem units);
  void setPlace(bool any);  // whether a bed or point is asked about
  void showDeer(DeerAbout about, bool writable);

 signals:
  void changed();
  void deerSaid(tussock::DeerAbout about);  // of the whole yard, to be kept in it

 private:
  void makeCombos(QWidget* row);
  void makePlaceChips(QWidget* row);
  void makeTraitChips(QWidget* row);
  QComboBox* makeCombo(QWidget* row, const char* name, const QString& says);
  void offerHeights(UnitSystem units);
  void offerState(const std::string& state);

  std::set<Layer> layers_;
  std::set<Trait> traits_;
  std::string state_;
  QPushButton* leftOut_ = nullptr;
  QPushButton* native_ = nullptr;
  QPushButton* deer_ = nullptr;
  QComboBox* order_ = nullptr;
  QComboBox* month_ = nullptr;
  QComboBox* colour_ = nullptr;
  QComboBox* family_ = nullptr;
  QComboBox* height_ = nullptr;
};

}  // namespace tussock
