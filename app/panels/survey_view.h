// SPDX-License-Identifier: MIT
// The sun survey in the margin: hours seen beside hours computed, and the trees that would fit.
#pragma once

#include <QWidget>

#include "app/document/sun_survey.h"

class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class SurveyView : public QWidget {
  Q_OBJECT

 public:
  SurveyView(Document& document, SunSurvey& survey, QWidget* parent = nullptr);
  void refresh();

 private:
  void showUnused();
  void showReadings();
  void addRow(int row, const ReadingCompared& compared);
  void showOffer();
  [[nodiscard]] QString wordsOf(const FittedValue& value) const;
  QPushButton* button(const QString& name, const QString& words);

  Document& document_;
  SunSurvey& survey_;
  QVBoxLayout* column_;
  QWidget* table_ = nullptr;
  QLabel* sum_;
  QLabel* unused_;
  QPushButton* look_;
  QLabel* offer_;
  QPushButton* apply_;
  QPushButton* dismiss_;
};

}  // namespace tussock
