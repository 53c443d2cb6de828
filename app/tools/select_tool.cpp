// SPDX-License-Identifier: MIT
#include "app/tools/select_tool.h"

#include <algorithm>
#include <utility>

#include "app/tools/band_gesture.h"
#include "app/tools/corner_gesture.h"
#include "app/tools/locked_drifts.h"
#include "app/tools/move_gesture.h"
#include "app/tools/nudge_gesture.h"
#include "app/tools/size_gesture.h"
#include "app/tools/stretch_gesture.h"
#include "app/tools/turn_gesture.h"
#include "core/edit/draft.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

constexpr double kPickPixels = 5.0;
constexpr double kPlantPixels = 24.0;
constexpr Angle kTurnStep = Angle::degrees(15.0);

bool isSelected(const Document& document, ObjectRef ref) {
  const auto& selection = document.selection();
  return std::find(selection.begin(), selection.end(), ref) != selection.end();
}

void toggle(Document& document, ObjectRef ref) {
  std::vector<ObjectRef> selection = document.selection();
  const auto found = std::find(selection.begin(), selection.end(), ref);
  if (found == selection.end())
    selection.push_back(ref);
  else
    selection.erase(found);
  document.select(std::move(selection));
}

Qt::CursorShape cursorOf(Handles::Kind kind) {
  switch (kind) {
    case Handles::Kind::Turn:
      return Qt::PointingHandCursor;
    case Handles::Kind::Height:
      return Qt::SizeVerCursor;
    case Handles::Kind::Rim:
      return Qt::SizeHorCursor;
    case Handles::Kind::Corner:
    case Handles::Kind::Side:
    case Handles::Kind::End:
      return Qt::SizeAllCursor;
  }
  return Qt::SizeAllCursor;
}

// How many each ring has.
std::vector<std::size_t> cornersIn(const std::optional<Object>& object) {
  std::vector<std::size_t> corners;
  const auto outline = object ? outlineOf(*object) : std::nullopt;
  if (!outline) return corners;
  for (const Ring& ring : outline->rings) corners.push_back(ring.size());
  return corners;
}

}  // namespace

SelectTool::SelectTool(Canvas& canvas)
    : canvas_(canvas), handles_(canvas), nudge_(canvas), count_(canvas) {
  Document& document = canvas.document();
  QObject::connect(&document, &Document::committed, &nudge_, [this] { edited_ = true; });
  QObject::connect(&document, &Document::changed, &nudge_,
                   [this](const ChangeSet& edit) { followEdit(edit); });
  QObject::connect(&document, &Document::opened, &nudge_, [this] {
    part_ = {};
    active_.reset();
  });
}

SelectTool::~SelectTool() = default;

QString SelectTool::hint() const {
  const auto ref = handles_.subject();
  if (!ref) return QObject::tr("Click to select, drag to select several");
  if (idIf<Drift>(*ref))
    return QObject::tr(
        "Drag to move · R turns · drag an end to stretch · + and − change the count · Alt and drag "
        "for one plant, Alt and Shift to mark several");
  if (idIf<Tree>(*ref))
    return QObject::tr(
        "Drag to move, the arrows to raise, the rim to widen · Delete takes it away");
  if (active_) return QObject::tr("Drag the corner · Delete takes it away");
  if (!handles_.all().empty())
    return QObject::tr("Drag to move, drag a corner to reshape · Delete takes it away");
  return QObject::tr("Drag or use the arrow keys to move · Delete takes it away");
}

QList<GestureWords> SelectTool::gestures() const {
  return {
      {QObject::tr("Click"),
       QObject::tr("Selects what is under the pointer; a finding's mark shows the finding")},
      {QObject::tr("Click again"),
       QObject::tr("Selects what lies under it, down to the bed and round again")},
      {QObject::tr("Shift and click"), QObject::tr("Adds to the selection or takes from it")},
      {QObject::tr("Drag over open ground"), QObject::tr("Selects what lies wholly inside")},
      {QObject::tr("Double click"), QObject::tr("Shows the thing large")},
      {QObject::tr("Drag"), QObject::tr("Moves the selection; a drift may go to another bed")},
      {QObject::tr("Drag a corner or a side"),
       QObject::tr("Reshapes; on a side, with a new corner")},
      {QObject::tr("Drag the arrows over a solid"),
       QObject::tr("Raises or lowers a building, wall or tree; with Shift freely")},
      {QObject::tr("Drag the rim of a crown"), QObject::tr("Widens it; with Shift freely")},
      {QObject::tr("Drag an end of a drift"),
       QObject::tr("Stretches and turns it; with Shift by steps of 15°")},
      {QObject::tr("Arrow keys"),
       QObject::tr("Move the selection an inch or 2 cm; with Shift a foot or 20 cm")},
      {QObject::tr("+ and −, Ctrl and wheel"),
       QObject::tr("Step the count of a drift through odd numbers")},
      {QObject::tr("R, Shift and R"), QObject::tr("Turn a drift by 15°, right and left")},
      {QObject::tr("Alt and drag"),
       QObject::tr("Moves one plant; with Shift marks several of a drift")},
      {QObject::tr("Delete, Backspace"),
       QObject::tr("Deletes the corner in hand, else the selection")},
      {QObject::tr("Escape"), QObject::tr("Selects nothing")},
  };
}

