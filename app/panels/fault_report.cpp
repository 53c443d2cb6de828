// SPDX-License-Identifier: MIT
#include "app/panels/fault_report.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "core/exchange/fault_csv.h"

namespace tussock {

namespace {

constexpr int kLeastLines = 240;  // pixels: a dozen lines

QLabel* label(const char* look, QWidget* parent) {
  auto* made = new QLabel(parent);
  made->setProperty("look", QLatin1String(look));
  made->setWordWrap(true);
  made->setTextFormat(Qt::PlainText);  // file names and values may look like markup
  return made;
}

QPushButton* button(const char* name, const QString& words, QWidget* parent) {
  auto* made = new QPushButton(words, parent);
  made->setObjectName(QLatin1String(name));
  return made;
}

}  // namespace

FaultReport::FaultReport(QWidget* parent)
    : QWidget(parent),
      title_(label("heading", this)),
      count_(label("quiet", this)),
      lines_(new QPlainTextEdit(this)) {
  setObjectName(QStringLiteral("fault-report"));
  count_->setObjectName(QStringLiteral("fault-count"));
  lines_->setObjectName(QStringLiteral("fault-lines"));
  lines_->setReadOnly(true);
  lines_->setMinimumHeight(kLeastLines);
  lines_->setAccessibleName(tr("What could not be used"));
  auto* back = button("fault-back", tr("‹ Back to the selection"), this);
  back->setProperty("look", QStringLiteral("link"));
  auto* copy = button("fault-copy", tr("Copy all"), this);
  auto* save = button("fault-save", tr("Save as a table…"), this);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(kSpace2);
  buttons->addWidget(copy);
  buttons->addWidget(save);
  buttons->addStretch(1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace4 + kSpace1, kSpace4, kSpace4, kSpace4);
  column->setSpacing(kSpace2);
  column->addWidget(back, 0, Qt::AlignLeft);
  column->addWidget(title_);
  column->addWidget(count_);
  column->addLayout(buttons);
  column->addWidget(lines_, 1);
  connect(back, &QPushButton::clicked, this, &FaultReport::left);
  connect(save, &QPushButton::clicked, this, &FaultReport::saveWanted);
  connect(copy, &QPushButton::clicked, this,
          [this] { QApplication::clipboard()->setText(lines_->toPlainText()); });
}

void FaultReport::take(const QString& title, const std::vector<CatalogueError>& faults) {
  faults_ = faults;
  title_->setText(title);
  const QString many =
      faults.size() == 1 ? tr("One thing") : tr("%1 things").arg(int(faults.size()));
  count_->setText(tr("%1 could not be used. The rest is in use, and the file stays as it is. Mend "
                     "these lines and bring the file in again.")
                      .arg(many));
  lines_->setPlainText(QString::fromStdString(faultsText(faults)));
}

}  // namespace tussock
