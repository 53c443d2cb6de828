// SPDX-License-Identifier: MIT
// Lines to type in or to paste, with room under them for what is wrong. Written on leaving them or
// with Ctrl and Enter.
#pragma once

#include "app/panels/inline_lines.h"

namespace tussock {

class InlineTable : public InlineLines {
  Q_OBJECT

 public:
  InlineTable(Read read, Write write, QWidget* parent = nullptr);

 protected:
  [[nodiscard]] bool finishes(const QKeyEvent& key) const override;
};

}  // namespace tussock
