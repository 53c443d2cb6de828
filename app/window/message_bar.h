// SPDX-License-Identifier: MIT
// A quiet bar at the top of the window: what went wrong or what to know, and the way out.
#pragma once

#include <QFrame>

class QLabel;

namespace tussock {

class MessageBar : public QFrame {
  Q_OBJECT

 public:
  explicit MessageBar(QWidget* parent = nullptr);
  void tell(const QString& words);
  // Told of one edit, most often of one that could not be made: the next that can puts it away.
  void tellOfEdit(const QString& words);
  void editMade();
  void dismiss();
  [[nodiscard]] QString words() const;

 private:
  QLabel* words_;
  bool ofEdit_ = false;
};

}  // namespace tussock
