// SPDX-License-Identifier: MIT
// Puts the planting plan on paper or into a file.
#pragma once

#include <QObject>

#include "app/document/document.h"
#include "app/window/prompts.h"

class QPrinter;

namespace tussock {

class PlanCommands : public QObject {
  Q_OBJECT

 public:
  explicit PlanCommands(Document& document, QObject* parent = nullptr)
      : QObject(parent), document_(document) {}
  void setPrompts(Prompts* prompts) { prompts_ = prompts; }  // not owned

  void writePlan();  // PDF, or SVG by the ending of the name
  void print();

 signals:
  void troubled(const QString& words);

 private:
  Document& document_;
  Prompts* prompts_ = nullptr;
};

}  // namespace tussock
