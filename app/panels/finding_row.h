// SPDX-License-Identifier: MIT
// One finding: its mark, what was found and what would mend it, where the limit is from. A click on
// it shows the place. Buttons to show it, to settle its plants, to accept it with a reason, to take
// that back.
#pragma once

#include <QWidget>

#include "app/document/document.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace tussock {

class FindingRow : public QWidget {
  Q_OBJECT

 public:
  FindingRow(Document& document, Finding finding, QWidget* parent = nullptr);

  void show(const Finding& finding);  // the same finding, as it is now
  [[nodiscard]] const Finding& finding() const { return finding_; }

 signals:
  void chosen(const tussock::Finding& finding);
  void asking(QWidget* part);       // for words: the part should be seen
  void told(const QString& words);  // what settling left
  void settled();                   // the keys are meant for the plan now

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* makeButtons();
  QWidget* makeReason();
  void showReason(bool shown);
  void accept();
  void reopen();
  void settle();
  void refresh();

  Document& document_;
  Finding finding_;
  QLabel* title_;
  QLabel* text_;
  QLabel* limit_;
  QLabel* why_;
  QWidget* buttons_ = nullptr;
  QPushButton* settle_ = nullptr;
  QPushButton* accept_ = nullptr;
  QPushButton* reopen_ = nullptr;
  QWidget* reasonRow_ = nullptr;
  QLineEdit* reason_ = nullptr;
  QLabel* wrong_ = nullptr;
};

}  // namespace tussock
