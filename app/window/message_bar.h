// SPDX-License-Identifier: MIT
// A quiet bar at the top of the canvas: what went wrong or what to know, and the way out.
#pragma once

#include <QFrame>

class QLabel;

namespace tussock {

class MessageBar : public QFrame {
  Q_OBJECT

 public:
  explicit MessageBar(QWidget* parent = nullptr);
  void tell(const QString& words);
  void dismiss();
  [[nodiscard]] QString words() const;

 private:
  QLabel* words_;
};

}  // namespace tussock
