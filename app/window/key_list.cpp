// SPDX-License-Identifier: MIT
#include "app/window/key_list.h"

#include <algorithm>
#include <QGridLayout>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/canvas/canvas.h"
#include "app/look/theme.h"
#include "app/tools/drift_in_hand.h"
#include "app/window/tool_set.h"

namespace tussock {

namespace {

constexpr QSize kListSize{620, 640};
constexpr int kKeysWidth = 210;  // pixels, of the column of keys

QString plain(QString words) {
  return words.remove(QLatin1Char('&')).remove(QChar(0x2026));
}

QList<GestureWords> keysIn(const QMenu& menu) {
  QList<GestureWords> rows;
  for (const QAction* action : menu.actions()) {
    if (action->menu()) rows += keysIn(*action->menu());
    for (const QKeySequence& key : action->shortcuts())
      rows.append({key.toString(QKeySequence::NativeText), plain(action->text())});
  }
  return rows;
}

bool sameRows(const QList<GestureWords>& a, const QList<GestureWords>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const auto& x, const auto& y) {
    return x.keys == y.keys && x.does == y.does;
  });
}

QLabel* keyWords(const QString& text, const char* look) {
  auto* label = new QLabel(text);
  label->setProperty("look", QString::fromLatin1(look));
  label->setWordWrap(true);
  return label;
}

QGridLayout* gridOf(const KeyList::Section& section) {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kSpace4);
  grid->setVerticalSpacing(kSpace1);
  grid->setColumnMinimumWidth(0, kKeysWidth);
  grid->setColumnStretch(1, 1);
  grid->addWidget(keyWords(section.title, "heading"), 0, 0, 1, 2);
  int row = 1;
  for (const GestureWords& entry : section.rows) {
    grid->addWidget(keyWords(entry.keys, "strong"), row, 0, Qt::AlignTop);
    grid->addWidget(keyWords(entry.does, ""), row, 1);
    ++row;
  }
  return grid;
}

}  // namespace

KeyList::KeyList(const QMenuBar& bar, const ToolSet& tools, QWidget* parent) : QDialog(parent) {
  setObjectName(QStringLiteral("keyList"));
  setWindowTitle(tr("Keys and gestures"));
  readMenus(bar);
  sections_.append({tr("On the plan"), Canvas::gestures()});
  sections_.append({tr("From the bench"), DriftInHand::gestures()});
  readTools(tools);
}

void KeyList::readMenus(const QMenuBar& bar) {
  for (const QAction* entry : bar.actions())
    if (const auto rows = keysIn(*entry->menu()); !rows.isEmpty())
      sections_.append({plain(entry->text()), rows});
}

// Tools that work alike stand together.
void KeyList::readTools(const ToolSet& tools) {
  const qsizetype first = sections_.size();
  for (const ToolEntry& entry : tools.entries()) {
    const QList<GestureWords> rows = entry.tool->gestures();
    const auto alike = std::find_if(sections_.begin() + first, sections_.end(),
                                    [&](const Section& s) { return sameRows(s.rows, rows); });
    if (alike == sections_.end())
      sections_.append({entry.label, rows});
    else
      alike->title += QStringLiteral(" · ") + entry.label;
  }
}

void KeyList::build() {
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(kSpace5, kSpace4, kSpace5, kSpace5);
  column->setSpacing(kSpace5);
  for (const Section& section : sections_) column->addLayout(gridOf(section));
  column->addStretch(1);
  auto* scroll = new QScrollArea;
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(inside);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(scroll);
  resize(kListSize.boundedTo(parentWidget()->size()));
  built_ = true;
}

// Beside the work, not before it: the window stays usable.
void KeyList::bringUp() {
  if (!built_) build();
  show();
  raise();
  activateWindow();
}

}  // namespace tussock
