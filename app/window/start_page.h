// SPDX-License-Identifier: MIT
// What the window shows while no yard is open: start one, open one, or see the example.
#pragma once

#include <QWidget>

#include "core/model/settings.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace tussock {

class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent = nullptr);
  void showRecent(const QStringList& paths);

 signals:
  void newYardWanted(const tussock::Settings& settings);
  void openWanted();
  void recentWanted(const QString& path);
  void exampleWanted();

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QWidget* makeNewYard();
  QWidget* makeOpen();
  void start();

  QLineEdit* name_ = nullptr;
  QLineEdit* latitude_ = nullptr;
  QLineEdit* longitude_ = nullptr;
  QComboBox* units_ = nullptr;
  QLabel* trouble_ = nullptr;
  QVBoxLayout* recent_ = nullptr;
};

}  // namespace tussock
