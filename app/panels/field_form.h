// SPDX-License-Identifier: MIT
// Facts and fields, one to a line: a quiet label and what is so. A field makes one edit on Enter or
// on leaving it; what cannot be read is said under it and changes nothing.
#pragma once

#include <functional>
#include <optional>
#include <QString>
#include <QStringList>
#include <QWidget>
#include <vector>

#include "core/edit/change.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QSlider;

namespace tussock {

class InlineField;

class FieldForm : public QWidget {
  Q_OBJECT

 public:
  using Read = std::function<QString()>;
  // Makes the edit; gives what is wrong with the text, or an empty string.
  using Write = std::function<QString(const QString&)>;

  explicit FieldForm(QWidget* parent = nullptr);

  // `name` becomes the object name of the widget that shows or takes the value.
  QLabel* addFact(const QString& name, const QString& label, Read read);
  QLineEdit* addField(const QString& name, const QString& label, Read read, Write write);
  // Quiet words at the right end of a field, beside its value; nothing where there are none.
  void addAside(QLineEdit& field, const QString& name, Read read);
  // Several lines of text; written on leaving it or with Ctrl and Enter.
  QPlainTextEdit* addTable(const QString& name, const QString& label, Read read, Write write,
                           const QString& whenEmpty);
  QComboBox* addChoice(const QString& name, const QString& label, const QStringList& words,
                       std::function<int()> read, std::function<void(int)> write);
  QCheckBox* addTick(const QString& name, const QString& words, std::function<bool()> read,
                     std::function<void(bool)> write);
  // 0 to 100; written once the handle is let go, and at each step of a key or a press beside it.
  QSlider* addSlider(const QString& name, const QString& label, std::function<int()> read,
                     std::function<void(int)> write);
  void addNote(const QString& words);

  // Shows what is so now; leaves alone what someone is typing.
  void refresh();
  bool forgetRefused();  // values that could not be taken; false when there are none
  // Shows the object as an edit in hand would make it; nothing ends that.
  void preview(std::optional<Object> object);
  [[nodiscard]] const std::optional<Object>& previewed() const { return previewed_; }

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QLabel* addLabel(const QString& label);
  void addValue(QWidget* label, QWidget* value);

  QGridLayout* grid_;
  std::optional<Object> previewed_;
  std::vector<std::function<void()>> refreshers_;
  std::vector<InlineField*> fields_;
};

}  // namespace tussock
