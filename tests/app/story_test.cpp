// SPDX-License-Identifier: MIT
// The whole job, driven through the window: an empty yard, a photo and its scale, a bed, three
// drifts, a finding and its mending, back to empty, forth again, and a plan on paper. Then file and
// paper are read by other means.
#include <QAction>
#include <QLineEdit>
#include <QPainter>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>

#include "app/canvas/photo_frame.h"
#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "app/panels/finding_row.h"
#include "core/planting/edit_drift.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class Story : public WindowTest {
 protected:
  void startFromTheStartPage();
  void bringInPhoto();
  void scalePhoto();
  void drawBed();
  void plant(const QString& species, Point at);
  void makeFinding();
  void showFinding();
  void mendIt();
  void undoAll();
  void redoAll();
  void writePlan();
  [[nodiscard]] std::size_t spacingFindings();
  [[nodiscard]] QString textOfPlan() const;
};

void Story::startFromTheStartPage() {
  prompts->yard = path(QStringLiteral("story.yard"));
  const auto field = [this](const char* name) {
    return window->findChild<QLineEdit*>(QString::fromLatin1(name));
  };
  QTest::keyClicks(field("newName"), QStringLiteral("Story yard"));
  QTest::keyClicks(field("newLatitude"), QStringLiteral("38.4"));
  QTest::keyClicks(field("newLongitude"), QStringLiteral("-86.9"));
  QTest::mouseClick(window->findChild<QPushButton*>(QStringLiteral("newStart")), Qt::LeftButton);
  ASSERT_TRUE(document.isOpen());
  QTest::qWait(0);
}

void Story::bringInPhoto() {
  QImage picture(800, 600, QImage::Format_RGB32);
  picture.fill(QColor(120, 150, 90));
  prompts->picture = path(QStringLiteral("aerial.png"));
  ASSERT_TRUE(picture.save(prompts->picture));
  trigger("actionPhoto");
  ASSERT_EQ(inFile().photos.size(), 1u);
}

// Two points 400 pixels of the picture apart are 24' 6" apart on site.
void Story::scalePhoto() {
  const Photo photo = *inFile().photos.begin();
  const auto site = [&photo](double x, double y) {
    const QPointF at = photoTransform(photo).map(QPointF(x, y));
    return Point{at.x(), at.y()};
  };
  click(site(200, 300));
  click(site(600, 300));
  type(QStringLiteral("24' 6\""));
  const double expected = 24.5 * 0.3048 / 400.0;
  // The clicks fall on whole pixels of the screen.
  EXPECT_NEAR(inFile().photos.begin()->metresPerPixel / expected, 1.0, 0.01);
}

void Story::drawBed() {
  const Point middle = boundsOf(yard()).centre();
  lookAt(middle);
  trigger("toolBed");
  for (const Point corner :
       {Point{-2.5, -1.5}, Point{2.5, -1.5}, Point{2.5, 1.5}, Point{-2.5, 1.5}})
    click(middle + corner, Qt::ShiftModifier);
  key(Qt::Key_Return);
  ASSERT_EQ(inFile().beds.size(), 1u);
}

void Story::plant(const QString& species, Point at) {
  auto* bench = window->findChild<BenchPanel*>();
  bench->searchField()->clear();
  QTest::keyClicks(bench->searchField(), species);
  QWidget* cards = bench->cards()->viewport();
  const QPoint there = cards->mapFromGlobal(canvas().mapToGlobal(pixels(at)));
  QTest::mousePress(cards, Qt::LeftButton, {}, {60, 40});
  for (int step = 0; step < 2; ++step) {
    QMouseEvent carried(QEvent::MouseMove, there, cards->mapToGlobal(there), Qt::NoButton,
                        Qt::LeftButton, {});
    QApplication::sendEvent(cards, &carried);
  }
  QTest::mouseRelease(cards, Qt::LeftButton, {}, there);
}

std::size_t Story::spacingFindings() {
  document.waitForAnalysis();
  const auto findings = document.findings();
  if (!findings) return 0;
  return std::size_t(std::count_if(findings->begin(), findings->end(), [](const Finding& finding) {
    return finding.check == CheckId::Spacing;
  }));
}

