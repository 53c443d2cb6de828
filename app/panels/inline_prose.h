// SPDX-License-Identifier: MIT
// A field for text of several lines' length: it is as high as its words need, up to a limit, and
// holds no line ends. Written with Enter or on leaving it.
#pragma once

#include "app/panels/inline_edit.h"

class QPlainTextEdit;

namespace tussock {

class InlineProse : public InlineEdit {
  Q_OBJECT

 public:
  InlineProse(Read read, Write write, QWidget* parent = nullptr);

  [[nodiscard]] QPlainTextEdit* lines() const { return lines_; }

 protected:
  [[nodiscard]] QString typed() const override;
  void display(const QString& words) override;
  [[nodiscard]] bool isModified() const override;
  void setModified(bool modified) override;
  [[nodiscard]] bool finishes(const QKeyEvent& key) const override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  InlineProse(Read read, Write write, QPlainTextEdit* lines, QWidget* parent);
  void fitHeight();

  QPlainTextEdit* lines_;
};

}  // namespace tussock
