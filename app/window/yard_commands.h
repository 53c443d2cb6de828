// SPDX-License-Identifier: MIT
// What the menus do with files: start, open, copy a yard, bring pictures in.
#pragma once

#include <QObject>

#include "app/document/document.h"
#include "app/window/prompts.h"
#include "app/window/recent_files.h"

namespace tussock {

class YardCommands : public QObject {
  Q_OBJECT

 public:
  YardCommands(Document& document, RecentFiles& recent, QObject* parent = nullptr);
  void setPrompts(Prompts* prompts) { prompts_ = prompts; }  // not owned

  bool open(const QString& path);
  void openAsked();
  void startNew(const Settings& settings);
  void startExample();
  void saveCopy();
  void importSite();
  void exportSite();
  // Lays the picture so that its middle is at `middle`, `across` metres wide, until it is scaled.
  void bringIn(const QString& path, Point middle, double across);
  void bringInAsked(Point middle, double across);
  void setUnits(UnitSystem units);

 signals:
  void troubled(const QString& words);
  void pictureLaid();

 private:
  bool create(const QString& path, const Yard& yard);

  Document& document_;
  RecentFiles& recent_;
  Prompts* prompts_ = nullptr;
};

}  // namespace tussock
