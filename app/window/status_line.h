// SPDX-License-Identifier: MIT
// The line along the bottom: what to do next, where the pointer is and the sun there, what can be
// undone, when it was saved.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/document.h"

class QLabel;

namespace tussock {

class EditOrder;
class SunView;

class StatusLine : public QWidget {
  Q_OBJECT

 public:
  // `sun` tells the hours under the pointer.
  StatusLine(Document& document, const EditOrder& order, const SunView& sun,
             QWidget* parent = nullptr);

 public slots:
  void setHint(const QString& hint);
  void setPointer(tussock::Point at);
  void clearPointer();
  void setLength(const QString& length);

 private:
  void showUndo();
  void showPlace();
  void showSun(double share);

  Document& document_;
  const EditOrder& order_;
  const SunView& sun_;
  std::optional<Point> pointer_;  // where it is on the ground
  QLabel* hint_;
  QLabel* length_;
  QLabel* place_;
  QLabel* undo_;
  QLabel* saved_;
};

}  // namespace tussock
