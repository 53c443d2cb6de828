// SPDX-License-Identifier: MIT
// The questions the window must put to a person: which file. Tests answer them themselves.
#pragma once

#include <QString>
#include <QWidget>

class QPrinter;

namespace tussock {

class Prompts {
 public:
  virtual ~Prompts() = default;
  // All give an empty path when the person thinks better of it.
  [[nodiscard]] virtual QString yardToOpen() = 0;
  [[nodiscard]] virtual QString yardToSave(const QString& title, const QString& suggested) = 0;
  [[nodiscard]] virtual QString pictureToBringIn() = 0;
  [[nodiscard]] virtual QString siteToImport() = 0;
  [[nodiscard]] virtual QString exportTo(const QString& suggested) = 0;
  [[nodiscard]] virtual QString planTo(const QString& suggested) = 0;
  [[nodiscard]] virtual QString plantsToBringIn() = 0;
  [[nodiscard]] virtual QString plantsTo(const QString& suggested) = 0;
  // False when the person thinks better of it.
  [[nodiscard]] virtual bool choosePrinter(QPrinter& printer) = 0;
  virtual void tellAbout() = 0;
};

class QtPrompts : public Prompts {
 public:
  explicit QtPrompts(QWidget* window) : window_(window) {}
  [[nodiscard]] QString yardToOpen() override;
  [[nodiscard]] QString yardToSave(const QString& title, const QString& suggested) override;
  [[nodiscard]] QString pictureToBringIn() override;
  [[nodiscard]] QString siteToImport() override;
  [[nodiscard]] QString exportTo(const QString& suggested) override;
  [[nodiscard]] QString planTo(const QString& suggested) override;
  [[nodiscard]] QString plantsToBringIn() override;
  [[nodiscard]] QString plantsTo(const QString& suggested) override;
  [[nodiscard]] bool choosePrinter(QPrinter& printer) override;
  void tellAbout() override;

 private:
  QWidget* window_;
};

}  // namespace tussock
