// SPDX-License-Identifier: MIT
#include "app/tools/path_tool.h"

#include <cmath>

#include "app/canvas/furniture.h"
#include "app/tools/outline.h"
#include "core/edit/change.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

constexpr double kSamePixels = 3.0;  // a second click this near is no corner of its own

bool startsLength(const QString& text) {
  return text.size() == 1 && (text[0].isDigit() || text[0] == QLatin1Char('.'));
}

}  // namespace

QString PathTool::hint() const {
  if (corners_.empty()) return QObject::tr("Click the first corner of %1").arg(what());
  if (kind_ == Kind::Outline && corners_.size() >= 3)
    return QObject::tr("Click the next corner, or the first one or Enter to close · type a length");
  if (kind_ == Kind::Line && corners_.size() >= 2)
    return QObject::tr("Click the next corner, or Enter to end · type a length");
  return QObject::tr("Click the next corner, or type a length · Backspace takes one back");
}

QList<GestureWords> PathTool::gestures() const {
  const bool line = kind_ == Kind::Line;
  return {
      {QObject::tr("Click"), QObject::tr("Sets a corner, on corners, edges and right angles near")},
      {QObject::tr("Shift and click"), QObject::tr("Sets a corner just where the pointer is")},
      {QObject::tr("Type a length"), QObject::tr("Sets the next corner that far along")},
      {QObject::tr("Backspace"), QObject::tr("Takes the last corner back")},
      {line ? QObject::tr("Enter, double click") : QObject::tr("Enter, double click, first corner"),
       line ? QObject::tr("Ends the line") : QObject::tr("Closes the shape")},
      {QObject::tr("Escape"), QObject::tr("Leaves nothing drawn; again, puts the tool away")},
  };
}

Snap PathTool::snapAt(const PointerAt& at) {
  if (at.modifiers & Qt::ShiftModifier) return {at.site, SnapKind::None, {}};
  return snapped(at.site, targets_, corners_, canvas_.mapping().metres(kSnapPixels));
}

void PathTool::press(const PointerAt& at) {
  if (corners_.empty()) targets_ = snapTargets(document().yard(), {});
  const Snap snap = snapAt(at);
  if (kind_ == Kind::Outline && snap.kind == SnapKind::First) return finish();
  addCorner(snap.at);
}

void PathTool::addCorner(Point p) {
  const double apart = canvas_.mapping().metres(kSamePixels);
  if (corners_.empty() || distance(corners_.back(), p) > apart) corners_.push_back(p);
  hover_ = {p, SnapKind::None, {}};
  tellLength();
}

void PathTool::move(const PointerAt& at) {
  if (corners_.empty() && !hovering_) targets_ = snapTargets(document().yard(), {});
  hovering_ = true;
  hover_ = snapAt(at);
  tellLength();
}

void PathTool::doubleClick(const PointerAt&) {
  finish();
}

bool PathTool::key(const QKeyEvent& event) {
  switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (!corners_.empty()) finish();
      return true;
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
      if (corners_.empty()) return false;
      corners_.pop_back();
      tellLength();
      return true;
    case Qt::Key_Escape:
      if (!busy()) return false;
      cancel();
      return true;
    default:
      break;
  }
  if (corners_.empty() || !startsLength(event.text())) return false;
  askLength(event.text());
  return true;
}

void PathTool::askLength(const QString& start) {
  const Point from = corners_.back();
  const Point step = hover_.at - from;
  const double length = std::hypot(step.x, step.y);
  const Point along = length > 0.0 ? step * (1.0 / length) : Point{1.0, 0.0};
  canvas_.ask(canvas_.mapping().toPixels(hover_.at), QObject::tr("Length of this side"), start,
              [this, from, along](const QString& text) {
                const UnitSystem units = document().yard().settings.units;
                const auto typed = parseLength(text.toStdString(), units);
                if (!typed || typed->metres() <= 0.0)
                  return QObject::tr("Give a length such as 24' 6\" or 7.5 m.");
                addCorner(from + along * typed->metres());
                canvas_.refreshOverlay();
                return QString();
              });
}

void PathTool::finish() {
  const QString problem = trouble(corners_);
  if (!problem.isEmpty()) return canvas_.tell(problem);
  const std::vector<Point> drawn = std::exchange(corners_, {});
  hovering_ = false;
  tellLength();
  commitAndSelect(edit(drawn));
}

void PathTool::commitAndSelect(const ChangeSet& edit) {
  if (edit.empty() || !document().commit(edit)) return;
  std::vector<ObjectRef> drawn;
  for (const Change& change : edit.changes)
    if (change.after) drawn.push_back(subjectOf(change));
  document().select(std::move(drawn));
}

QString PathTool::trouble(const std::vector<Point>& corners) const {
  return QString::fromStdString(troubleWith({{corners}, kind_ == Kind::Outline}));
}

void PathTool::cancel() {
  corners_.clear();
  hovering_ = false;
  hover_ = {};
  tellLength();
  canvas_.refreshOverlay();
}

QString PathTool::lengthText(Point a, Point b) const {
  return QString::fromStdString(
      formatLength(Length::metres(distance(a, b)), document().yard().settings.units));
}

void PathTool::tellLength() const {
  canvas_.tellLength(corners_.empty() ? QString() : lengthText(corners_.back(), hover_.at));
}

void PathTool::paint(QPainter& painter, const SceneMapping& mapping) const {
  const Theme& theme = canvas_.look().theme;
  if (hovering_) paintSnap(painter, mapping, hover_);
  if (corners_.empty()) return;
  QPolygonF line;
  for (const Point p : corners_) line << mapping.toPixels(p);
  if (hovering_) line << mapping.toPixels(hover_.at);
  if (kind_ == Kind::Outline && line.size() >= 3) {
    painter.setPen(QPen(theme.sky, 1.0, Qt::DotLine));
    painter.setBrush(faded(theme.sky, 0.10));
    painter.drawPolygon(line);
  }
  painter.setPen(QPen(theme.paper, 4.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(line);
  painter.setPen(QPen(theme.sky, 2.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(line);
  painter.setBrush(theme.raised);
  for (const Point p : corners_) painter.drawEllipse(mapping.toPixels(p), 3.5, 3.5);
  if (hovering_ && !canvas_.asking())
    paintNote(painter, mapping.toPixels(hover_.at), lengthText(corners_.back(), hover_.at), theme);
}

}  // namespace tussock
