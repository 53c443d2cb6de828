// SPDX-License-Identifier: MIT
#include "app/panels/sun_day_row.h"

#include <algorithm>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/look/motion.h"
#include "app/look/theme.h"
#include "app/panels/dial_paint.h"
#include "core/sun/position.h"

namespace tussock {

namespace {

constexpr int kPlayStep = 5, kPlayBeat = 50;  // minutes of the day, milliseconds
constexpr int kStillStep = 60;                // minutes, where nothing is to move by itself

}  // namespace

SunDayRow::SunDayRow(SunView& view, QWidget* parent)
    : QWidget(parent),
      view_(view),
      date_(new QLineEdit),
      clock_(new QLabel),
      play_(new QPushButton) {
  date_->setObjectName(QStringLiteral("sun-date"));
  date_->setAccessibleName(tr("Date, year-month-day"));
  date_->setToolTip(tr("Up and down step a day; Page up and Page down a month"));
  date_->setFixedWidth(104);
  date_->installEventFilter(this);
  clock_->setObjectName(QStringLiteral("sun-clock"));
  clock_->setProperty("look", QStringLiteral("strong"));
  clock_->setMinimumWidth(84);
  play_->setObjectName(QStringLiteral("sun-play"));
  play_->setFocusPolicy(Qt::TabFocus);
  reserveWidth();
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kSpace2);
  for (QWidget* part :
       {static_cast<QWidget*>(date_), static_cast<QWidget*>(clock_), static_cast<QWidget*>(play_)})
    row->addWidget(part);
  playing_.setInterval(kPlayBeat);
  connect(date_, &QLineEdit::editingFinished, this, &SunDayRow::takeDate);
  connect(date_, &QLineEdit::returnPressed, this, [this] {
    takeDate();
    if (!date_->isModified()) emit dated();
  });
  connect(play_, &QPushButton::clicked, this, &SunDayRow::play);
  connect(&playing_, &QTimer::timeout, this, &SunDayRow::playOn);
}

// As wide as the longest of its words, so that nothing beside it moves.
void SunDayRow::reserveWidth() {
  for (const QString& words : {tr("An hour on"), tr("Play the day"), tr("Stop")}) {
    play_->setText(words);
    play_->setMinimumWidth(std::max(play_->minimumWidth(), play_->sizeHint().width()));
  }
}

void SunDayRow::refresh() {
  const CivilDay day = view_.civilDay();
  const UtcTime now = view_.instant();
  if (!date_->hasFocus() || !date_->isModified())
    date_->setText(QString::fromStdString(formatDate(view_.choice().day)));
  clock_->setText(day.clock(now) + QLatin1Char(' ') + day.zone(now));
  if (lessMotion())
    play_->setText(tr("An hour on"));
  else
    play_->setText(playing_.isActive() ? tr("Stop") : tr("Play the day"));
}

void SunDayRow::takeMotion() {
  if (lessMotion()) playing_.stop();
  refresh();
}

void SunDayRow::takeDate() {
  const QString typed = date_->text().trimmed();
  const auto day = parseDate(typed.toStdString());
  if (!day)
    return emit troubled(tr("“%1” is no date. Write it as year-month-day, such as %2.")
                             .arg(typed, QString::fromStdString(formatDate(view_.choice().day))));
  if (!isInExactYears(*day))
    return emit troubled(
        tr("“%1”: where the sun stands is known well from %2 to %3. Write a date of those years.")
            .arg(typed)
            .arg(int(kFirstExactYear))
            .arg(int(kLastExactYear)));
  date_->setModified(false);
  SunChoice choice = view_.choice();
  choice.day = *day;
  view_.choose(choice);
  emit troubled({});
}

void SunDayRow::stepDate(int days, int months) {
  SunChoice choice = view_.choice();
  choice.day = stepped(choice.day, days, months);
  date_->setModified(false);
  view_.choose(choice);
  refresh();
}

void SunDayRow::stepMinutes(int minutes) {
  SunChoice choice = view_.choice();
  choice.minute = (choice.minute + minutes) % kMinutesInDay;
  view_.choose(choice);
}

void SunDayRow::play() {
  if (lessMotion()) {
    stopPlaying();
    return stepMinutes(kStillStep);
  }
  if (playing_.isActive()) return stopPlaying();
  playing_.start();
  playOn();
  refresh();
}

// The night casts no shadows: after sunset comes the morning again.
void SunDayRow::playOn() {
  SunChoice choice = view_.choice();
  for (int step = 0; step < kMinutesInDay / kPlayStep; ++step) {
    choice.minute = (choice.minute + kPlayStep) % kMinutesInDay;
    if (!view_.isLitAt(choice.minute)) continue;
    view_.choose(choice);
    return emit troubled({});
  }
  stopPlaying();
  emit troubled(
      tr("The sun reaches the ground at no time of this day, so there is nothing to "
         "play. Choose another date."));
}

void SunDayRow::stopPlaying() {
  playing_.stop();
  refresh();
}

bool SunDayRow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Up:
      return stepDate(1, 0), true;
    case Qt::Key_Down:
      return stepDate(-1, 0), true;
    case Qt::Key_PageUp:
      return stepDate(0, 1), true;
    case Qt::Key_PageDown:
      return stepDate(0, -1), true;
    default:
      return QWidget::eventFilter(watched, event);
  }
}

void SunDayRow::hideEvent(QHideEvent*) {
  stopPlaying();
}

}  // namespace tussock
