// SPDX-License-Identifier: MIT
// What fills the window, at least as large as it must be: a screen too small for all of it, such as
// 1440 x 900 at twice the size, shows it in parts.
#pragma once

#include <QScrollArea>

namespace tussock {

class PagesScroll : public QScrollArea {
  Q_OBJECT

 public:
  explicit PagesScroll(QWidget* pages, QWidget* parent = nullptr);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit();
};

}  // namespace tussock
