// SPDX-License-Identifier: MIT
// Escape stops a filling that is under way, before it deselects anything; what the tool in hand is
// in the middle of, or a field that has a use for the key, comes first.
#pragma once

#include <QObject>

namespace tussock {

class Canvas;
class Filling;

class EscapeStops : public QObject {
  Q_OBJECT

 public:
  // The keys that no part of the window had a use for come to the window itself.
  EscapeStops(Canvas& canvas, Filling& filling, QObject& window);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  Canvas& canvas_;
  Filling& filling_;
};

}  // namespace tussock
