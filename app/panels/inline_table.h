// SPDX-License-Identifier: MIT
// Lines to type in or to paste, with room under them for what is wrong. Written on leaving them or
// with Ctrl and Enter.
#pragma once

#include "app/panels/inline_edit.h"

class QPlainTextEdit;

namespace tussock {

class InlineTable : public InlineEdit {
  Q_OBJECT

 public:
  InlineTable(Read read, Write write, QWidget* parent = nullptr);

  [[nodiscard]] QPlainTextEdit* lines() const { return lines_; }

 protected:
  [[nodiscard]] QString typed() const override;
  void display(const QString& words) override;
  [[nodiscard]] bool isModified() const override;
  void setModified(bool modified) override;
  [[nodiscard]] bool finishes(const QKeyEvent& key) const override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  InlineTable(Read read, Write write, QPlainTextEdit* lines, QWidget* parent);

  QPlainTextEdit* lines_;
};

}  // namespace tussock
