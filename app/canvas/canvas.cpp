// SPDX-License-Identifier: MIT
#include "app/canvas/canvas.h"

#include <chrono>

#include "app/canvas/canvas_field.h"
#include "app/canvas/photo_frame.h"
#include "core/edit/draft.h"

namespace tussock {

namespace {
constexpr double kFitMargin = 56.0;   // pixels, at most
constexpr double kFitShare = 0.07;    // of the smaller side, at most
constexpr double kPlaceMargin = 1.2;  // metres around a place that is shown
constexpr double kClosest = 140.0;    // pixels a metre, at most, when a place is shown
constexpr double kZoomStep = 1.25;
constexpr std::chrono::milliseconds kZoomRest{80};
constexpr double kFaint = 0.05;      // opacity from which a photo is seen
constexpr double kEmptyYard = 20.0;  // metres across, shown when nothing is drawn yet

double fitMargin(QSizeF view) {
  return std::min(kFitMargin, kFitShare * std::min(view.width(), view.height()));
}
}  // namespace

Canvas::Canvas(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      sunView_(document),
      painter_(scene_, marks_),
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
  connect(&sunView_, &SunView::mapChanged, this, &Canvas::takeSun);
  connect(&sunView_, &SunView::choiceChanged, this, [this] {
    takeSun();
    takeShadows();
  });
  connect(&sunView_, &SunView::yardChanged, this, &Canvas::takeShadows);
  connect(&sunView_, &SunView::failed, this, &Canvas::troubled);
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
  takeShadows();
  takeFindings();
  fit();
}

void Canvas::takeEdit(const ChangeSet& edit) {
  if (&look_.facts.species() != &document_.facts().species()) {  // other plants, other pictures
    look_.facts = document_.facts();
    scene_.show(document_.yard());
  }
  takeInLook();
  scene_.follow(document_.yard(), edit);
  for (const Change& change : edit.changes)
    if (idIf<Settings>(subjectOf(change))) takeSun();  // other sun classes, maybe
  place_.clear();
  takeFindings();
}

void Canvas::takeFindings() {
  const auto findings = document_.findings();
  marks_.take(findings ? *findings : std::vector<Finding>(), document_.yard());
  repaintPlan();
}

void Canvas::takeSun() {
  if (sunView_.choice().look == SunLook::Hours)
    sun_.take(sunView_.grid(), sunProfile(document_.yard().settings.sunProfile), sunGround());
  else
    sun_.clear();
  update();
}

// The map's area is in whole metres; the lot, and beds beyond it, may not be.
Box Canvas::sunGround() const {
  Box ground = siteBox(document_.yard());
  for (const Bed& bed : document_.yard().beds) ground.include(boundsOf(bed.outline));
  return ground;
}

void Canvas::takeShadows() {
  if (sunView_.choice().look == SunLook::Shadows) {
    const Date date = sunView_.choice().day;
    const MonthDay day(date.month(), date.day());
    showLeavesOf(day);
    shadows_.take(sunView_.yard(), sunView_.sun(), day);
    compass_ = sunCompassFor(sunView_.civilDay(), sunView_.instant(), document_.yard().settings);
    compass_.radius = compassRadius();
  } else {
    showLeavesOf(std::nullopt);
    shadows_.clear();
  }
  update();
}

// The plan is painted anew only where a tree comes into leaf or is bare.
void Canvas::showLeavesOf(std::optional<MonthDay> day) {
  if (day == look_.day) return;
  look_.day = day;
  if (!document_.yard().trees.empty()) repaintPlan();
}

// Only what casts shade moves the sun.
void Canvas::previewSun(const ChangeSet& edit) {
  if (sunView_.choice().look == SunLook::Off) return;
  Yard after = apply(document_.yard(), edit);
  if (sunView_.previewing() || !sameSun(after, document_.yard()))
    sunView_.preview(std::move(after));
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
  previewSun(edit);
  hideReplaced();
  emit previewed(edit);
}

void Canvas::showMoved(std::vector<ObjectRef> refs, Point step) {
  if (sunView_.choice().look != SunLook::Off) previewSun(moveObjects(document_.yard(), refs, step));
  preview_.showMoved(std::move(refs), step);
  hideReplaced();
}

void Canvas::clearPreview() {
  preview_.clear();
  sunView_.preview(std::nullopt);
  hideReplaced();
  emit previewed({});
}

// Painted with the plan: a large bed has too many drifts to be painted whenever the pointer moves.
void Canvas::showGrowing(const ChangeSet& edit) {
  if (edit.empty() && growing_.empty()) return;
  growing_.show(document_.yard(), edit);
  hideReplaced();
  repaintPlan();
}

void Canvas::hideReplaced() {
  std::set<ObjectRef> replaced = preview_.replaced();
  replaced.merge(growing_.replaced());
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

QString Canvas::figureShown() const {
  return figure_ ? figure_->figure + QLatin1Char('\n') + figure_->note : QString();
}

void Canvas::clearFigure() {
  figure_.reset();
  figureWay_ = 0;
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

const Item* Canvas::namedAt(QPointF pixels) const {
  return painter_.namedAt(pixels - mapping_.toPixels(Point{}));
}

bool Canvas::hasWordsIn(const QRectF& pixels) const {
  return painter_.hasWordsIn(pixels.translated(-mapping_.toPixels(Point{})));
}

void Canvas::markPoint(std::optional<Point> at) {
  marked_ = at;
  update();
}

void Canvas::showReadings(const std::vector<ReadingCompared>& compared) {
  look_.readings = compared;
  repaintPlan();
}

void Canvas::setFoot(int pixels) {
  if (pixels == foot_) return;
  foot_ = pixels;
  compass_.radius = compassRadius();
  if (!lookedAround_) fit();
  update();
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
  Box box = boundsOf(yard);
  for (const Photo& photo : yard.photos)
    if (photo.opacity >= kFaint) box.include(boundsOf(photo));
  if (box.empty())
    for (const Photo& photo : yard.photos) box.include(boundsOf(photo));
  if (box.empty()) {
    box.include(Point{-kEmptyYard / 2.0, -kEmptyYard / 2.0});
    box.include(Point{kEmptyYard / 2.0, kEmptyYard / 2.0});
  }
  const QSizeF view = mapping_.view();
  const SceneMapping over = mapping_.resized({view.width(), view.height() - foot_});
  setMapping(over.fitted(box, fitMargin(size())).resized(view).panned({0.0, -foot_ / 2.0}));
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
  if (pointer_) emit pointerMoved(mapping_.toSite(*pointer_));
}

void Canvas::resizeEvent(QResizeEvent*) {
  mapping_ = mapping_.resized(size());
  compass_.radius = compassRadius();
  if (!lookedAround_) fit();
  frame_.forget();
}

}  // namespace tussock
