// SPDX-License-Identifier: MIT
// Under what is told of the selected bed, and always in sight: formal or natural, the buttons that
// fill, how far the filling has come, what it had to say, and what to do with the arrangement.
#pragma once

#include <map>
#include <QPointer>
#include <QWidget>

#include "app/document/filling.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QSlider;
class QStackedWidget;
class QVBoxLayout;

namespace tussock {

class FieldForm;
class FillStops;

class FillBar : public QWidget {
  Q_OBJECT

 public:
  FillBar(Document& document, Filling& filling, Id<Bed> bed, QWidget* parent = nullptr);

  void refresh();

 signals:
  void scoreWanted();    // rule by rule
  void compareWanted();  // two arrangements of the bed side by side
  void keepWanted();     // what stands in the bed, under a name

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  enum class Next { SameSeed, NextSeed };
  void addManner(QVBoxLayout* column);
  void addButtons(QVBoxLayout* column);
  [[nodiscard]] QWidget* makeButtons();
  [[nodiscard]] QWidget* makeRunning();
  [[nodiscard]] QPushButton* speciesButton();
  void addNotes(QVBoxLayout* column);
  void addAfter(QVBoxLayout* column);
  [[nodiscard]] std::map<QString, std::string> speciesPlanted() const;
  void refill(const std::string& species);
  void fill(FillWhat what, Next next);
  // What stands in the bed and may be arranged otherwise, else what it is to be planted with.
  [[nodiscard]] std::vector<ListedSpecies> toArrange() const;
  void showRunning();
  void swapButtons(bool running);
  void showNotes();
  [[nodiscard]] const Bed* bed() const;

  Document& document_;
  Filling& filling_;
  Id<Bed> bed_;
  FieldForm* manner_ = nullptr;
  QSlider* slider_ = nullptr;        // from formal to natural
  QStackedWidget* pages_ = nullptr;  // the buttons, or how far the filling has come
  QWidget* buttons_ = nullptr;
  QPushButton* species_ = nullptr;
  QWidget* running_ = nullptr;
  QProgressBar* progress_ = nullptr;
  FillStops* stops_ = nullptr;
  QPointer<QWidget> pressed_;  // the button that started the filling, if it had the focus
  QLabel* notes_ = nullptr;
  QPushButton* more_ = nullptr;  // notes than the first
  QWidget* after_ = nullptr;     // what can be done once something is planted
  QPushButton* keep_ = nullptr;
  QPushButton* compare_ = nullptr;
};

}  // namespace tussock
