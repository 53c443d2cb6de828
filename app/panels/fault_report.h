// SPDX-License-Identifier: MIT
// Everything that could not be used of a plant table that was read: to scroll through, to select
// and copy, to be written to a file.
#pragma once

#include <QWidget>
#include <vector>

#include "core/catalog/catalogue.h"

class QLabel;
class QPlainTextEdit;

namespace tussock {

class FaultReport : public QWidget {
  Q_OBJECT

 public:
  explicit FaultReport(QWidget* parent = nullptr);

  void take(const QString& title, const std::vector<CatalogueError>& faults);
  [[nodiscard]] const std::vector<CatalogueError>& faults() const { return faults_; }

 signals:
  void left();        // back to what is selected
  void saveWanted();  // all of it, to a file

 private:
  std::vector<CatalogueError> faults_;
  QLabel* title_;
  QLabel* count_;
  QPlainTextEdit* lines_;
};

}  // namespace tussock
