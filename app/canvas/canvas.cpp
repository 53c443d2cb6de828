// SPDX-License-Identifier: MIT
#include "app/canvas/canvas.h"

#include <chrono>

#include "app/canvas/canvas_field.h"
#include "app/canvas/photo_frame.h"
#include "core/catalog/fit.h"

namespace tussock {

namespace {
constexpr double kFitMargin = 56.0;   // pixels, at most
constexpr double kFitShare = 0.07;    // of the smaller side, at most
constexpr double kPlaceMargin = 1.2;  // metres around a place that is shown
constexpr double kClosest = 140.0;    // pixels a metre, at most, when a place is shown
constexpr double kZoomStep = 1.25;
constexpr std::chrono::milliseconds kZoomRest{80};
constexpr double kEmptyYard = 20.0;  // metres across, shown when nothing is drawn yet

double fitMargin(QSizeF view) {
  return std::min(kFitMargin, kFitShare * std::min(view.width(), view.height()));
}
}  // namespace

Canvas::Canvas(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      painter_(scene_, sun_, marks_),
      field_(new CanvasField(this)) {
  setObjectName(QStringLiteral("canvas"));
  setAccessibleName(tr("Plan of the yard"));
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setAcceptDrops(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setMinimumSize(240, 180);
  grabGesture(Qt::PinchGesture);
  zooming_.setSingleShot(true);
  connect(&zooming_, &QTimer::timeout, this, qOverload<>(&Canvas::update));
  look_.picture = [this](const std::string& hash) { return picture(hash); };
  follow();
  takeYard();
}

Canvas::~Canvas() = default;

void Canvas::follow() {
  connect(&document_, &Document::opened, this, &Canvas::takeYard);
  connect(&document_, &Document::changed, this, &Canvas::takeEdit);
  connect(&document_, &Document::selectionChanged, this, [this] {
    place_.clear();
    if (tool_) emit hintChanged(tool_->hint());
    update();
  });
  connect(&document_, &Document::findingsChanged, this, &Canvas::takeFindings);
  connect(&document_, &Document::sunMapChanged, this, &Canvas::takeSun);
}

void Canvas::takeYard() {
  if (tool_) tool_->cancel();
  clearPreview();
  clearFigure();
  pictures_.clear();
  place_.clear();
  look_.facts = document_.facts();
  takeInLook();
  scene_.show(document_.yard());
  takeSun();
  takeFindings();
  fit();
}

void Canvas::takeEdit(const ChangeSet& edit) {
  takeInLook();
  scene_.follow(document_.yard(), edit);
  place_.clear();
  takeFindings();
}

void Canvas::takeFindings() {
  const auto findings = document_.findings();
  marks_.take(findings ? *findings : std::vector<Finding>(), document_.yard());
  repaintPlan();
}

void Canvas::takeSun() {
  const SunProfile& profile = sunProfile(document_.yard().settings.sunProfile);
  sun_.take(sunShown() ? document_.sunMap() : nullptr, profile.partFrom, profile.fullFrom);
  repaintPlan();
}

void Canvas::repaintPlan() {
  painter_.forgetLabels();
  frame_.forget();
  update();
}

const PhotoPyramid* Canvas::picture(const std::string& hash) {
  const auto known = pictures_.find(hash);
  if (known != pictures_.end()) return &known->second;
  const QImage image = document_.picture(hash);
  if (image.isNull()) return nullptr;
  return &pictures_.emplace(hash, PhotoPyramid(image)).first->second;
}

void Canvas::setTool(Tool* tool) {
  if (tool_) tool_->cancel();
  field_->dismiss();
  tool_ = tool;
  setCursor(tool ? tool->cursor() : QCursor(Qt::ArrowCursor));
  emit hintChanged(tool ? tool->hint() : QString());
  update();
}

void Canvas::show(const ChangeSet& edit) {
  preview_.show(document_.yard(), edit);
  hideReplaced();
}

void Canvas::showMoved(std::vector<ObjectRef> refs, Point step) {
  preview_.showMoved(std::move(refs), step);
  hideReplaced();
}

void Canvas::clearPreview() {
  preview_.clear();
  hideReplaced();
}

void Canvas::hideReplaced() {
  std::set<ObjectRef> replaced = preview_.replaced();
  if (replaced != painter_.hidden()) {
    painter_.hide(std::move(replaced));
    repaintPlan();
  }
  update();
}

void Canvas::showFigure(Point at, const QString& figure, const QString& note) {
  figure_ = Figure{at, figure, note};
  update();
}

void Canvas::clearFigure() {
  figure_.reset();
  update();
}

void Canvas::ask(QPointF at, const QString& label, const QString& start, TakeText take) {
  field_->ask(at, label, start, [this, take = std::move(take)](const QString& text) {
    const QString trouble = take(text);
    afterToolEvent();
    return trouble;
  });
}

bool Canvas::asking() const {
  return field_->isVisible();
}

void Canvas::showPlace(std::vector<Polygon> place) {
  place_ = std::move(place);
  Box box;
  for (const Polygon& part : place_) box.include(boundsOf(part));
  if (!box.empty()) showBox(box.grown(kPlaceMargin));
  update();
}

void Canvas::takeInLook() {
  look_.units = document_.yard().settings.units;
  look_.tracing = !document_.yard().photos.empty();
}

void Canvas::setWeek(std::optional<int> week) {
  look_.week = week;
  repaintPlan();
}

void Canvas::setYear(GrowthYear year) {
  look_.year = year;
  repaintPlan();
}

void Canvas::setSunShown(bool shown) {
  painter_.showSun(shown);
  takeSun();
}

void Canvas::setAllNames(bool all) {
  look_.allNames = all;
  repaintPlan();
}

void Canvas::takeTheme() {
  look_.theme = currentTheme();
  repaintPlan();
}

void Canvas::fit() {
  const Yard& yard = document_.yard();
  Box box = siteBox(yard);
  for (const Bed& bed : yard.beds) box.include(boundsOf(bed.outline));
  if (box.empty())
    for (const Photo& photo : yard.photos) box.include(boundsOf(photo));
  if (box.empty()) {
    box.include(Point{-kEmptyYard / 2.0, -kEmptyYard / 2.0});
    box.include(Point{kEmptyYard / 2.0, kEmptyYard / 2.0});
  }
  setMapping(mapping_.fitted(box, fitMargin(size())));
  lookedAround_ = false;
}

void Canvas::zoomIn() {
  zoomAt(rect().toRectF().center(), kZoomStep);
}

void Canvas::zoomOut() {
  zoomAt(rect().toRectF().center(), 1.0 / kZoomStep);
}

void Canvas::showBox(const Box& box) {
  const SceneMapping near = mapping_.fitted(box, fitMargin(size()));
  const double scale = std::min(near.scale(), std::max(mapping_.scale(), kClosest));
  setMapping(SceneMapping(box.centre(), scale, mapping_.view()));
}

void Canvas::panBy(QPointF pixels) {
  setMapping(mapping_.panned(pixels));
}

void Canvas::zoomAt(QPointF at, double factor) {
  zooming_.start(kZoomRest);
  setMapping(mapping_.zoomedAt(at, factor));
}

void Canvas::setMapping(const SceneMapping& mapping) {
  if (mapping == mapping_) return;
  mapping_ = mapping;
  lookedAround_ = true;
  update();
  emit zoomed();
}

void Canvas::resizeEvent(QResizeEvent*) {
  mapping_ = mapping_.resized(size());
  if (!lookedAround_) fit();
  frame_.forget();
}

}  // namespace tussock
