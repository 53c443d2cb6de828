// SPDX-License-Identifier: MIT
// A line to type in, with room under it for what is wrong. Escape puts back what was so.
#pragma once

#include <functional>
#include <QWidget>

class QLabel;
class QLineEdit;

namespace tussock {

class InlineField : public QWidget {
  Q_OBJECT

 public:
  InlineField(std::function<QString()> read, std::function<QString(const QString&)> write,
              QWidget* parent = nullptr);
  ~InlineField() override;

  [[nodiscard]] QLineEdit* line() const { return line_; }
  // Shows what is so now; leaves alone what someone is typing.
  void refresh();
  void forgetRefused();  // and shows what is so instead

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] bool isMeantForWindow(QEvent* event) const;
  void finish();
  void putBack();
  void say(const QString& wrong);

  std::function<QString()> read_;
  std::function<QString(const QString&)> write_;
  QString shown_;
  QLineEdit* line_;
  QLabel* wrong_;
  bool finishing_ = false;
};

}  // namespace tussock
