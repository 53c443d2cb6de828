// SPDX-License-Identifier: MIT
#include "app/panels/sun_strip.h"

#include <array>
#include <QApplication>
#include <QButtonGroup>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/day_ribbon.h"
#include "app/panels/flow_layout.h"
#include "app/panels/sun_day_row.h"
#include "app/panels/sun_legend.h"
#include "app/panels/sun_words.h"
#include "app/panels/year_dial.h"

namespace tussock {

namespace {

constexpr std::array kYearsAhead{0, 5, 15};
constexpr int kSeason = 0, kWorstMonth = -1;  // among the months 1 to 12
constexpr int kWidest = 980, kNarrowest = 240;

QHBoxLayout* rowIn(QWidget* box) {
  auto* row = new QHBoxLayout(box);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kSpace2);
  return row;
}

int numberOf(const SunChoice& choice) {
  switch (choice.span) {
    case SunSpan::Season:
      return kSeason;
    case SunSpan::WorstMonth:
      return kWorstMonth;
    case SunSpan::Month:
      return int(unsigned(choice.month));
  }
  return kSeason;
}

void takeNumber(SunChoice& choice, int number) {
  choice.span = number == kSeason       ? SunSpan::Season
                : number == kWorstMonth ? SunSpan::WorstMonth
                                        : SunSpan::Month;
  if (choice.span == SunSpan::Month) choice.month = std::chrono::month(unsigned(number));
}

}  // namespace

SunStrip::SunStrip(Canvas& canvas) : QFrame(&canvas), canvas_(canvas) {
  setObjectName(QStringLiteral("sun-strip"));
  setProperty("look", QStringLiteral("card"));
  setAccessibleName(tr("Sun"));
  setCursor(Qt::ArrowCursor);
  setAttribute(Qt::WA_NoMousePropagation);  // the plan below is not meant
  layOut();
  follow();
  refresh();
}

void SunStrip::layOut() {
  dayRow_ = new SunDayRow(view());
  legend_ = new SunLegend;
  words_ = new QLabel;
  words_->setObjectName(QStringLiteral("sun-words"));
  words_->setProperty("look", QStringLiteral("note"));
  words_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  auto* top = new FlowLayout(kSpace4, kSpace1);
  for (QWidget* part : {makeLooks(), makeSpans(), static_cast<QWidget*>(dayRow_), makeTrees()})
    top->addWidget(part);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace3, kSpace2, kSpace3, kSpace2);
  column->setSpacing(kSpace1);
  column->addLayout(top);
  column->addWidget(legend_);
  column->addWidget(makeDials());
  column->addWidget(makeFoot());
}

void SunStrip::follow() {
  connect(dayRow_, &SunDayRow::troubled, this, [this](const QString& words) {
    trouble_ = words;
    showWords();
  });
  connect(dayRow_, &SunDayRow::dated, &canvas_, [this] { canvas_.setFocus(); });
  connect(day_, &DayRibbon::minuteChosen, this,
          [this](int minute) { choose([minute](SunChoice& c) { c.minute = minute; }); });
  connect(&view(), &SunView::choiceChanged, this, &SunStrip::refresh);
  connect(&view(), &SunView::mapChanged, this, [this] {
    refreshSpans();
    readPointer();
  });
  connect(&view(), &SunView::yardChanged, this, &SunStrip::readPointer);
  connect(&canvas_.document(), &Document::changed, this, &SunStrip::refresh);
  connect(&canvas_, &Canvas::pointerMoved, this, &SunStrip::showPointer);
  connect(&canvas_, &Canvas::pointerLeft, this, &SunStrip::forgetPointer);
  canvas_.installEventFilter(this);
}

QPushButton* SunStrip::chip(const QString& name, const QString& words) {
  auto* button = new QPushButton(words);
  button->setObjectName(name);
  button->setProperty("look", QStringLiteral("chip"));
  button->setCheckable(true);
  button->setFocusPolicy(Qt::TabFocus);
  return button;
}

