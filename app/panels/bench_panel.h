// SPDX-License-Identifier: MIT
// The bench along the bottom, where species wait to be placed: all of them, those that suit the
// selected bed or a point best first, or those left out there with the reason.
#pragma once

#include <optional>
#include <QWidget>
#include <string>
#include <utility>

#include "app/document/document.h"
#include "core/catalog/choose.h"

class QLineEdit;

namespace tussock {

class BenchFilters;
class CardStrip;
class CompareDesk;
class ListDesk;

class BenchPanel : public QWidget {
  Q_OBJECT

 public:
  explicit BenchPanel(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] QLineEdit* searchField() const;
  [[nodiscard]] CardStrip* cards() const { return cards_; }
  // What suits one point of the yard, until something else is selected.
  void askAt(Point at);
  // The plant list of the selected bed with its figures, in the place of the cards.
  void showList(bool shown);
  // Two arrangements of the selected bed side by side, in the place of the cards.
  void showArrangements();

 signals:
  void speciesLifted(const QString& botanicalName);
  void speciesCarried(const QPoint& globalPos, Qt::KeyboardModifiers modifiers);
  void speciesDropped(const QPoint& globalPos);
  void speciesPutBack();
  void countStepped(int step);  // + or − while a species is in hand
  void factsWanted(const QString& botanicalName);
  void pointAsked(std::optional<tussock::Point> at);  // none: asked no more
  void listShown(bool shown);

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  enum class Shows { Cards, List, Arrangements };
  void put(Shows shows);  // along the bench
  void connectCards();
  void connectDocument();
  void refresh();
  void takeFacts();
  // What of the settings the filters speak of: the state and the units.
  [[nodiscard]] std::pair<std::string, UnitSystem> offeredFor() const;
  void keepDeer(DeerAbout about);
  [[nodiscard]] const Bed* selectedBed() const;
  // The place asked about, with what is planted there now.
  [[nodiscard]] std::optional<RankRequest> request() const;
  [[nodiscard]] std::optional<RankRequest> steadyRequest();
  [[nodiscard]] QString countWords(ChoiceOf of) const;
  [[nodiscard]] QString emptyWords(Choice choice) const;
  [[nodiscard]] QString reasonsFor(const Species& species) const;
  [[nodiscard]] QString placeWords() const;

  Document& document_;
  BenchFilters* filters_;
  CardStrip* cards_;
  ListDesk* desk_;
  CompareDesk* compare_;
  std::optional<Point> point_;
  // What was planted when the bed or point was chosen: cards keep their order while one plants.
  std::pair<std::string, UnitSystem> offered_;
  std::optional<std::vector<Portion>> planted_;
  std::vector<Ranked> shown_;
};

}  // namespace tussock
