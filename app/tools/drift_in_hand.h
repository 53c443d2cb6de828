// SPDX-License-Identifier: MIT
// A species carried from the bench: over a bed it shows the very drift that would be planted.
#pragma once

#include <optional>
#include <QObject>

#include "app/canvas/canvas.h"
#include "core/planting/edit_drift.h"

namespace tussock {

class DriftInHand : public QObject {
  Q_OBJECT

 public:
  static constexpr int kUsualCount = 7;

  explicit DriftInHand(Canvas& canvas, QObject* parent = nullptr)
      : QObject(parent), canvas_(canvas) {}

  // How a species is carried from the bench.
  [[nodiscard]] static QList<GestureWords> gestures();

  void lift(const QString& botanicalName);
  // Pixels of the canvas; outside of it too. With Shift the drift follows the way from there on.
  void carry(QPointF onCanvas, Qt::KeyboardModifiers modifiers = {});
  void stepCount(int direction);
  void drop(QPointF onCanvas);
  void putBack();

  [[nodiscard]] bool holding() const { return species_ != nullptr; }
  [[nodiscard]] int count() const { return count_; }
  // What would be planted; nothing where there is no bed or no room.
  [[nodiscard]] const std::optional<DriftEdit>& planned() const { return planned_; }

 signals:
  void hint(const QString& words);

 private:
  void plan();
  void show();
  void drawAlong(Qt::KeyboardModifiers modifiers);
  [[nodiscard]] DriftEdit plannedAlong(IdSource& ids) const;
  [[nodiscard]] QString note() const;
  void clear();

  Canvas& canvas_;
  const Species* species_ = nullptr;
  int count_ = kUsualCount;
  std::optional<QPointF> at_;
  Polyline line_;  // the way carried with Shift held
  std::optional<DriftEdit> planned_;
  std::int64_t nextId_ = 1;  // after the ids of the drift planned
};

}  // namespace tussock
