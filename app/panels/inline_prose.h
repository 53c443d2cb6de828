// SPDX-License-Identifier: MIT
// A field for text of several lines' length: it is as high as its words need, up to a limit, and
// holds no line ends. Written with Enter or on leaving it.
#pragma once

#include "app/panels/inline_lines.h"

namespace tussock {

class InlineProse : public InlineLines {
  Q_OBJECT

 public:
  InlineProse(Read read, Write write, QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString typed() const override;
  [[nodiscard]] bool finishes(const QKeyEvent& key) const override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fitHeight();
};

}  // namespace tussock
