// SPDX-License-Identifier: MIT
// The margin at the right, like notes beside a drawing: what is selected, what the checks found,
// and the totals of the yard.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/document.h"

class QLabel;
class QSplitter;

namespace tussock {

class Filling;
class FindingsList;
class SelectionView;
class Survey;

class MarginPanel : public QWidget {
  Q_OBJECT

 public:
  explicit MarginPanel(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] FindingsList* findings() const { return findings_; }
  [[nodiscard]] QSize sizeHint() const override { return {336, 640}; }
  [[nodiscard]] Filling& filling() const;
  [[nodiscard]] Survey& survey() const;
  void setWeek(std::optional<int> week);

 signals:
  void findingChosen(const tussock::Finding& finding);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* makeFindings();
  void showTotals();

  Document& document_;
  SelectionView* selection_;
  FindingsList* findings_;
  QLabel* counts_ = nullptr;
  QSplitter* halves_;
  QLabel* totals_;
};

}  // namespace tussock
