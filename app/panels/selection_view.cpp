// SPDX-License-Identifier: MIT
#include "app/panels/selection_view.h"

#include <map>
#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/document/substitutes.h"
#include "app/document/sun_survey.h"
#include "app/look/theme.h"
#include "app/panels/drift_head.h"
#include "app/panels/fill_bar.h"
#include "app/panels/fill_panel.h"
#include "app/panels/forms.h"
#include "app/panels/kind_words.h"
#include "app/panels/object_form.h"
#include "app/panels/species_marks.h"
#include "app/panels/standing_picture.h"
#include "app/panels/substitute_view.h"
#include "app/panels/survey_view.h"

namespace tussock {

namespace {

// Calls f(Id<T>) for the kind the ref has, if it is one of Ts.
template <class... Ts, class F>
void withId(ObjectRef ref, F f) {
  const auto attempt = [&]<class T>(std::type_identity<T>) {
    if (const auto id = idIf<T>(ref)) f(*id);
  };
  (attempt(std::type_identity<Ts>{}), ...);
}

QLabel* selectionHeading(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setObjectName(QStringLiteral("margin-heading"));
  label->setProperty("look", QStringLiteral("heading"));
  label->setWordWrap(true);
  return label;
}

}  // namespace

SelectionView::SelectionView(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      column_(new QVBoxLayout(this)),
      foot_(new QWidget(this)),
      filling_(new Filling(document, this)),
      survey_(new SunSurvey(document, this)),
      others_(new Substitutes(document, this)) {
  column_->setContentsMargins(kSpace4 + kSpace1, kSpace4, kSpace4, kSpace4);
  (new QVBoxLayout(foot_))->setContentsMargins(0, 0, 0, 0);
  foot_->hide();
  connect(&document_, &Document::opened, this, &SelectionView::rebuild);
  connect(&document_, &Document::selectionChanged, this, &SelectionView::refresh);
  connect(&document_, &Document::changed, this, &SelectionView::followEdit);
  connect(&document_, &Document::sunMapChanged, this, &SelectionView::refresh);
  rebuild();
}

bool SelectionView::readsScore() const {
  return fill_ && fill_->scoreOpen();
}

QString SelectionView::shapeOf(const std::vector<ObjectRef>& refs) const {
  QString shape;
  for (const ObjectRef& ref : refs) {
    shape += QStringLiteral("%1:%2 ").arg(ref.kind).arg(ref.id);
    if (const auto id = idIf<Building>(ref))
      if (const Building* b = objectIn(document_.yard(), *id)) shape += text(wordOf(b->roof));
    if (const auto id = idIf<Tree>(ref))
      if (const Tree* t = objectIn(document_.yard(), *id))
        shape += t->evergreen ? QStringLiteral("evergreen") : QString();
  }
  return shape;
}

void SelectionView::refresh() {
  if (shapeOf(document_.selection()) != shape_) return rebuild();
  if (head_) head_->refresh();
  if (form_) form_->refresh();
  if (standing_) standing_->refresh();
  if (fill_) fill_->refresh();
  if (bar_) bar_->refresh();
  if (substitutes_) substitutes_->refresh();
}

// What can be done again has been undone: whoever does that is done with a refused value too.
void SelectionView::followEdit() {
  if (form_ && document_.redoLabel()) form_->forgetRefused();
  refresh();
}

void SelectionView::forgetRefused() {
  if (form_) form_->forgetRefused();
}

void SelectionView::preview(const ChangeSet& edit) {
  if (!form_) return;
  std::optional<Object> inHand = inHandOf(edit);
  if (head_) head_->preview(inHand ? std::get_if<Drift>(&*inHand) : nullptr);
  form_->preview(std::move(inHand));
}

// What is selected, as the edit would make it; nothing where it would become several.
std::optional<Object> SelectionView::inHandOf(const ChangeSet& edit) const {
  const auto& selection = document_.selection();
  std::optional<Object> inHand;
  for (const Change& change : edit.changes) {
    if (selection.size() != 1 || subjectOf(change).kind != selection.front().kind) continue;
    if (!change.before) return std::nullopt;
    if (subjectOf(change) == selection.front()) inHand = change.after;
  }
  return inHand;
}

void SelectionView::setWeek(std::optional<int> week) {
  week_ = week;
  if (standing_) standing_->setWeek(week);
}

// Later: one of its own fields may have asked for this.
void SelectionView::dropContent() {
  for (QWidget* gone : {content_, static_cast<QWidget*>(bar_)}) {
    if (!gone) continue;
    gone->hide();
    gone->parentWidget()->layout()->removeWidget(gone);
    gone->deleteLater();
  }
  head_ = nullptr;
  form_ = nullptr;
  standing_ = nullptr;
  fill_ = nullptr;
  bar_ = nullptr;
  substitutes_ = nullptr;
}

void SelectionView::rebuild() {
  const QWidget* focus = QApplication::focusWidget();
  const bool within = content_ && focus && content_->isAncestorOf(focus);
  const QString field = within ? focus->objectName() : QString();
  shape_ = shapeOf(document_.selection());
  dropContent();
  content_ = new QWidget(this);
  auto* inner = new QVBoxLayout(content_);
  inner->setContentsMargins(0, 0, 0, 0);
  inner->setSpacing(kSpace3);
  if (document_.selection().size() > 1) {
    buildMany(document_.selection());
  } else {
    const auto& selected = document_.selection();
    buildFor(selected.empty() ? refTo(Id<Settings>(1)) : selected.front());
  }
  inner->addStretch(1);
  column_->addWidget(content_);
  content_->show();  // at once: a layout would wait for the next round of events
  foot_->setVisible(bar_ != nullptr);
  emit footChanged();
  if (QWidget* again = field.isEmpty() ? nullptr : content_->findChild<QWidget*>(field))
    again->setFocus();
}

void SelectionView::buildFor(ObjectRef ref) {
  form_ = new FieldForm(content_);
  form_->setEnabled(!document_.isReadOnly() && document_.isOpen());
  if (const auto drift = idIf<Drift>(ref)) {
    head_ = new DriftHead(document_, *drift, content_);
    content_->layout()->addWidget(head_);
    addFactsLink(*drift);
  } else {
    content_->layout()->addWidget(selectionHeading(kindHeading(ref), content_));
  }
  if (const auto bed = idIf<Bed>(ref)) {
    standing_ = new StandingPicture(document_, *bed, week_, content_);
    content_->layout()->addWidget(standing_);
  }
  withId<Settings, Bed, Patch, Drift, Building, Barrier, Tree, LotLine, Paving, SteppingPlace,
         WaterPoint, HeightLimit, BuriedLine, Photo, SunReading>(
      ref, [this](auto id) { fillForm(*form_, document_, id); });
  content_->layout()->addWidget(form_);
  if (idIf<Settings>(ref) || idIf<SunReading>(ref))
    content_->layout()->addWidget(new SurveyView(document_, *survey_, content_));
  if (const auto drift = idIf<Drift>(ref)) {
    substitutes_ = new SubstituteView(document_, *others_, *drift, content_);
    content_->layout()->addWidget(substitutes_);
  }
  if (const auto bed = idIf<Bed>(ref)) addFilling(*bed);
}

void SelectionView::addFilling(Id<Bed> bed) {
  fill_ = new FillPanel(document_, *filling_, bed, content_);
  connect(fill_, &FillPanel::listWanted, this, &SelectionView::listWanted);
  connect(fill_, &FillPanel::scoreToggled, this, &SelectionView::footChanged);
  connect(fill_, &FillPanel::compareWanted, this, &SelectionView::compareWanted);
  content_->layout()->addWidget(fill_);
  bar_ = new FillBar(document_, *filling_, bed, foot_);
  connect(bar_, &FillBar::compareWanted, this, &SelectionView::compareWanted);
  connect(bar_, &FillBar::scoreWanted, fill_, &FillPanel::openScore);
  connect(bar_, &FillBar::keepWanted, fill_, &FillPanel::keep);
  foot_->layout()->addWidget(bar_);
}

void SelectionView::addFactsLink(Id<Drift> drift) {
  auto* link = new QPushButton(tr("All that is known of this plant"), content_);
  link->setObjectName(QStringLiteral("drift-facts"));
  link->setProperty("look", QStringLiteral("link"));
  connect(link, &QPushButton::clicked, this, [this, drift] {
    if (const Drift* found = document_.yard().drifts.find(drift))
      emit factsWanted(text(found->species));
  });
  auto* row = new QHBoxLayout;
  row->addWidget(link);
  row->addStretch(1);
  static_cast<QVBoxLayout*>(content_->layout())->addLayout(row);
}

void SelectionView::buildMany(const std::vector<ObjectRef>& refs) {
  content_->layout()->addWidget(
      selectionHeading(tr("%1 things selected").arg(refs.size()), content_));
  std::map<std::size_t, int> kinds;
  std::size_t plants = 0;
  for (const ObjectRef& ref : refs) {
    ++kinds[ref.kind];
    const auto id = idIf<Drift>(ref);
    const Drift* drift = id ? objectIn(document_.yard(), *id) : nullptr;
    if (drift) plants += drift->plants.size();
  }
  form_ = new FieldForm(content_);
  for (const auto& [kind, count] : kinds)
    form_->addFact(QStringLiteral("many-%1").arg(kind), kindHeading({kind, 0}),
                   [count = count] { return QString::number(count); });
  if (plants > 0)
    form_->addFact(QStringLiteral("many-plants"), tr("Plants"),
                   [plants] { return QString::number(plants); });
  content_->layout()->addWidget(form_);
}

}  // namespace tussock
