// SPDX-License-Identifier: MIT
#include "tests/app/window/window_fixture.h"

#include <QAction>
#include <QLineEdit>
#include <QPrinter>

namespace tussock::test {

namespace {

// Settings go into the test's own folder.
Catalogue factsWithSettingsIn(const QString& folder) {
  QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, folder);
  return readShippedCatalogue().catalogue;
}

}  // namespace

bool LaidReady::choosePrinter(QPrinter& printer) {
  if (printed.isEmpty()) return false;
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(printed);
  printer.setPageSize(QPageSize(paper));
  return true;
}

WindowTest::WindowTest() : document(factsWithSettingsIn(dir.path())) {
  window = std::make_unique<MainWindow>(document);
  auto answers = std::make_unique<LaidReady>();
  prompts = answers.get();
  window->usePrompts(std::move(answers));
  window->resize(1400, 900);
  window->show();
}

void WindowTest::start(const Yard& yard) {
  document.create(path(QStringLiteral("test.yard")), yard);
  QTest::qWait(0);  // lets the layout settle
  lookAt(Point{2.0, 1.5});
}

Yard WindowTest::inFile() const {
  return YardFile::open(document.path().toStdString(), YardFile::Access::ReadOnly).yard();
}

void WindowTest::lookAt(Point middle, double scale) {
  const double half = 0.05;
  Box box;
  box.include(middle - Point{half, half});
  box.include(middle + Point{half, half});
  canvas().showBox(box);
  const QPointF centre = canvas().rect().toRectF().center();
  while (std::abs(canvas().mapping().scale() / scale - 1.0) > 0.2) {
    QWheelEvent notch(centre, canvas().mapToGlobal(centre), {},
                      QPoint(0, canvas().mapping().scale() < scale ? 120 : -120), {}, {},
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&canvas(), &notch);
  }
}

void WindowTest::moveTo(Point p, Qt::KeyboardModifiers modifiers) {
  const QPointF at = pixels(p);
  QMouseEvent event(QEvent::MouseMove, at, canvas().mapToGlobal(at), Qt::NoButton,
                    QApplication::mouseButtons(), modifiers);
  QApplication::sendEvent(&canvas(), &event);
}

void WindowTest::press(Point p, Qt::KeyboardModifiers modifiers) {
  QTest::mousePress(&canvas(), Qt::LeftButton, modifiers, pixels(p));
}

void WindowTest::release(Point p, Qt::KeyboardModifiers modifiers) {
  QTest::mouseRelease(&canvas(), Qt::LeftButton, modifiers, pixels(p));
}

void WindowTest::click(Point p, Qt::KeyboardModifiers modifiers) {
  moveTo(p, modifiers);
  press(p, modifiers);
  release(p, modifiers);
}

void WindowTest::drag(Point from, Point to, Qt::KeyboardModifiers modifiers) {
  press(from, modifiers);
  for (const double share : {0.25, 0.5, 0.75, 1.0}) moveTo(from + (to - from) * share, modifiers);
  release(to, modifiers);
}

void WindowTest::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  QTest::keyClick(&canvas(), key, modifiers);
}

void WindowTest::type(const QString& text) {
  auto* field = canvas().findChild<QLineEdit*>(QStringLiteral("canvasFieldText"));
  ASSERT_TRUE(field && field->isVisible());
  QTest::keyClicks(field, text);
  QTest::keyClick(field, Qt::Key_Return);
}

void WindowTest::trigger(const char* action) {
  auto* found = window->findChild<QAction*>(QString::fromLatin1(action));
  ASSERT_TRUE(found) << action;
  ASSERT_TRUE(found->isEnabled()) << action;
  found->trigger();
}

}  // namespace tussock::test
