// SPDX-License-Identifier: MIT
// Beside each sun reading, while the sun is shown: what is computed there and the difference.
#pragma once

#include <QPainter>
#include <vector>

#include "app/canvas/canvas_look.h"
#include "app/canvas/label.h"
#include "app/canvas/scene_mapping.h"
#include "core/sun/survey_fit.h"

namespace tussock {

class ReadingMarks {
 public:
  void take(const std::vector<ReadingCompared>& compared, const Yard& yard);
  void paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) const;

 private:
  struct Mark {
    Point at;
    QString words;
  };
  std::vector<Mark> marks_;
};

}  // namespace tussock
