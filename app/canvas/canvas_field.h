// SPDX-License-Identifier: MIT
// A small field on the canvas, for a length or a name. Enter takes it, Escape puts it away.
#pragma once

#include <functional>
#include <QFrame>

class QLabel;
class QLineEdit;

namespace tussock {

class CanvasField : public QFrame {
  Q_OBJECT

 public:
  // Gives what is wrong with the text, or nothing when it was taken.
  using Take = std::function<QString(const QString&)>;

  explicit CanvasField(QWidget* canvas);
  void ask(QPointF at, const QString& label, const QString& start, Take take);
  void dismiss();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void accept();
  void moveWithin(QPoint wanted);  // as near as the whole of it shows

  QLabel* label_;
  QLineEdit* edit_;
  QLabel* trouble_;
  Take take_;
};

}  // namespace tussock
