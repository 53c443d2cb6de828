// SPDX-License-Identifier: MIT
// The real window on a yard file of its own, driven by mouse and keys as a person would.
#pragma once

#include <QPageSize>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include "app/canvas/canvas.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "tests/app/data_folder.h"
#include "tests/support/yard_builder.h"

namespace tussock::test {

// Answers what the window asks with what the test has laid ready.
class LaidReady : public Prompts {
 public:
  QString yard, picture, site, exported, plan, plants;
  QPageSize::PageSizeId paper = QPageSize::Letter;
  QString printed;  // the PDF that stands in for a printer; none chosen while empty

  [[nodiscard]] QString yardToOpen() override { return yard; }
  [[nodiscard]] QString yardToSave(const QString&, const QString&) override { return yard; }
  [[nodiscard]] QString pictureToBringIn() override { return picture; }
  [[nodiscard]] QString siteToImport() override { return site; }
  [[nodiscard]] QString exportTo(const QString&) override { return exported; }
  [[nodiscard]] QString planTo(const QString&) override { return plan; }
  [[nodiscard]] QString plantsToBringIn() override { return plants; }
  [[nodiscard]] QString plantsTo(const QString&) override { return plants; }
  [[nodiscard]] bool choosePrinter(QPrinter& printer) override;
  void tellAbout() override {}
};

class WindowTest : public testing::Test {
 protected:
  WindowTest();

  void start(const Yard& yard);
  void start() { start(YardBuilder().build()); }
  // What the file holds, read by another reader.
  [[nodiscard]] Yard inFile() const;
  [[nodiscard]] const Yard& yard() const { return document.yard(); }
  [[nodiscard]] Canvas& canvas() const { return window->canvas(); }
  [[nodiscard]] QString path(const QString& name) const { return dir.filePath(name); }
  [[nodiscard]] QString undoLabel() const { return document.undoLabel().value_or(QString()); }

  [[nodiscard]] QPoint pixels(Point p) const { return canvas().mapping().toPixels(p).toPoint(); }
  void moveTo(Point p, Qt::KeyboardModifiers modifiers = {});
  void press(Point p, Qt::KeyboardModifiers modifiers = {});
  void release(Point p, Qt::KeyboardModifiers modifiers = {});
  void click(Point p, Qt::KeyboardModifiers modifiers = {});
  void drag(Point from, Point to, Qt::KeyboardModifiers modifiers = {});
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {});
  void type(const QString& text);  // into whatever has the focus on the canvas
  // Fails the test when the action is not to be had.
  void trigger(const char* action);
  // 100 pixels a metre, `middle` in the middle.
  void lookAt(Point middle, double scale = 100.0);

  DataFolder dataFolder;
  QTemporaryDir dir;
  Document document;
  std::unique_ptr<MainWindow> window;
  LaidReady* prompts = nullptr;
};

}  // namespace tussock::test
