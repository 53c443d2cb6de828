// SPDX-License-Identifier: MIT
// Other species for the one of a drift that cannot be had: how alike, how many plants each would
// need, what findings it would cause; one press puts it in place of all drifts of the species.
#pragma once

#include <QWidget>

#include "app/document/substitutes.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class SubstituteView : public QWidget {
  Q_OBJECT

 public:
  SubstituteView(Document& document, Substitutes& substitutes, Id<Drift> drift,
                 QWidget* parent = nullptr);

  void refresh();

 private:
  void ask();
  void showFound();
  QWidget* rowFor(const Substitute& one);
  [[nodiscard]] QString countWords(const Substitute& one) const;
  [[nodiscard]] QString causedWords(const Substitute& one) const;
  [[nodiscard]] const Drift* drift() const;

  Document& document_;
  Substitutes& substitutes_;
  Id<Drift> id_;
  QPushButton* ask_;
  QLabel* said_;
  QWidget* rows_ = nullptr;
  QVBoxLayout* column_;
};

}  // namespace tussock
