// SPDX-License-Identifier: MIT
#include "app/tools/barrier_tool.h"

#include "core/edit/draft.h"

namespace tussock {

namespace {

// Common sizes to start from; they are set beside the drawing.
Barrier usual(BarrierKind kind) {
  Barrier barrier;
  barrier.kind = kind;
  switch (kind) {
    case BarrierKind::Wall:
      barrier.height = Length::metres(1.5);
      barrier.thickness = Length::centimetres(20);
      break;
    case BarrierKind::Fence:
      barrier.height = Length::metres(1.8);
      barrier.thickness = Length::centimetres(10);
      barrier.openness = 0.1;
      break;
    case BarrierKind::Hedge:
      barrier.height = Length::metres(1.5);
      barrier.thickness = Length::centimetres(80);
      barrier.openness = 0.05;
      break;
  }
  return barrier;
}

}  // namespace

QStringList BarrierTool::ways() const {
  return {QObject::tr("Wall"), QObject::tr("Fence"), QObject::tr("Hedge")};
}

QString BarrierTool::what() const {
  switch (kind_) {
    case BarrierKind::Wall:
      return QObject::tr("the wall");
    case BarrierKind::Fence:
      return QObject::tr("the fence");
    case BarrierKind::Hedge:
      return QObject::tr("the hedge");
  }
  return {};
}

ChangeSet BarrierTool::edit(const std::vector<Point>& corners) {
  Barrier barrier = usual(kind_);
  barrier.id = document().ids().take<Barrier>();
  barrier.name = freshName(document().yard().barriers, ways().at(way()));
  barrier.line = corners;
  Draft draft(document().yard());
  draft.put(std::move(barrier));
  return draft.finish(QObject::tr("Draw %1").arg(ways().at(way()).toLower()).toStdString());
}

}  // namespace tussock
