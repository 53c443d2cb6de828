// SPDX-License-Identifier: MIT
// The drawing: shows the yard, hands the pointer to the tool in hand, and looks around by itself.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <QTimer>
#include <QWidget>

#include "app/canvas/finding_marks.h"
#include "app/canvas/photo_pyramid.h"
#include "app/canvas/plan_frame.h"
#include "app/canvas/plan_painter.h"
#include "app/canvas/preview.h"
#include "app/canvas/shadow_overlay.h"
#include "app/canvas/sun_compass.h"
#include "app/canvas/sun_overlay.h"
#include "app/canvas/tool.h"
#include "app/document/document.h"
#include "app/document/sun_view.h"

namespace tussock {

class CanvasField;

class Canvas : public QWidget {
  Q_OBJECT

 public:
  explicit Canvas(Document& document, QWidget* parent = nullptr);
  ~Canvas() override;

  [[nodiscard]] Document& document() { return document_; }
  [[nodiscard]] const SceneMapping& mapping() const { return mapping_; }
  [[nodiscard]] const Scene& scene() const { return scene_; }
  [[nodiscard]] const CanvasLook& look() const { return look_; }
  [[nodiscard]] const FindingMarks& marks() const { return marks_; }
  // What the name under a point of the canvas names; null where no name is that can be pressed.
  [[nodiscard]] const Item* namedAt(QPointF pixels) const;
  [[nodiscard]] bool hasWordsIn(const QRectF& pixels) const;
  [[nodiscard]] const PlanFrame& frame() const { return frame_; }
  [[nodiscard]] SunView& sunView() { return sunView_; }
  // Of true north and the sun's path, in pixels.
  [[nodiscard]] QPointF compassMiddle() const;
  [[nodiscard]] const SunCompass& compass() const { return compass_; }
  [[nodiscard]] const SunView& sunView() const { return sunView_; }

  // What the pointer and the keys do whichever tool is in hand.
  [[nodiscard]] static QList<GestureWords> gestures();

  // Not owned. Null puts the tool down.
  void setTool(Tool* tool);
  [[nodiscard]] Tool* tool() const { return tool_; }

  void show(const ChangeSet& edit);  // as a preview
  void showMoved(std::vector<ObjectRef> refs, Point step);
  void clearPreview();
  // What is being planted meanwhile, beside any gesture; empty when nothing is.
  void showGrowing(const ChangeSet& edit);
  void showFigure(Point at, const QString& figure, const QString& note);
  // The figure shown and its note, in two lines; empty when none is.
  [[nodiscard]] QString figureShown() const;
  [[nodiscard]] QRectF figureBox();  // its plate, in pixels; empty when none is
  // A mark at a point that is asked about, or none.
  void markPoint(std::optional<Point> at);
  // What is computed beside the sun readings.
  void showReadings(const std::vector<ReadingCompared>& compared);
  void clearFigure();
  void refreshOverlay() { update(); }
  // A field at a place on the canvas. `take` gives what is wrong with the text, or nothing.
  using TakeText = std::function<QString(const QString&)>;
  void ask(QPointF at, const QString& label, const QString& start, TakeText take);
  [[nodiscard]] bool asking() const;
  void tell(const QString& trouble) { emit troubled(trouble); }
  void tellLength(const QString& length) { emit lengthDrawn(length); }
  // Draws attention to a place, such as that of a finding.
  void showPlace(std::vector<Polygon> place);

 public slots:
  void setWeek(std::optional<int> week);
  void setYear(tussock::GrowthYear year);
  void setFoot(int pixels);  // height along the bottom edge that something lies over
  void setAllNames(bool all);
  void takeTheme();  // the program's colours have changed
  void fit();
  void zoomIn();
  void zoomOut();
  void showBox(const tussock::Box& box);
  void panBy(QPointF pixels);

 signals:
  void pointerMoved(tussock::Point at);  // or the plan under it
  void pointerLeft();
  void previewed(const tussock::ChangeSet& edit);  // what is being dragged; empty when none is
  void hintChanged(const QString& hint);
  void countStepped(int direction);  // Ctrl and wheel
  void picturesDropped(const QStringList& paths, tussock::Point at);
  void findingMarkClicked(const std::string& key);
  void zoomed();
  void troubled(const QString& words);      // what could not be done, and the remedy
  void lengthDrawn(const QString& length);  // of what is being drawn; empty when nothing is
  void cancelled();                         // Escape: what was told of a gesture is past
  void escaped();                           // the same, and no tool had a use for it

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  bool event(QEvent* event) override;

 private:
  void follow();
  void takeYard();
  void takeEdit(const ChangeSet& edit);
  void takeInLook();
  void takeFindings();
  void takeSun();
  [[nodiscard]] Box sunGround() const;
  void takeShadows();
  void showLeavesOf(std::optional<MonthDay> day);
  [[nodiscard]] double compassRadius() const;
  void previewSun(const ChangeSet& edit);
  void repaintPlan();
  void setMapping(const SceneMapping& mapping);
  void zoomAt(QPointF at, double factor);
  void paintPlan(QPainter& painter);
  void hideReplaced();
  void afterToolEvent();
  void paintSun(QPainter& painter);
  void paintGrowth(QPainter& painter) const;
  void paintReadings(QPainter& painter) const;
  void paintOverlay(QPainter& painter);
  void paintFurniture(QPainter& painter);
  void paintSelection(QPainter& painter);
  void paintPlace(QPainter& painter) const;
  void paintMarked(QPainter& painter) const;
  [[nodiscard]] PointerAt pointerAt(const QSinglePointEvent& event) const;
  [[nodiscard]] const PhotoPyramid* picture(const std::string& hash);
  bool panWithKey(const QKeyEvent& event);
  [[nodiscard]] bool overSun(QPointF at) const;
  void carrySun(QPointF at);

  Document& document_;
  SceneMapping mapping_;
  CanvasLook look_;
  Scene scene_;
  SunView sunView_;
  SunOverlay sun_;
  ShadowOverlay shadows_;
  SunCompass compass_;
  bool sunHeld_ = false;
  std::optional<Point> marked_;
  FindingMarks marks_;
  PlanPainter painter_;
  PlanFrame frame_;
  Preview preview_, growing_;
  std::map<std::string, PhotoPyramid> pictures_;
  std::vector<Polygon> place_;
  struct Figure {
    Point at;
    QString figure, note;
  };
  std::optional<Figure> figure_;
  int figureWay_ = 0;  // which of the places of its plate it has
  Tool* tool_ = nullptr;
  CanvasField* field_ = nullptr;
  std::optional<QPointF> panFrom_;
  std::optional<QPointF> pointer_;  // pixels; none while it is elsewhere
  QTimer zooming_;  // runs until zooming has come to rest; then the plan is painted sharp
  int foot_ = 0;    // pixels
  bool spaceHeld_ = false;
  bool lookedAround_ = false;  // since the whole yard was shown
};

}  // namespace tussock
