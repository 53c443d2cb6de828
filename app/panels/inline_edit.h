// SPDX-License-Identifier: MIT
// What fields to type in have in common: what is so is shown, what is typed is written on leaving,
// and what is wrong with it is said under it. Escape puts back what was so.
#pragma once

#include <functional>
#include <QWidget>

class QKeyEvent;
class QLabel;

namespace tussock {

class InlineEdit : public QWidget {
  Q_OBJECT

 public:
  using Read = std::function<QString()>;
  // Gives what is wrong with the text, or what is to be said of what was made of it, or nothing.
  using Write = std::function<QString(const QString&)>;

  ~InlineEdit() override;
  // Shows what is so now; leaves alone what someone is typing.
  void refresh();
  bool forgetRefused();  // and shows what is so instead; false when nothing was refused

 protected:
  InlineEdit(Read read, Write write, QWidget* editor, QWidget* parent);

  void finish();
  void putBack();
  [[nodiscard]] virtual QString typed() const = 0;
  virtual void display(const QString& words) = 0;
  [[nodiscard]] virtual bool isModified() const = 0;
  virtual void setModified(bool modified) = 0;
  // True when the key ends the typing.
  [[nodiscard]] virtual bool finishes(const QKeyEvent& key) const;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] bool isMeantForWindow(const QEvent& event) const;
  [[nodiscard]] bool takeKey(const QEvent& event);
  [[nodiscard]] bool isRefused() const;
  enum class Said { Told, Refused };
  void say(const QString& words, Said said);

  Read read_;
  Write write_;
  QString shown_;
  QString refused_;  // as it was typed
  QWidget* editor_;
  QLabel* wrong_;
  bool finishing_ = false;
};

}  // namespace tussock
