// SPDX-License-Identifier: MIT
#include "app/panels/arrangements_view.h"

#include <algorithm>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/arrangement_picture.h"
#include "app/panels/buttons.h"
#include "app/panels/flow_layout.h"
#include "app/panels/inline_field.h"
#include "app/panels/scrolled.h"
#include "core/planting/arrangements.h"

namespace tussock {

namespace {

QWidget* cardIn(QWidget* parent) {
  auto* card = new QWidget(parent);
  auto* column = new QVBoxLayout(card);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  card->setFixedWidth(132);
  return card;
}

}  // namespace

ArrangementsView::ArrangementsView(Document& document, Filling& filling, Id<Bed> bed,
                                   QWidget* parent)
    : QWidget(parent),
      document_(document),
      filling_(filling),
      bed_(bed),
      column_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("arrangements"));
  column_->setContentsMargins(0, 0, 0, 0);
  refresh();
}

void plantArrangement(Document& document, Id<Arrangement> id) {
  const ChosenArrangement chosen = chooseArrangement(document.yard(), id, document.ids());
  if (!chosen.edit.empty() && !document.commit(chosen.edit)) return;
  if (chosen.leftOut == 0) return;
  emit document.remark(
      chosen.leftOut == 1
          ? ArrangementsView::tr(
                "1 plant of the arrangement was left out: locked or existing plants stand there.")
          : ArrangementsView::tr("%1 plants of the arrangement were left out: locked or existing "
                                 "plants stand there.")
                .arg(chosen.leftOut));
}

// The first that none of the bed's has.
std::string ArrangementsView::nextName() const {
  const auto kept = arrangementsOf(document_.yard(), bed_);
  for (std::size_t number = kept.size() + 1;; ++number) {
    std::string name = tr("Arrangement %1").arg(number).toStdString();
    if (std::none_of(kept.begin(), kept.end(), [&](auto* one) { return one->name == name; }))
      return name;
  }
}

void ArrangementsView::keep() {
  const Bed* bed = document_.yard().beds.find(bed_);
  if (!bed) return;
  const ChangeSet edit = keepArrangement(document_.yard(), bed_, nextName(), filling_.seedOf(bed_),
                                         bed->wildness, document_.ids());
  if (!document_.commit(edit)) return;
  refresh();
  if (cards_.empty()) return;
  InlineField* name = cards_.back().name;
  name->line()->setFocus();
  name->line()->selectAll();
  bringIntoView(name->parentWidget());
}

// Pictures take a moment: they are made anew only when something in them has changed, which a name
// is not.
bool ArrangementsView::takeShown() {
  std::vector<KeptDrift> ground;
  for (const Drift* drift : driftsIn(document_.yard(), bed_)) ground.push_back(keptFrom(*drift));
  std::vector<Arrangement> kept;
  for (const Arrangement* one : arrangementsOf(document_.yard(), bed_)) {
    kept.push_back(*one);
    kept.back().name.clear();
  }
  const bool same = content_ && ground == ground_ && kept == kept_;
  ground_ = std::move(ground), kept_ = std::move(kept);
  return !same;
}

void ArrangementsView::showNames() {
  for (const Card& card : cards_) {
    card.name->refresh();
    const Arrangement* kept = document_.yard().arrangements.find(card.arrangement);
    if (!kept) continue;
    card.picture->setAccessibleName(tr("Plant %1 instead").arg(QString::fromStdString(kept->name)));
    card.picture->setToolTip(card.picture->accessibleName());
  }
}

void ArrangementsView::refresh() {
  if (!takeShown()) {
    showNames();
    return content_->update();
  }
  cards_.clear();
  if (content_) {
    content_->hide();
    content_->deleteLater();
  }
  content_ = new QWidget(this);
  auto* flow = new FlowLayout(kSpace3, kSpace3);
  content_->setLayout(flow);
  setVisible(!ground_.empty() || !kept_.empty());
  QWidget* now = cardIn(content_);
  auto* picture = new ArrangementPicture(document_, bed_, ground_, now);
  picture->setEnabled(false);
  now->layout()->addWidget(picture);
  now->layout()->addWidget(new QLabel(tr("On the ground"), now));
  auto* keepIt = linkButton(QStringLiteral("arrangement-keep"), tr("Keep"),
                            tr("Keep this arrangement under a name, to come back to it"), now);
  keepIt->setEnabled(!document_.isReadOnly());
  connect(keepIt, &QPushButton::clicked, this, &ArrangementsView::keep);
  now->layout()->addWidget(keepIt);
  flow->addWidget(now);
  for (const Arrangement& kept : kept_) addCard(flow, kept);
  column_->addWidget(content_);
  content_->show();
  showNames();
}

void ArrangementsView::addCard(QLayout* flow, const Arrangement& arrangement) {
  QWidget* card = cardIn(content_);
  card->setEnabled(!document_.isReadOnly());
  const Id<Arrangement> id = arrangement.id;
  const auto choose = [this, id] { plantArrangement(document_, id); };
  auto* picture = new ArrangementPicture(document_, bed_, arrangement.drifts, card);
  picture->setObjectName(QStringLiteral("arrangement-picture"));
  connect(picture, &QAbstractButton::clicked, this, choose);
  card->layout()->addWidget(picture);
  auto* title = new InlineField(
      [this, id] {
        const Arrangement* now = document_.yard().arrangements.find(id);
        return now ? QString::fromStdString(now->name) : QString();
      },
      [this, id](const QString& typed) {
        if (typed.trimmed().isEmpty()) return tr("Write a name.");
        document_.commit(renameArrangement(document_.yard(), id, typed.trimmed().toStdString()));
        return QString();
      },
      card);
  title->line()->setObjectName(QStringLiteral("arrangement-name"));
  title->line()->setAccessibleName(tr("Name of the arrangement"));
  card->layout()->addWidget(title);
  auto* out = linkButton(QStringLiteral("arrangement-remove"), tr("Remove"), {}, card);
  connect(out, &QPushButton::clicked, this,
          [this, id] { document_.commit(removeArrangement(document_.yard(), id)); });
  card->layout()->addWidget(out);
  flow->addWidget(card);
  cards_.push_back({id, picture, title});
}

}  // namespace tussock
