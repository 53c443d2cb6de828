// SPDX-License-Identifier: MIT
// The margin at the right, like notes beside a drawing: what is selected, what the checks found,
// and the totals of the yard.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/document.h"

class QLabel;
class QScrollArea;
class QSplitter;
class QStackedWidget;

namespace tussock {

class FaultReport;
class FillRunning;
class Filling;
class FindingsList;
class PersonalCatalogue;
class PlantSheet;
class SelectionView;
class SunSurvey;

class MarginPanel : public QWidget {
  Q_OBJECT

 public:
  explicit MarginPanel(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] FindingsList* findings() const { return findings_; }
  [[nodiscard]] QSize sizeHint() const override { return {336, 640}; }
  [[nodiscard]] Filling& filling() const;
  [[nodiscard]] SunSurvey& survey() const;
  [[nodiscard]] PersonalCatalogue& personal() const { return *personal_; }
  void preview(const ChangeSet& edit);
  void forgetRefused();  // values that could not be taken
  void setWeek(std::optional<int> week);
  // All that is known of a plant, in the place of what is selected until something else is.
  void showPlant(const QString& botanicalName);
  void startPlant();  // an empty sheet for a new one
  // What could not be used of a plant table, in the same place.
  void takeFaults(const QString& title, const std::vector<CatalogueError>& faults);
  void showFaults();
  [[nodiscard]] FaultReport* faults() const { return faults_; }

 signals:
  void listWanted();     // the bed's plant list with its figures beside it
  void compareWanted();  // two arrangements of the bed side by side
  void findingChosen(const tussock::Finding& finding);
  void told(const QString& words);  // of what settling a finding left
  void settled();                   // a finding, from its row

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* makeFindings();
  QWidget* makeUpper();
  QWidget* makeSelection();
  void showSelection();
  void shareHeight();
  [[nodiscard]] int heightForFindings() const;
  void showFindings();
  void showTotals();

  Document& document_;
  SelectionView* selection_;
  PersonalCatalogue* personal_;
  PlantSheet* plant_;
  FaultReport* faults_;
  QStackedWidget* upper_ = nullptr;
  QScrollArea* plantArea_ = nullptr;
  QScrollArea* faultsArea_ = nullptr;
  FindingsList* findings_;
  QLabel* counts_ = nullptr;
  QSplitter* halves_;
  QWidget* lower_ = nullptr;  // the findings, under the line that tells how many
  QWidget* head_ = nullptr;
  QScrollArea* findingsArea_ = nullptr;
  std::optional<int> lowerByHand_;  // pixels that someone gave the findings
  FillRunning* running_ = nullptr;
  QLabel* totals_;
};

}  // namespace tussock