QWidget* SunStrip::makeLooks() {
  auto* box = new QWidget;
  QHBoxLayout* row = rowIn(box);
  auto* looks = new QButtonGroup(this);
  const auto add = [&](const QString& name, const QString& words, SunLook look) {
    QPushButton* button = chip(name, words);
    looks->addButton(button);
    row->addWidget(button);
    connect(button, &QPushButton::clicked, this,
            [this, look] { choose([look](SunChoice& c) { c.look = look; }); });
    return button;
  };
  hours_ = add(QStringLiteral("sun-hours"), tr("Hours"), SunLook::Hours);
  shadows_ = add(QStringLiteral("sun-shadows"), tr("Shadows"), SunLook::Shadows);
  return box;
}

QWidget* SunStrip::makeSpans() {
  spans_ = new QComboBox;
  spans_->setObjectName(QStringLiteral("sun-span"));
  spans_->setAccessibleName(tr("Season or month"));
  spans_->setMinimumWidth(200);
  spans_->setMaxVisibleItems(14);
  connect(spans_, &QComboBox::activated, this, [this] {
    choose([number = spans_->currentData().toInt()](SunChoice& c) { takeNumber(c, number); });
  });
  return spans_;
}

QWidget* SunStrip::makeTrees() {
  auto* box = new QWidget;
  QHBoxLayout* row = rowIn(box);
  auto* label = new QLabel(tr("Trees"));
  label->setProperty("look", QStringLiteral("quiet"));
  row->addWidget(label);
  years_ = new QButtonGroup(this);
  for (const int years : kYearsAhead) {
    QPushButton* button = chip(QStringLiteral("sun-years-%1").arg(years),
                               years == 0 ? tr("this year") : tr("in %1 years").arg(years));
    years_->addButton(button, years);
    row->addWidget(button);
  }
  connect(years_, &QButtonGroup::idClicked, this,
          [this](int years) { choose([years](SunChoice& c) { c.yearsAhead = years; }); });
  return box;
}

QWidget* SunStrip::makeDials() {
  day_ = new DayRibbon;
  year_ = new YearDial;
  dials_ = new QWidget;
  QHBoxLayout* row = rowIn(dials_);
  row->addWidget(day_, 1);
  row->addWidget(year_, 1);
  connect(year_, &YearDial::dayChosen, this, [this](Date day) {
    trouble_.clear();
    choose([day](SunChoice& c) { c.day = day; });
  });
  return dials_;
}

// Beside the words, which may be short, so that the choices above stay on one line.
QWidget* SunStrip::makeFoot() {
  note_ = new QPushButton(tr("Note sun seen"));
  note_->setObjectName(QStringLiteral("sun-note"));
  note_->setFocusPolicy(Qt::TabFocus);
  note_->setToolTip(tr("Hours of sun that you have seen at a spot (Y)"));
  connect(note_, &QPushButton::clicked, this, &SunStrip::readingWanted);
  auto* box = new QWidget;
  QHBoxLayout* row = rowIn(box);
  row->addWidget(words_, 1);
  row->addWidget(note_);
  return box;
}

void SunStrip::toggle(SunLook look) {
  choose([look](SunChoice& c) { c.look = c.look == look ? SunLook::Off : look; });
}

void SunStrip::takeMotion() {
  dayRow_->takeMotion();
}

template <class Change>
void SunStrip::choose(Change change) {
  SunChoice choice = view().choice();
  change(choice);
  view().choose(choice);
}

void SunStrip::refresh() {
  const SunChoice& choice = view().choice();
  const bool shadows = choice.look == SunLook::Shadows;
  trouble_.clear();
  if (choice.look == SunLook::Hours) hours_->setChecked(true);
  if (shadows) shadows_->setChecked(true);
  if (QAbstractButton* years = years_->button(choice.yearsAhead)) years->setChecked(true);
  const bool sameParts = dayRow_->isVisibleTo(this) == shadows;
  for (QWidget* part : {static_cast<QWidget*>(dayRow_), dials_}) part->setVisible(shadows);
  for (QWidget* part : {static_cast<QWidget*>(spans_), static_cast<QWidget*>(legend_)})
    part->setVisible(!shadows);
  if (choice.look == SunLook::Hours) refreshHours();
  if (shadows) refreshDay();
  if (!sameParts || isVisibleTo(&canvas_) != (choice.look != SunLook::Off)) place();
  readPointer();
}

