// SPDX-License-Identifier: MIT
#include "app/tools/corner_gesture.h"

#include "app/canvas/furniture.h"
#include "core/units/measure_text.h"

namespace tussock {

ChangeSet reshapeEdit(const Yard& yard, ObjectRef ref, const Outline& outline) {
  const auto before = objectAt(yard, ref);
  if (!before) return {};
  Object after = withOutline(*before, outline);
  if (after == *before) return {};
  std::string kind(kindOf(ref));
  for (char& c : kind)
    if (c == '_') c = ' ';
  return {QObject::tr("Reshape %1").arg(QString::fromStdString(kind)).toStdString(),
          {{*before, std::move(after)}}};
}

CornerGesture::CornerGesture(Canvas& canvas, ObjectRef ref, Outline outline, CornerAt corner,
                             const PointerAt& from)
    : canvas_(canvas),
      ref_(ref),
      outline_(std::move(outline)),
      corner_(corner),
      from_(from.pixels),
      targets_(snapTargets(canvas.document().yard(), {ref})) {}

ChangeSet CornerGesture::edit() const {
  return reshapeEdit(canvas_.document().yard(), ref_, outline_);
}

void CornerGesture::move(const PointerAt& at) {
  if (!dragged_ && (at.pixels - from_).manhattanLength() < kDragPixels) return;
  dragged_ = true;
  const Ring& ring = outline_.rings[corner_.ring];
  const Point before = ring[(corner_.corner + ring.size() - 1) % ring.size()];
  snap_ = at.modifiers & Qt::ShiftModifier
              ? Snap{at.site, SnapKind::None, {}}
              : snapped(at.site, targets_, {before}, canvas_.mapping().metres(kSnapPixels));
  outline_ = withCornerAt(std::move(outline_), corner_, snap_.at);
  if (troubleWith(outline_).empty()) canvas_.show(edit());
}

void CornerGesture::finish(const PointerAt&) {
  canvas_.clearPreview();
  if (!dragged_) return;
  const std::string trouble = troubleWith(outline_);
  if (!trouble.empty()) return canvas_.tell(QString::fromStdString(trouble));
  canvas_.document().commit(edit());
}

void CornerGesture::paint(QPainter& painter, const SceneMapping& mapping) const {
  if (!dragged_) return;
  paintSnap(painter, mapping, snap_);
  const Ring& ring = outline_.rings[corner_.ring];
  const Point here = ring[corner_.corner];
  const Point before = ring[(corner_.corner + ring.size() - 1) % ring.size()];
  paintNote(painter, mapping.toPixels(here),
            QString::fromStdString(formatLength(Length::metres(distance(before, here)),
                                                canvas_.document().yard().settings.units)),
            canvas_.look().theme);
}

}  // namespace tussock
