// SPDX-License-Identifier: MIT
// The arrangements of a bed side by side: the one on the ground, and those kept under a name.
#pragma once

#include <QWidget>

#include "app/document/filling.h"

class QVBoxLayout;

namespace tussock {

class ArrangementPicture;
class InlineField;

class ArrangementsView : public QWidget {
  Q_OBJECT

 public:
  ArrangementsView(Document& document, Filling& filling, Id<Bed> bed, QWidget* parent = nullptr);

  void refresh();
  // Keeps what stands in the bed under the next free name, with the seed it was planted from; the
  // name is then there to be typed over.
  void keep();

 private:
  struct Card {
    Id<Arrangement> arrangement;
    ArrangementPicture* picture;
    InlineField* name;
  };
  // Looks at what there is to show; false when it is what is shown already.
  [[nodiscard]] bool takeShown();
  void addCard(QLayout* flow, const Arrangement& arrangement);
  void showNames();
  [[nodiscard]] std::string nextName() const;

  Document& document_;
  Filling& filling_;
  Id<Bed> bed_;
  QVBoxLayout* column_;
  QWidget* content_ = nullptr;
  std::vector<KeptDrift> ground_;  // what is shown of the bed, and of what was kept
  std::vector<Arrangement> kept_;  // without their names
  std::vector<Card> cards_;
};

// Plants a kept arrangement, and says what of it found no room.
void plantArrangement(Document& document, Id<Arrangement> arrangement);

}  // namespace tussock
