// SPDX-License-Identifier: MIT
// What the canvas asks of the tool in hand. A tool shows its work as a preview, and ends a gesture
// with one edit or none.
#pragma once

#include <QCursor>
#include <QKeyEvent>
#include <QList>
#include <QPainter>
#include <QPointF>
#include <QString>
#include <QStringList>

#include "core/geometry/point.h"

namespace tussock {

class SceneMapping;

struct PointerAt {
  Point site;
  QPointF pixels;
  Qt::KeyboardModifiers modifiers;
};

// What a key or a move of the pointer does, for the list of keys.
struct GestureWords {
  QString keys, does;
};

class Tool {
 public:
  virtual ~Tool() = default;

  [[nodiscard]] virtual QString hint() const = 0;  // what the next step is, for the status line
  // Every way the pointer and the keys work with it.
  [[nodiscard]] virtual QList<GestureWords> gestures() const = 0;
  [[nodiscard]] virtual QCursor cursor() const { return Qt::CrossCursor; }

  // Ways to use the tool, shown beside the rail while it is in hand; none when there is one way.
  [[nodiscard]] virtual QStringList ways() const { return {}; }
  [[nodiscard]] virtual int way() const { return 0; }
  virtual void setWay(int) {}

  // Whether it is of use on a yard that can only be looked at.
  [[nodiscard]] virtual bool onlyLooks() const { return false; }

  // Whether a click on a finding's mark shows the finding while this tool is in hand.
  [[nodiscard]] virtual bool readsMarks() const { return false; }

  virtual void press(const PointerAt&) {}
  virtual void move(const PointerAt&) {}     // with or without the button held
  virtual void release(const PointerAt&) {}  // of the left button
  virtual void doubleClick(const PointerAt& at) { press(at); }
  // False when the key means nothing to the tool.
  virtual bool key(const QKeyEvent&) { return false; }
  virtual void paint(QPainter&, const SceneMapping&) const {}
  // Whether it is in the middle of something that cancel() would leave.
  [[nodiscard]] virtual bool busy() const { return false; }
  // Leaves the yard as it is and nothing half drawn.
  virtual void cancel() {}
};

}  // namespace tussock
