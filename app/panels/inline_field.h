// SPDX-License-Identifier: MIT
// A line to type in, with room under it for what is wrong. Written with Enter or on leaving it.
#pragma once

#include "app/panels/inline_edit.h"

class QLineEdit;

namespace tussock {

class InlineField : public InlineEdit {
  Q_OBJECT

 public:
  InlineField(Read read, Write write, QWidget* parent = nullptr);

  [[nodiscard]] QLineEdit* line() const { return line_; }

 protected:
  [[nodiscard]] QString typed() const override;
  void display(const QString& words) override;
  [[nodiscard]] bool isModified() const override;
  void setModified(bool modified) override;

 private:
  InlineField(Read read, Write write, QLineEdit* line, QWidget* parent);

  QLineEdit* line_;
};

}  // namespace tussock
