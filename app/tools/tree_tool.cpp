// SPDX-License-Identifier: MIT
#include "app/tools/tree_tool.h"

#include <algorithm>

#include "app/tools/path_tool.h"
#include "core/edit/draft.h"

namespace tussock {

namespace {
constexpr double kClick = 6.0;         // pixels: a shorter drag is a click
constexpr double kLeastCrown = 0.3;    // metres
constexpr double kTallPerCrown = 2.4;  // height over crown radius to start from
}  // namespace

QString TreeTool::hint() const {
  return tree_ ? QObject::tr("Let go at the rim of the crown")
               : QObject::tr("Press at the trunk and drag to the rim of the crown");
}

QList<GestureWords> TreeTool::gestures() const {
  return {
      {QObject::tr("Press and drag"),
       QObject::tr("Plants a tree: from the trunk to the rim of the crown")},
      {QObject::tr("Click"), QObject::tr("Plants a tree of the usual size")},
      {QObject::tr("Escape"), QObject::tr("Plants none")},
  };
}

void TreeTool::press(const PointerAt& at) {
  Tree tree;
  tree.id = canvas_.document().ids().take<Tree>();
  tree.name = freshName(canvas_.document().yard().trees, QObject::tr("Tree"));
  tree.at = at.site;
  const LeafDays leaves = usualLeafDays(canvas_.document().yard().settings);
  tree.leafOn = leaves.on, tree.leafOff = leaves.off;
  tree_ = tree;
  canvas_.show(edit(at.site));
}

ChangeSet TreeTool::edit(Point rim) const {
  Tree tree = *tree_;
  const double radius = distance(tree.at, rim);
  if (canvas_.mapping().pixels(radius) > kClick) {
    tree.crownRadius = Length::metres(std::max(kLeastCrown, radius));
    tree.height = tree.crownRadius * kTallPerCrown;
    tree.crownBase = tree.height * 0.25;
  }
  Draft draft(canvas_.document().yard());
  draft.put(std::move(tree));
  return draft.finish(QObject::tr("Plant tree").toStdString());
}

void TreeTool::move(const PointerAt& at) {
  if (!tree_) return;
  canvas_.show(edit(at.site));
  const double radius = distance(tree_->at, at.site);
  canvas_.tellLength(QString::fromStdString(
      formatLength(Length::metres(radius), canvas_.document().yard().settings.units)));
}

void TreeTool::release(const PointerAt& at) {
  if (!tree_) return;
  const ChangeSet done = edit(at.site);
  const ObjectRef ref = refTo(tree_->id);
  cancel();
  if (canvas_.document().commit(done)) canvas_.document().select({ref});
}

bool TreeTool::key(const QKeyEvent& event) {
  if (event.key() != Qt::Key_Escape || !busy()) return false;
  cancel();
  return true;
}

void TreeTool::cancel() {
  tree_.reset();
  canvas_.clearPreview();
  canvas_.tellLength({});
}

}  // namespace tussock