QCursor SelectTool::cursor() const {
  return cursor_;
}

// A name stands for what it names, whatever it lies over.
const Item* SelectTool::pick(const PointerAt& at) const {
  if (const Item* named = canvas_.namedAt(at.pixels)) return named;
  const auto found = allAt(at);
  return found.empty() ? nullptr : found.front();
}

void SelectTool::press(const PointerAt& at) {
  nudge_.finish();
  if (at.modifiers & Qt::AltModifier && pressPlant(at)) return;
  part_ = {};
  if (const auto handle = handles_.at(at.pixels)) return pressHandle(*handle, at);
  active_.reset();
  if (const Item* item = pick(at)) return pressItem(*item, at);
  const bool more = at.modifiers & Qt::ShiftModifier;
  const auto kept = more ? canvas_.document().selection() : std::vector<ObjectRef>();
  gesture_ = std::make_unique<BandGesture>(canvas_, at, kept);
}

bool SelectTool::pressPlant(const PointerAt& at) {
  const auto subject = handles_.subject();
  const auto drift = subject ? idIf<Drift>(*subject) : std::nullopt;
  if (drift && at.modifiers & Qt::ShiftModifier) {
    part_ = {};
    gesture_ = std::make_unique<PartBandGesture>(canvas_, *drift, at, part_);
    return true;
  }
  auto plant = plantAt(canvas_.document().yard(), at.site, canvas_.mapping().metres(kPlantPixels));
  if (!plant && drift) plant = plantInside(*drift, at.site);
  if (!plant) return false;
  if (part_.holds(*plant)) {
    gesture_ = std::make_unique<PartMoveGesture>(canvas_, part_, at);
    return true;
  }
  part_ = {};
  canvas_.document().select({refTo(plant->drift)});
  gesture_ = std::make_unique<NudgeGesture>(canvas_, *plant);
  return true;
}

// Of the plants marked those stay that are still there. What is taken back or made again was
// another state of the drift: its marks do not outlast that. Nor does a corner in hand where others
// came or went, for its number may be that of another then.
void SelectTool::followEdit(const ChangeSet& edit) {
  const bool made = std::exchange(edited_, false);
  for (const Change& change : edit.changes) {
    const ObjectRef subject = subjectOf(change);
    if (handles_.subject() == subject && cornersIn(change.before) != cornersIn(change.after))
      active_.reset();
    if (subject != refTo(part_.drift)) continue;
    const auto* drift = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
    if (made && drift != nullptr)
      part_.keepOnlyOf(*drift);
    else
      part_.plants.clear();
  }
}

// Anywhere between the plants of a drift its nearest is meant.
std::optional<PlantAt> SelectTool::plantInside(Id<Drift> drift, Point p) const {
  const Item* item = canvas_.scene().find(refTo(drift));
  const Drift* found = canvas_.document().yard().drifts.find(drift);
  if (!item || !found || !item->hit(p, 0.0)) return std::nullopt;
  return nearestPlant(*found, p);
}

void SelectTool::pressHandle(const Handles::Handle& handle, const PointerAt& at) {
  const ObjectRef ref = *handles_.subject();
  if (handle.kind == Handles::Kind::Turn) {
    gesture_ = std::make_unique<TurnGesture>(canvas_, *idIf<Drift>(ref), at);
    return;
  }
  if (handle.kind == Handles::Kind::End) {
    gesture_ = std::make_unique<StretchGesture>(canvas_, *idIf<Drift>(ref), handle.side);
    return;
  }
  if (handle.kind == Handles::Kind::Height || handle.kind == Handles::Kind::Rim) {
    const SizeKind kind = handle.kind == Handles::Kind::Height ? SizeKind::Height : SizeKind::Crown;
    gesture_ = std::make_unique<SizeGesture>(canvas_, ref, kind, at);
    return;
  }
  Outline outline = *outlineOf(*objectAt(canvas_.document().yard(), ref));
  CornerAt corner = handle.corner;
  if (handle.kind == Handles::Kind::Side) {
    outline = withCornerAfter(std::move(outline), corner, at.site);
    ++corner.corner;
    active_.reset();
  } else {
    active_ = corner;
  }
  gesture_ = std::make_unique<CornerGesture>(canvas_, ref, std::move(outline), corner, at);
}

void SelectTool::pressItem(const Item& item, const PointerAt& at) {
  Document& document = canvas_.document();
  const ObjectRef ref = item.ref();
  if (at.modifiers & Qt::ShiftModifier) return toggle(document, ref);
  again_ = isWherePicked(at) && selectedAt(at).has_value();
  if (!again_) picked_ = at.site;
  if (isSelected(document, ref) && document.selection().size() > 1) among_ = ref;
  if (!again_ && !isSelected(document, ref)) document.select({ref});
  gesture_ = std::make_unique<MoveGesture>(canvas_, at);
}

