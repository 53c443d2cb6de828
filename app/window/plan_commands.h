// SPDX-License-Identifier: MIT
// Puts the planting plan on paper or into a file.
#pragma once

#include <optional>
#include <QObject>

#include "app/document/document.h"
#include "app/window/prompts.h"
#include "core/sheets/plan.h"

class QPrinter;

namespace tussock {

class PlanCommands : public QObject {
  Q_OBJECT

 public:
  explicit PlanCommands(Document& document, QObject* parent = nullptr)
      : QObject(parent), document_(document) {}
  void setPrompts(Prompts* prompts) { prompts_ = prompts; }  // not owned

  // Nothing chosen: letter where the yard shows feet, A4 where metres.
  void setPaper(std::optional<Paper> paper) { paper_ = paper; }
  // Nothing chosen: the largest usual scale at which each bed fits its sheet.
  void setBedScale(std::optional<int> scale) { bedScale_ = scale; }

  void writePlan();  // PDF, or SVG by the ending of the name
  void print();

 signals:
  void written(const QString& words);
  void troubled(const QString& words);

 private:
  [[nodiscard]] PlanOptions options() const;

  Document& document_;
  std::optional<Paper> paper_;
  std::optional<int> bedScale_;
  Prompts* prompts_ = nullptr;
};

}  // namespace tussock
