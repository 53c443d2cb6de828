// SPDX-License-Identifier: MIT
// Lines to type in or to paste, with room under them for what is wrong. Written on leaving them or
// with Ctrl and Enter; Escape puts back what was so.
#pragma once

#include <functional>
#include <QWidget>

class QLabel;
class QPlainTextEdit;

namespace tussock {

class InlineTable : public QWidget {
  Q_OBJECT

 public:
  InlineTable(std::function<QString()> read, std::function<QString(const QString&)> write,
              QWidget* parent = nullptr);
  ~InlineTable() override;

  [[nodiscard]] QPlainTextEdit* lines() const { return lines_; }
  void refresh();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool takeKey(const QEvent& event);
  void finish();
  void putBack();
  void say(const QString& wrong);

  std::function<QString()> read_;
  std::function<QString(const QString&)> write_;
  QString shown_;
  QPlainTextEdit* lines_;
  QLabel* wrong_;
};

}  // namespace tussock