void SelectTool::move(const PointerAt& at) {
  if (gesture_) return gesture_->move(at);
  if (const auto handle = handles_.at(at.pixels))
    cursor_ = cursorOf(handle->kind);
  else
    cursor_ = pick(at) ? Qt::OpenHandCursor : Qt::ArrowCursor;
}

void SelectTool::release(const PointerAt& at) {
  if (!gesture_) return;
  const std::unique_ptr<Gesture> done = std::move(gesture_);
  done->finish(at);
  const bool near = isWherePicked(at);
  if (std::exchange(again_, false) && near) selectUnder(at);
  // Several move together; one that is only clicked is chosen from among them.
  if (const auto one = std::exchange(among_, std::nullopt); one && near)
    canvas_.document().select({*one});
  if (!near) picked_.reset();
}

bool SelectTool::isWherePicked(const PointerAt& at) const {
  return picked_ && distance(*picked_, at.site) < canvas_.mapping().metres(kPickPixels);
}

std::vector<const Item*> SelectTool::allAt(const PointerAt& at) const {
  return canvas_.scene().at(at.site, canvas_.mapping().metres(kPickPixels));
}

// Which of all that lies there is selected, and it alone.
std::optional<std::size_t> SelectTool::selectedAt(const PointerAt& at) const {
  const auto& selection = canvas_.document().selection();
  const auto found = allAt(at);
  for (std::size_t i = 0; i < found.size(); ++i)
    if (selection == std::vector{found[i]->ref()}) return i;
  return std::nullopt;
}

// A bed is hidden by its plants, and those by each other, so clicking again goes down through all
// that lies there, and from the bottom to the top again.
void SelectTool::selectUnder(const PointerAt& at) {
  if (canvas_.namedAt(at.pixels)) return;  // nothing is hidden by its own name
  const auto found = allAt(at);
  if (const auto now = selectedAt(at))
    canvas_.document().select({found[(*now + 1) % found.size()]->ref()});
}

void SelectTool::doubleClick(const PointerAt& at) {
  if (const Item* item = pick(at)) canvas_.showBox(item->bounds().grown(1.0));
}

bool SelectTool::key(const QKeyEvent& event) {
  if (nudge_.key(event)) return true;
  switch (event.key()) {
    case Qt::Key_Escape: {
      picked_.reset();
      const bool used = busy() || !canvas_.document().selection().empty();
      if (!busy()) canvas_.document().select({});
      cancel();
      return used;
    }
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return count_.step(1);
    case Qt::Key_Minus:
      return count_.step(-1);
    case Qt::Key_R:
      turn(event.modifiers() & Qt::ShiftModifier ? kTurnStep : -kTurnStep);
      return true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      if (!deleteCorner()) deleteSelection();
      return true;
    default:
      return false;
  }
}

void SelectTool::turn(Angle by) {
  const auto ref = handles_.subject();
  const auto drift = ref ? idIf<Drift>(*ref) : std::nullopt;
  if (drift && !tellIfLocked(canvas_, *drift))
    canvas_.document().commit(turnDrift(canvas_.document().yard(), *drift, by).edit);
}

bool SelectTool::deleteCorner() {
  const auto ref = handles_.subject();
  const auto corner = std::exchange(active_, std::nullopt);
  if (!ref || !corner) return false;
  const auto object = objectAt(canvas_.document().yard(), *ref);
  const auto outline = object ? outlineOf(*object) : std::nullopt;
  if (!outline) return false;
  const auto fewer = withoutCorner(*outline, *corner);
  if (!fewer || !troubleWith(*fewer).empty()) {
    canvas_.tell(
        QObject::tr("Without this corner no shape is left. Select the whole to delete it."));
    return true;
  }
  canvas_.document().commit(reshapeEdit(canvas_.document().yard(), *ref, *fewer));
  return true;
}

void SelectTool::deleteSelection() {
  nudge_.finish();
  Document& document = canvas_.document();
  const std::vector<ObjectRef> locked = lockedAmong(document.yard(), document.selection());
  std::vector<ObjectRef> free = document.selection();
  std::erase_if(free, [&](ObjectRef ref) {
    return std::find(locked.begin(), locked.end(), ref) != locked.end();
  });
  if (!free.empty() && document.commit(removeObjects(document.yard(), free)))
    document.select(locked);
  if (locked.empty()) return;
  canvas_.tell(free.empty() && locked.size() == 1
                   ? lockedWords()
                   : QObject::tr("Locked drifts stay. Unlock them first to delete them."));
}

void SelectTool::paint(QPainter& painter, const SceneMapping& mapping) const {
  if (gesture_) return gesture_->paint(painter, mapping);
  part_.paint(painter, canvas_);
  if (!nudge_.pending()) handles_.paint(painter, active_);
}

void SelectTool::cancel() {
  gesture_.reset();
  again_ = false;
  among_.reset();
  active_.reset();
  part_ = {};
  nudge_.cancel();
  canvas_.clearPreview();
  canvas_.clearFigure();
  canvas_.tellLength({});
}

}  // namespace tussock
