// SPDX-License-Identifier: MIT
#include "app/window/tool_set.h"

#include "app/tools/barrier_tool.h"
#include "app/tools/bed_tool.h"
#include "app/tools/building_tool.h"
#include "app/tools/hole_tool.h"
#include "app/tools/lot_line_tool.h"
#include "app/tools/measure_tool.h"
#include "app/tools/paving_tool.h"
#include "app/tools/photo_tool.h"
#include "app/tools/place_tool.h"
#include "app/tools/split_tool.h"
#include "app/tools/sun_reading_tool.h"
#include "app/tools/tree_tool.h"

namespace tussock {

ToolSet::ToolSet(Canvas& canvas) {
  select_ = add<SelectTool>("toolSelect", QObject::tr("Select"), "select", "V", canvas);
  add<BedTool>("toolBed", QObject::tr("Bed"), "bed", "B", canvas);
  add<HoleTool>("toolHole", QObject::tr("Hole"), "hole", "O", canvas);
  add<SplitTool>("toolSplit", QObject::tr("Split"), "split", "X", canvas);
  add<BuildingTool>("toolBuilding", QObject::tr("Building"), "building", "G", canvas);
  add<BarrierTool>("toolBarrier", QObject::tr("Wall"), "wall", "W", canvas);
  add<TreeTool>("toolTree", QObject::tr("Tree"), "tree", "T", canvas);
  add<PavingTool>("toolPaving", QObject::tr("Paving"), "paving", "P", canvas);
  add<SteppingPlaceTool>("toolStep", QObject::tr("Step"), "stepping-place", "S", canvas);
  add<WaterPointTool>("toolWater", QObject::tr("Water"), "water", "A", canvas);
  add<LotLineTool>("toolLotLine", QObject::tr("Lot line"), "lot-line", "L", canvas);
  add<PhotoTool>("toolPhoto", QObject::tr("Photo"), "photo", "H", canvas);
  add<MeasureTool>("toolMeasure", QObject::tr("Measure"), "measure", "M", canvas);
  add<SunReadingTool>("toolReading", QObject::tr("Sun reading"), "sun-reading", "Y", canvas);
  entries_.back().onRail = false;  // the sun strip has it
}

template <class T>
T* ToolSet::add(const char* name, const QString& label, const char* icon, const char* key,
                Canvas& canvas) {
  auto tool = std::make_unique<T>(canvas);
  T* raw = tool.get();
  entries_.push_back({QString::fromLatin1(name), label, QString::fromLatin1(icon),
                      QKeySequence(QString::fromLatin1(key)), std::move(tool), true});
  return raw;
}

Tool* ToolSet::find(const QString& name) const {
  for (const ToolEntry& entry : entries_)
    if (entry.name == name) return entry.tool.get();
  return nullptr;
}

}  // namespace tussock