void SunStrip::refreshHours() {
  legend_->setProfile(sunProfile(canvas_.document().yard().settings.sunProfile));
  refreshSpans();
}

void SunStrip::refreshDay() {
  day_->show(view().civilDay(), canvas_.document().yard().settings, view().choice().minute);
  year_->show(view().choice().day, canvas_.document().yard().settings);
  dayRow_->refresh();
}

// Built anew only when it would read otherwise, so that an open list is left alone.
void SunStrip::refreshSpans() {
  const auto& months = view().months();
  const GrowingSeason season = growingSeason(canvas_.document().yard().settings);
  QStringList words{tr("Growing season, mean")};
  for (const auto month : months) words << monthWords(month, season);
  if (!months.empty()) words << tr("Worst month of each spot");
  if (words != spanWords_) {
    spanWords_ = words;
    spans_->clear();
    for (qsizetype i = 0; i < words.size(); ++i)
      spans_->addItem(words[i], i == 0 ? kSeason
                                : i == words.size() - 1
                                    ? kWorstMonth
                                    : int(unsigned(months[std::size_t(i - 1)])));
  }
  spans_->setCurrentIndex(std::max(0, spans_->findData(numberOf(view().choice()))));
}

QString SunStrip::wordsOfChoice() const {
  const Yard& yard = canvas_.document().yard();
  const SunChoice& choice = view().choice();
  QStringList words;
  if (choice.yearsAhead > 0) words << growthWords(yard);
  if (choice.look == SunLook::Shadows) {
    words << horizonWords(view().civilDay(), choice.minute, yard.settings)
          << daylightWords(view().civilDay(), yard.settings);
  } else {
    words << groundWords(yard) << limitWords(sunProfile(yard.settings.sunProfile));
  }
  words.removeAll(QString());
  return words.join(QStringLiteral(". "));
}

void SunStrip::showWords() {
  const QString words = !trouble_.isEmpty()        ? trouble_
                        : !pointerWords_.isEmpty() ? pointerWords_
                                                   : wordsOfChoice();
  const int room = width() - 2 * kSpace3 - kSpace2 - note_->sizeHint().width();
  words_->setText(words_->fontMetrics().elidedText(words, Qt::ElideRight, room));
  words_->setToolTip(words);
}

void SunStrip::place() {
  const bool shown = view().choice().look != SunLook::Off;
  // Keys go back to the plan, not to what happens to be next.
  if (!shown && isAncestorOf(QApplication::focusWidget())) canvas_.setFocus();
  setVisible(shown);
  if (!shown) return canvas_.setFoot(0);
  const int wide = std::clamp(canvas_.width() - 2 * kSpace3, kNarrowest, kWidest);
  layout()->invalidate();
  const int high = heightForWidth(wide);
  setGeometry((canvas_.width() - wide) / 2, canvas_.height() - high - kSpace3, wide, high);
  raise();
  canvas_.setFoot(high + kSpace3);
  showWords();
}

void SunStrip::showPointer(Point at) {
  pointer_ = at;
  readPointer();
}

void SunStrip::forgetPointer() {
  pointer_.reset();
  readPointer();
}

// Whenever the pointer moves, and whenever the sun under a pointer that rests has changed.
void SunStrip::readPointer() {
  const bool reads = pointer_ && view().choice().look == SunLook::Hours;
  legend_->setPointer(reads ? hoursShownAt(view(), *pointer_) : std::nullopt);
  pointerWords_ = reads ? sunWordsAt(view(), *pointer_) : QString();
  showWords();
}

bool SunStrip::eventFilter(QObject* watched, QEvent* event) {
  if (watched == &canvas_ && event->type() == QEvent::Resize) place();
  return QFrame::eventFilter(watched, event);
}

}  // namespace tussock
