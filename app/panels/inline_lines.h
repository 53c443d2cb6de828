// SPDX-License-Identifier: MIT
// What fields that show several lines have in common: the Tab key leaves them, and they are written
// on leaving them.
#pragma once

#include "app/panels/inline_edit.h"

class QPlainTextEdit;

namespace tussock {

class InlineLines : public InlineEdit {
  Q_OBJECT

 public:
  [[nodiscard]] QPlainTextEdit* lines() const { return lines_; }

 protected:
  InlineLines(Read read, Write write, QWidget* parent);

  [[nodiscard]] static bool isEnter(const QKeyEvent& key);
  [[nodiscard]] QString typed() const override;
  void display(const QString& words) override;
  [[nodiscard]] bool isModified() const override;
  void setModified(bool modified) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  InlineLines(Read read, Write write, QPlainTextEdit* lines, QWidget* parent);

  QPlainTextEdit* lines_;
};

}  // namespace tussock
