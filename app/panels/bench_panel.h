// SPDX-License-Identifier: MIT
// The bench along the bottom, where species wait to be placed.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/document.h"
#include "app/panels/bench_filter.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace tussock {

class CardStrip;

class BenchPanel : public QWidget {
  Q_OBJECT

 public:
  explicit BenchPanel(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] QLineEdit* searchField() const { return search_; }
  [[nodiscard]] CardStrip* cards() const { return cards_; }

 signals:
  void speciesLifted(const QString& botanicalName);
  void speciesCarried(const QPoint& globalPos, Qt::KeyboardModifiers modifiers);
  void speciesDropped(const QPoint& globalPos);
  void speciesPutBack();
  void countStepped(int step);  // + or − while a species is in hand

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* makeFilters();
  template <class E>
  void addChips(QWidget* row, std::set<E>& chosen,
                const std::vector<std::tuple<E, const char*, QString>>& chips);
  [[nodiscard]] QPushButton* makeChip(QWidget* parent, const QString& name, const QString& words);
  void connectCards();
  void refresh();
  [[nodiscard]] const Bed* selectedBed() const;
  [[nodiscard]] QString countWords(std::size_t shown) const;
  // What the bed offers, with what is planted there.
  [[nodiscard]] RankRequest requestOf(const Bed& bed) const;
  [[nodiscard]] QString emptyWords() const;
  [[nodiscard]] QString reasonsFor(const Species& species) const;

  Document& document_;
  BenchFilter filter_;
  bool fitsWanted_ = true;  // until someone turns it off
  QLineEdit* search_ = nullptr;
  QPushButton* fits_ = nullptr;
  QLabel* count_ = nullptr;
  CardStrip* cards_ = nullptr;
};

}  // namespace tussock
