// SPDX-License-Identifier: MIT
// Two arrangements of the selected bed side by side, across the bench: pictures, counts, what the
// checks find, and the rules that one keeps better.
#pragma once

#include <array>
#include <optional>
#include <QWidget>

#include "app/document/document.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;

namespace tussock {

class ArrangementPicture;
class ScorePairView;

class CompareDesk : public QWidget {
  Q_OBJECT

 public:
  explicit CompareDesk(Document& document, QWidget* parent = nullptr);

 signals:
  void left();  // back to the plants

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  // One of the two: the bed as it is on the ground where there is no id.
  struct Side {
    std::optional<Id<Arrangement>> shown;
    QWidget* box = nullptr;
    QHBoxLayout* place = nullptr;  // of the picture
    QComboBox* choice = nullptr;
    QLabel* facts = nullptr;
    QPushButton* plant = nullptr;
  };
  void addHead();
  void makeBody();
  [[nodiscard]] QWidget* makeMiddle();
  [[nodiscard]] QWidget* makeSide(Side& side, const QString& name);
  void follow();
  [[nodiscard]] std::optional<Id<Arrangement>> lastOther() const;
  void refresh();
  void offer(Side& side);
  void draw(Side& side);
  [[nodiscard]] Yard yardWith(const Side& side) const;
  void plant(const Side& side);

  Document& document_;
  std::optional<Id<Bed>> bed_;
  std::array<Side, 2> sides_;
  QLabel* title_ = nullptr;
  QLabel* empty_ = nullptr;
  QWidget* body_ = nullptr;
  QLabel* same_ = nullptr;
  ScorePairView* scores_ = nullptr;
  QLabel* manner_ = nullptr;  // where the two are scored otherwise
};

}  // namespace tussock
