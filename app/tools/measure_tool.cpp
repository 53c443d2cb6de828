// SPDX-License-Identifier: MIT
#include "app/tools/measure_tool.h"

#include "core/units/measure_text.h"

namespace tussock {

Length MeasureTool::total() const {
  double metres = 0.0;
  for (std::size_t i = 1; i < corners().size(); ++i)
    metres += distance(corners()[i - 1], corners()[i]);
  return Length::metres(metres);
}

QString MeasureTool::hint() const {
  if (corners().size() < 2) return QObject::tr("Click from point to point to measure");
  const UnitSystem units = document().yard().settings.units;
  return QObject::tr("%1 in all · Enter or Escape starts afresh")
      .arg(QString::fromStdString(formatLength(total(), units)));
}

}  // namespace tussock
