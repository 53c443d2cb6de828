// SPDX-License-Identifier: MIT
// The rail at the left: the drawing tools with their names and keys.
#pragma once

#include <QWidget>

class QActionGroup;

namespace tussock {

class ToolSet;

class Rail : public QWidget {
  Q_OBJECT

 public:
  // Makes one checkable action for each tool; they belong to `group`.
  Rail(const ToolSet& tools, QActionGroup& group, QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace tussock
