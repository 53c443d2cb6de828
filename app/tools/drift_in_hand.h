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

  void lift(const QString& botanicalName);
  void carry(QPointF onCanvas);  // pixels of the canvas; outside of it too
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
  void clear();

  Canvas& canvas_;
  const Species* species_ = nullptr;
  int count_ = kUsualCount;
  std::optional<QPointF> at_;
  std::optional<DriftEdit> planned_;
  std::int64_t nextId_ = 1;  // after the ids of the drift planned
};

}  // namespace tussock
