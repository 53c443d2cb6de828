// SPDX-License-Identifier: MIT
// The list of keys and gestures under Help. Keys are read from the menus and gestures from the
// tools themselves, so that it tells what is so.
#pragma once

#include <QDialog>

#include "app/canvas/tool.h"

class QMenu;
class QMenuBar;
class QVBoxLayout;

namespace tussock {

class ToolSet;

class KeyList : public QDialog {
  Q_OBJECT

 public:
  struct Section {
    QString title;
    QList<GestureWords> rows;
  };

  // Reads the menus at once: later the names of what can be undone stand in them.
  KeyList(const QMenuBar& bar, const ToolSet& tools, QWidget* parent);

  void bringUp();
  [[nodiscard]] const QList<Section>& sections() const { return sections_; }

 private:
  void readMenus(const QMenuBar& bar);
  void readTools(const ToolSet& tools);
  void build();

  QList<Section> sections_;
  bool built_ = false;
};

}  // namespace tussock