// One plant is pushed against its neighbour by hand.
void Story::makeFinding() {
  EXPECT_EQ(spacingFindings(), 0u);
  trigger("toolSelect");
  const Drift drift = *yard().drifts.begin();
  const Point from = drift.plants[0].at, neighbour = drift.plants[1].at;
  drag(from, neighbour + (from - neighbour) * (0.05 / distance(from, neighbour)), Qt::AltModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Nudge plant"));
  EXPECT_GT(spacingFindings(), 0u);
}

// A click on its row in the margin brings the place into view.
void Story::showFinding() {
  QCoreApplication::processEvents();
  FindingRow* found = nullptr;
  for (FindingRow* row : window->findChildren<FindingRow*>())
    if (row->finding().check == CheckId::Spacing) found = row;
  ASSERT_TRUE(found);
  const Point place = labelPoint(found->finding().place.front());
  lookAt(place + Point{40.0, 40.0});
  QTest::mouseClick(found, Qt::LeftButton, {}, {30, 12});
  EXPECT_TRUE(canvas().mapping().visible().contains(place));
  EXPECT_FALSE(document.selection().empty());
}

void Story::mendIt() {
  const Drift drift = *yard().drifts.begin();
  const Point here = drift.plants[0].at, neighbour = drift.plants[1].at;
  const Point away = (here - neighbour) * (1.0 / distance(here, neighbour));
  drag(here, neighbour + away * (drift.spacing.metres() * 1.02), Qt::AltModifier);
  EXPECT_EQ(spacingFindings(), 0u);
}

void Story::undoAll() {
  for (int step = 0; step < 50 && document.undoLabel(); ++step) trigger("actionUndo");
  const Yard empty = inFile();
  EXPECT_TRUE(empty.photos.empty());
  EXPECT_TRUE(empty.beds.empty());
  EXPECT_TRUE(empty.drifts.empty());
  EXPECT_FALSE(window->findChild<QAction*>(QStringLiteral("actionUndo"))->isEnabled());
}

void Story::redoAll() {
  for (int step = 0; step < 50 && document.redoLabel(); ++step) trigger("actionRedo");
}

void Story::writePlan() {
  prompts->plan = path(QStringLiteral("plan.pdf"));
  trigger("actionPlan");
  ASSERT_TRUE(QFile::exists(prompts->plan));
}

QString Story::textOfPlan() const {
  QProcess reader;
  reader.start(QStringLiteral("pdftotext"),
               {QStringLiteral("-layout"), prompts->plan, QStringLiteral("-")});
  if (!reader.waitForFinished()) return {};
  return QString::fromUtf8(reader.readAllStandardOutput());
}

TEST_F(Story, FromAnEmptyYardToAPlanOnPaper) {
  startFromTheStartPage();
  bringInPhoto();
  scalePhoto();
  drawBed();
  const Point middle = inFile().beds.begin()->outline.outer.front() + Point{2.5, 1.5};
  plant(QStringLiteral("Echinacea purpurea"), middle + Point{-1.4, 0.0});
  plant(QStringLiteral("Liatris spicata"), middle);
  plant(QStringLiteral("Schizachyrium scoparium"), middle + Point{1.4, 0.0});
  ASSERT_EQ(inFile().drifts.size(), 3u);
  makeFinding();
  showFinding();
  mendIt();
  const Yard full = inFile();
  undoAll();
  redoAll();
  EXPECT_EQ(inFile(), full);
  writePlan();

  EXPECT_TRUE(
      YardFile::open(document.path().toStdString(), YardFile::Access::ReadOnly).verify().empty());
  EXPECT_EQ(QProcess::execute(QStringLiteral("qpdf"), {QStringLiteral("--check"), prompts->plan}),
            0);
  EXPECT_EQ(QProcess::execute(QStringLiteral(TUSSOCK_PROGRAM),
                              {QStringLiteral("verify"), document.path()}),
            0);
  const QString text = textOfPlan();
  std::size_t plants = 0;
  for (const Drift& drift : full.drifts) plants += drift.plants.size();
  const QRegularExpression total(QStringLiteral("(\\d+) +plants: labels, drawing"));
  const QRegularExpressionMatch schedule = total.match(text);
  ASSERT_TRUE(schedule.hasMatch()) << text.toStdString();
  EXPECT_EQ(schedule.captured(1).toULongLong(), plants);
  for (const Drift& drift : full.drifts) {
    const QString label = QStringLiteral("%1 × %2")
                              .arg(drift.plants.size())
                              .arg(QString::fromStdString(codeOf(full, drift.species)));
    EXPECT_TRUE(text.contains(label)) << label.toStdString();
    EXPECT_TRUE(text.contains(QString::fromStdString(drift.species))) << drift.species;
  }
}

}  // namespace
}  // namespace tussock::test
