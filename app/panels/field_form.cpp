// SPDX-License-Identifier: MIT
#include "app/panels/field_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSlider>

#include "app/look/theme.h"
#include "app/panels/inline_field.h"
#include "app/panels/inline_table.h"

namespace tussock {

namespace {

constexpr int kLabelWidth = 80;
constexpr int kSliderHeight = 22;
constexpr int kBesideSlider = 3;  // pixels over a label, so that it stands level with the groove

// Turning the wheel scrolls the form; it changes a value only where one is being set.
class WheelGuard : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    const auto* field = qobject_cast<QWidget*>(watched);
    if (event->type() != QEvent::Wheel || !field || field->hasFocus()) return false;
    event->ignore();
    return true;
  }
};

}  // namespace

FieldForm::FieldForm(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(kSpace2);
  grid_->setVerticalSpacing(kSpace1 + 2);
  grid_->setColumnMinimumWidth(0, kLabelWidth);
  grid_->setColumnStretch(1, 1);
}

QLabel* FieldForm::addLabel(const QString& label) {
  auto* quiet = new QLabel(label, this);
  quiet->setProperty("look", QStringLiteral("quiet"));
  return quiet;
}

void FieldForm::addValue(QWidget* label, QWidget* value) {
  const int row = grid_->rowCount();
  const bool tall = qobject_cast<InlineField*>(value) || qobject_cast<InlineTable*>(value) ||
                    qobject_cast<QComboBox*>(value);
  const bool slides = qobject_cast<QSlider*>(value) != nullptr;
  label->setContentsMargins(0, tall ? kSpace1 + 2 : slides ? kBesideSlider : 0, 0, 0);
  grid_->addWidget(label, row, 0, Qt::AlignTop | Qt::AlignLeft);
  grid_->addWidget(value, row, 1);
}

QLabel* FieldForm::addFact(const QString& name, const QString& label, Read read) {
  auto* fact = new QLabel(this);
  fact->setObjectName(name);
  fact->setWordWrap(true);
  fact->setTextFormat(Qt::PlainText);
  fact->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  fact->setTextInteractionFlags(Qt::TextSelectableByMouse);
  fact->setAccessibleName(label);
  addValue(addLabel(label), fact);
  refreshers_.push_back([fact, read = std::move(read)] { fact->setText(read()); });
  refreshers_.back()();
  return fact;
}

QLineEdit* FieldForm::addField(const QString& name, const QString& label, Read read, Write write) {
  auto* field = new InlineField(std::move(read), std::move(write), this);
  field->line()->setObjectName(name);
  field->line()->setAccessibleName(label);
  QLabel* quiet = addLabel(label);
  quiet->setBuddy(field->line());
  addValue(quiet, field);
  refreshers_.push_back([field] { field->refresh(); });
  fields_.push_back(field);
  return field->line();
}

void FieldForm::addAside(QLineEdit& field, const QString& name, Read read) {
  auto* aside = new QLabel(&field);
  aside->setObjectName(name);
  aside->setProperty("look", QStringLiteral("quiet"));
  aside->setTextFormat(Qt::PlainText);
  aside->setAttribute(Qt::WA_TransparentForMouseEvents);
  auto* row = new QHBoxLayout(&field);
  row->setContentsMargins(0, 0, kSpace2, 0);
  row->addWidget(aside, 0, Qt::AlignRight | Qt::AlignVCenter);
  refreshers_.push_back([aside, &field, read = std::move(read)] {
    aside->setText(read());
    const int taken = aside->text().isEmpty() ? 0 : aside->sizeHint().width() + kSpace2;
    field.setTextMargins(0, 0, taken, 0);
  });
  refreshers_.back()();
}

QPlainTextEdit* FieldForm::addTable(const QString& name, const QString& label, Read read,
                                    Write write, const QString& whenEmpty) {
  auto* table = new InlineTable(std::move(read), std::move(write), this);
  table->lines()->setObjectName(name);
  table->lines()->setAccessibleName(label);
  table->lines()->setPlaceholderText(whenEmpty);
  addValue(addLabel(label), table);
  refreshers_.push_back([table] { table->refresh(); });
  return table->lines();
}

QComboBox* FieldForm::addChoice(const QString& name, const QString& label, const QStringList& words,
                                std::function<int()> read, std::function<void(int)> write) {
  auto* choice = new QComboBox(this);
  choice->setObjectName(name);
  choice->addItems(words);
  choice->setAccessibleName(label);
  choice->setFocusPolicy(Qt::StrongFocus);
  choice->installEventFilter(new WheelGuard(choice));
  choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  choice->setMinimumContentsLength(8);
  connect(choice, &QComboBox::activated, this,
          [write = std::move(write)](int index) { write(index); });
  addValue(addLabel(label), choice);
  refreshers_.push_back([choice, read = std::move(read)] { choice->setCurrentIndex(read()); });
  refreshers_.back()();
  return choice;
}

QCheckBox* FieldForm::addTick(const QString& name, const QString& words, std::function<bool()> read,
                              std::function<void(bool)> write) {
  auto* tick = new QCheckBox(words, this);
  tick->setObjectName(name);
  tick->setMinimumHeight(22);
  connect(tick, &QCheckBox::clicked, this, [write = std::move(write)](bool on) { write(on); });
  addValue(new QWidget(this), tick);
  refreshers_.push_back([tick, read = std::move(read)] { tick->setChecked(read()); });
  refreshers_.back()();
  return tick;
}

QSlider* FieldForm::addSlider(const QString& name, const QString& label, std::function<int()> read,
                              std::function<void(int)> write) {
  auto* slider = new QSlider(Qt::Horizontal, this);
  slider->setObjectName(name);
  slider->setRange(0, 100);
  slider->setPageStep(10);
  slider->setTracking(false);
  slider->setAccessibleName(label);
  slider->setMinimumHeight(kSliderHeight);
  slider->setFocusPolicy(Qt::StrongFocus);
  slider->installEventFilter(new WheelGuard(slider));
  connect(slider, &QSlider::valueChanged, this, [read, write = std::move(write)](int value) {
    if (value != read()) write(value);
  });
  addValue(addLabel(label), slider);
  refreshers_.push_back([slider, read = std::move(read)] {
    if (!slider->isSliderDown()) slider->setValue(read());
  });
  refreshers_.back()();
  return slider;
}

void FieldForm::addNote(const QString& words) {
  auto* note = new QLabel(words, this);
  note->setProperty("look", QStringLiteral("note"));
  note->setWordWrap(true);
  grid_->addWidget(note, grid_->rowCount(), 0, 1, 2);
}

void FieldForm::refresh() {
  for (const auto& refresher : refreshers_) refresher();
}

void FieldForm::preview(std::optional<Object> object) {
  if (!object && !previewed_) return;
  previewed_ = std::move(object);
  refresh();
}

bool FieldForm::forgetRefused() {
  bool any = false;
  for (InlineField* field : fields_) any = field->forgetRefused() || any;
  return any;
}

// An Escape that the part with the focus has no use for: what was refused may be another's.
void FieldForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && forgetRefused()) return event->accept();
  QWidget::keyPressEvent(event);
}

}  // namespace tussock
