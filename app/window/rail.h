// SPDX-License-Identifier: MIT
// The rail at the left: the drawing tools with their names and keys.
#pragma once

#include <QWidget>
#include <vector>

class QActionGroup;
class QToolButton;

namespace tussock {

class ToolSet;

class Rail : public QWidget {
  Q_OBJECT

 public:
  // Makes one checkable action for each tool; they belong to `group`.
  Rail(const ToolSet& tools, QActionGroup& group, QWidget* parent = nullptr);

  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void place(int columns);

  std::vector<QToolButton*> buttons_;
};

}  // namespace tussock
