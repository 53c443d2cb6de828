// SPDX-License-Identifier: MIT
// Every tool there is, by name, with what the rail says about it.
#pragma once

#include <memory>
#include <vector>

#include "app/canvas/canvas.h"
#include "app/tools/select_tool.h"

namespace tussock {

struct ToolEntry {
  QString name;  // of the tool's action: "toolBed"
  QString label;
  QString icon;
  QKeySequence key;
  std::unique_ptr<Tool> tool;
  bool onRail = true;  // else in the Draw menu alone
};

class ToolSet {
 public:
  explicit ToolSet(Canvas& canvas);

  [[nodiscard]] const std::vector<ToolEntry>& entries() const { return entries_; }
  [[nodiscard]] SelectTool& select() const { return *select_; }
  [[nodiscard]] Tool* find(const QString& name) const;

 private:
  template <class T>
  T* add(const char* name, const QString& label, const char* icon, const char* key, Canvas& canvas);

  std::vector<ToolEntry> entries_;
  SelectTool* select_ = nullptr;
};

}  // namespace tussock
