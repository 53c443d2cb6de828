// SPDX-License-Identifier: MIT
#include "app/panels/list_desk.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/desk_body.h"
#include "app/panels/figures_view.h"
#include "app/panels/plant_list_view.h"
#include "app/panels/scrolled.h"
#include "app/panels/selection.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr int kListWidth = 288;  // pixels: names, shares and the button beside them

}  // namespace

ListDesk::ListDesk(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("list-desk"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace4, 0, kSpace4, kSpace2);
  column->setSpacing(kSpace2);
  addHead();
  auto* body = new DeskBody(this);
  place_ = new QHBoxLayout(body);
  place_->setContentsMargins(0, 0, 0, 0);
  empty_ = new QLabel(tr("Select a bed to see its plant list and what the list comes to."), body);
  empty_->setObjectName(QStringLiteral("list-desk-empty"));
  empty_->setProperty("look", QStringLiteral("quiet"));
  empty_->setAlignment(Qt::AlignCenter);
  place_->addWidget(empty_);
  column->addWidget(body);
  connect(&document_, &Document::opened, this, &ListDesk::follow);
  connect(&document_, &Document::changed, this, &ListDesk::follow);
  connect(&document_, &Document::selectionChanged, this, &ListDesk::follow);
  connect(&document_, &Document::sunMapChanged, this, &ListDesk::refresh);
  follow();
}

void ListDesk::addHead() {
  auto* head = new QHBoxLayout;
  title_ = new QLabel(this);
  title_->setObjectName(QStringLiteral("list-desk-title"));
  title_->setProperty("look", QStringLiteral("strong"));
  title_->setTextFormat(Qt::PlainText);
  auto* back = new QPushButton(tr("Back to the plants"), this);
  back->setObjectName(QStringLiteral("list-desk-back"));
  back->setProperty("look", QStringLiteral("link"));
  connect(back, &QPushButton::clicked, this, &ListDesk::left);
  head->addWidget(title_, 1);
  head->addWidget(back);
  static_cast<QVBoxLayout*>(layout())->addLayout(head);
}

void ListDesk::follow() {
  const Bed* bed = bedOfSelection(document_.yard(), document_.selection());
  const std::optional<Id<Bed>> id = bed ? std::optional(bed->id) : std::nullopt;
  title_->setText(
      bed ? tr("Plant list of %1").arg(bed->name.empty() ? tr("this bed") : text(bed->name))
          : tr("Plant list"));
  if (id == bed_) return refresh();
  bed_ = id;
  if (content_) {  // one of its own fields may have asked for this
    content_->hide();
    content_->deleteLater();
    content_ = nullptr, list_ = nullptr, figures_ = nullptr;
  }
  empty_->setVisible(!bed);
  if (bed) build(*bed);
}

void ListDesk::build(const Bed& bed) {
  content_ = new QWidget(this);
  auto* row = new QHBoxLayout(content_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kSpace5);
  auto* sheet = new QWidget;
  auto* column = new QVBoxLayout(sheet);
  column->setContentsMargins(0, 0, kSpace2, 0);  // clear of the bar that scrolls
  list_ = new PlantListView(document_, bed.id, sheet);
  column->addWidget(list_);
  column->addStretch(1);
  QWidget* list = scrolled(sheet, QStringLiteral("list-desk-list"));
  list->setFixedWidth(kListWidth);
  row->addWidget(list);
  figures_ = new FiguresView(document_, bed.id, FiguresView::Flow::Across, content_);
  row->addWidget(figures_, 1);
  place_->addWidget(content_);
  content_->show();
}

void ListDesk::refresh() {
  if (list_) list_->refresh();
  if (figures_) figures_->refresh();
}

}  // namespace tussock
