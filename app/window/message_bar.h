// SPDX-License-Identifier: MIT
// A quiet bar that floats at the top of what is being worked on: what went wrong or what to know,
// and the way out. Nothing moves to make room for it.
#pragma once

#include <QFrame>
#include <QPointer>

class QLabel;

namespace tussock {

class MessageBar : public QFrame {
  Q_OBJECT

 public:
  MessageBar();
  // Over the top of `area`, which owns it then, and under `above` while that is shown.
  void floatOver(QWidget& area, QWidget* above = nullptr);

  void tell(const QString& words);        // until the next edit, another tool or Escape
  void tellNotice(const QString& words);  // of what others did: one's own edits leave it
  void editMade();
  void dismiss();
  [[nodiscard]] QString words() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void place();

  QLabel* words_;
  QPointer<QWidget> above_;
  bool outlastsEdits_ = false;
};

}  // namespace tussock
