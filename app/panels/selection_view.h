// SPDX-License-Identifier: MIT
// What is selected, as facts and fields; the yard when nothing is.
#pragma once

#include <optional>
#include <QWidget>

#include "app/document/document.h"

class QLabel;
class QVBoxLayout;

namespace tussock {

class DriftHead;
class FieldForm;
class FillBar;
class FillPanel;
class Filling;
class StandingPicture;
class SubstituteView;
class Substitutes;
class SunSurvey;

class SelectionView : public QWidget {
  Q_OBJECT

 public:
  explicit SelectionView(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] Filling& filling() const { return *filling_; }
  // What stays in sight however far the rest is scrolled; hidden while there is nothing.
  [[nodiscard]] QWidget* foot() const { return foot_; }
  [[nodiscard]] bool readsScore() const;  // rule by rule: it wants room
  [[nodiscard]] SunSurvey& survey() const { return *survey_; }
  void setWeek(std::optional<int> week);  // which the picture of a bed shows
  void preview(const ChangeSet& edit);    // what is being dragged; empty when nothing is
  void forgetRefused();                   // values that could not be taken

 signals:
  void factsWanted(const QString& botanicalName);
  void listWanted();     // the bed's plant list with its figures beside it
  void compareWanted();  // two arrangements of the bed side by side
  void footChanged();

 private:
  void rebuild();
  void addFactsLink(Id<Drift> drift);
  void addFilling(Id<Bed> bed);
  void dropContent();
  void refresh();
  void followEdit();
  [[nodiscard]] std::optional<Object> inHandOf(const ChangeSet& edit) const;
  void buildFor(ObjectRef ref);
  void buildMany(const std::vector<ObjectRef>& refs);
  // Changes when the object shown needs other fields than those built.
  [[nodiscard]] QString shapeOf(const std::vector<ObjectRef>& refs) const;

  Document& document_;
  QVBoxLayout* column_;
  QWidget* content_ = nullptr;
  DriftHead* head_ = nullptr;
  FieldForm* form_ = nullptr;
  StandingPicture* standing_ = nullptr;
  FillPanel* fill_ = nullptr;
  QWidget* foot_;
  FillBar* bar_ = nullptr;
  SubstituteView* substitutes_ = nullptr;
  Filling* filling_;
  SunSurvey* survey_;
  Substitutes* others_;
  std::optional<int> week_;
  QString shape_;
};

}  // namespace tussock
