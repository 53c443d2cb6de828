// SPDX-License-Identifier: MIT
#include "app/panels/findings_list.h"

#include <algorithm>
#include <QPushButton>
#include <QVBoxLayout>
#include <set>

#include "app/look/theme.h"
#include "app/panels/finding_row.h"
#include "core/checks/registry.h"

namespace tussock {

namespace {

constexpr std::size_t kAtOnce = 40;  // a long list helps nobody; the rest is a click away

QPushButton* link(const QString& name, QWidget* parent) {
  auto* made = new QPushButton(parent);
  made->setObjectName(name);
  made->setProperty("look", QStringLiteral("link"));
  made->hide();
  return made;
}

}  // namespace

FindingsList::FindingsList(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), most_(kAtOnce) {
  setObjectName(QStringLiteral("findings"));
  more_ = link(QStringLiteral("findings-more"), this);
  unfold_ = link(QStringLiteral("findings-unfold"), this);
  acceptedBox_ = new QWidget(this);
  acceptedBox_->hide();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace4 + kSpace1, 0, kSpace4, kSpace3);
  column->setSpacing(kSpace1);
  open_ = new QVBoxLayout;
  open_->setSpacing(kSpace1);
  accepted_ = new QVBoxLayout(acceptedBox_);
  accepted_->setContentsMargins(0, 0, 0, 0);
  column->addLayout(open_);
  column->addWidget(more_, 0, Qt::AlignLeft);
  column->addWidget(unfold_, 0, Qt::AlignLeft);
  column->addWidget(acceptedBox_);
  column->addStretch(1);
  connect(more_, &QPushButton::clicked, this, [this] {
    most_ += kAtOnce;
    refresh();
  });
  connect(unfold_, &QPushButton::clicked, this, [this] {
    acceptedBox_->setVisible(acceptedBox_->isHidden());
    refresh();
  });
  connect(&document_, &Document::opened, this, &FindingsList::refresh);
  connect(&document_, &Document::changed, this, &FindingsList::refresh);
  connect(&document_, &Document::findingsChanged, this, &FindingsList::refresh);
  refresh();
}

QString FindingsList::countWords() const {
  if (!document_.isOpen()) return {};
  if (document_.yard().drifts.empty() && isEmpty()) return tr("nothing is planted yet");
  if (!document_.findings()) return tr("looking");
  if (isEmpty()) return tr("nothing to mend");
  return acceptedCount_ == 0 ? tr("%1 open").arg(openCount_)
                             : tr("%1 open · %2 accepted").arg(openCount_).arg(acceptedCount_);
}

QString FindingsList::emptyWords() const {
  if (!document_.isOpen()) return {};
  if (document_.yard().drifts.empty())
    return tr(
        "Once something is planted, what could go wrong is told here, with where each limit "
        "comes from.");
  return tr("The checks look again after every edit.");
}

void FindingsList::refresh() {
  const auto findings = document_.findings();
  std::vector<const Finding*> open, accepted;
  if (findings)
    for (const Finding& finding : *findings)
      (acceptanceOf(document_.yard(), finding) ? accepted : open).push_back(&finding);
  openCount_ = open.size();
  acceptedCount_ = accepted.size();
  const std::size_t hidden = open.size() > most_ ? open.size() - most_ : 0;
  open.resize(open.size() - hidden);
  setUpdatesEnabled(false);
  dropRows(open, accepted);
  fill(open_, open);
  fill(accepted_, accepted);
  setUpdatesEnabled(true);
  more_->setText(tr("Show more (%1)").arg(hidden));
  more_->setVisible(hidden > 0);
  unfold_->setText(acceptedBox_->isHidden() ? tr("Show %1 accepted").arg(acceptedCount_)
                                            : tr("Hide %1 accepted").arg(acceptedCount_));
  unfold_->setVisible(acceptedCount_ > 0);
  if (acceptedCount_ == 0) acceptedBox_->hide();
  emit countsChanged();
}

void FindingsList::dropRows(const std::vector<const Finding*>& open,
                            const std::vector<const Finding*>& accepted) {
  std::set<std::string> kept;
  for (const auto* list : {&open, &accepted})
    for (const Finding* finding : *list) kept.insert(keyOf(*finding));
  std::erase_if(rows_, [&](const auto& entry) {
    if (kept.contains(entry.first)) return false;
    entry.second->hide();
    entry.second->deleteLater();
    return true;
  });
}

FindingRow* FindingsList::rowFor(const Finding& finding) {
  FindingRow*& row = rows_[keyOf(finding)];
  if (row) {
    row->show(finding);
    return row;
  }
  row = new FindingRow(document_, finding, this);
  connect(row, &FindingRow::chosen, this, &FindingsList::findingChosen);
  connect(row, &FindingRow::asking, this, &FindingsList::asking);
  connect(row, &FindingRow::told, this, &FindingsList::told);
  connect(row, &FindingRow::settled, this, &FindingsList::settled);
  return row;
}

// Puts the rows of the findings in order, moving only what is not in its place already.
void FindingsList::fill(QVBoxLayout* layout, const std::vector<const Finding*>& findings) {
  int index = 0;
  for (const Finding* finding : findings) {
    FindingRow* row = rowFor(*finding);
    QLayoutItem* there = layout->itemAt(index);
    if (!there || there->widget() != row) {
      open_->removeWidget(row);
      accepted_->removeWidget(row);
      layout->insertWidget(index, row);
      row->QWidget::show();
    }
    ++index;
  }
}

}  // namespace tussock
