// SPDX-License-Identifier: MIT
// A mark on the plan for each open finding, told apart by shape and colour.
#pragma once

#include <QPainter>
#include <QRectF>
#include <vector>

#include "app/canvas/scene_mapping.h"
#include "core/checks/finding.h"

namespace tussock {

struct FindingMark {
  Point at;
  Severity severity = Severity::Hint;
  std::string key;
};

class FindingMarks {
 public:
  static constexpr double kSide = 20.0;  // pixels

  void take(const std::vector<Finding>& findings, const Yard& yard);  // accepted ones stay out
  [[nodiscard]] const std::vector<FindingMark>& marks() const { return marks_; }
  [[nodiscard]] static QRectF boxOf(const FindingMark& mark, const SceneMapping& mapping);
  [[nodiscard]] const FindingMark* at(QPointF pixels, const SceneMapping& mapping) const;
  void paint(QPainter& painter, const SceneMapping& mapping) const;

 private:
  std::vector<FindingMark> marks_;
};

}  // namespace tussock
