// SPDX-License-Identifier: MIT
#include "app/look/style_sheet.h"

#include <QList>
#include <utility>

#include "app/look/oklab.h"

namespace tussock {

namespace {

// Names between @ and @ stand for the theme's colours.
constexpr auto kText = R"(
QToolTip { background: @raised@; color: @ink@; border: 1px solid @edge@; padding: 4px 6px; }
QLabel[look="note"] { color: @quiet@; font-size: 11px; }
QLabel[look="quiet"] { color: @quiet@; }
QLabel[look="heading"] { font-size: 16px; font-weight: bold; }
QLabel[look="large"] { font-size: 20px; font-weight: bold; }
QLabel[look="figure"] { font-size: 34px; font-weight: bold; }
QLabel[look="strong"] { font-weight: bold; }
QLabel[look="error"] { color: @alert@; font-size: 11px; }
QLabel[look="source"] { color: @quiet@; font-size: 11px; font-style: italic; }
)";

constexpr auto kButtons = R"(
QPushButton, QToolButton[look="button"] {
  background: @raised@; color: @ink@; border: 1px solid @edge@; border-radius: 6px;
  padding: 4px 12px; min-height: 18px; outline: 0; }
QPushButton:hover, QToolButton[look="button"]:hover { background: @hover@; }
QPushButton:pressed, QToolButton[look="button"]:pressed { background: @pressed@; }
QPushButton:focus, QToolButton[look="button"]:focus { border: 2px solid @sky@; padding: 3px 11px; }
QPushButton:disabled, QToolButton[look="button"]:disabled { color: @edge@; border-color: @line@; }
QPushButton[look="primary"] { background: @leaf@; color: @onleaf@; border-color: @leaf@; }
QPushButton[look="primary"]:hover { background: @leafhover@; }
QPushButton[look="primary"]:focus { border: 2px solid @ink@; }
QPushButton[look="quiet"] { background: transparent; border-color: transparent; color: @sky@; }
QPushButton[look="quiet"]:hover { background: @hover@; }
QPushButton[look="quiet"]:focus { border: 2px solid @sky@; }
QPushButton[look="link"] { background: transparent; border: 1px solid transparent; color: @sky@;
  padding: 2px 4px; text-align: left; }
QPushButton[look="link"]:hover { text-decoration: underline; }
QPushButton[look="link"]:focus { border: 2px solid @sky@; padding: 1px 3px; }
QPushButton[look="chip"], QToolButton[look="chip"] { border-radius: 13px; padding: 3px 11px;
  min-height: 18px; font-size: 12px; }
QPushButton[look="chip"]:focus { padding: 2px 10px; }
QPushButton[look="chip"]:checked { background: @leaf@; color: @onleaf@; border-color: @leaf@; }
QPushButton[look="chip"]:disabled { background: transparent; color: @edge@;
  border-color: @line@; }
QPushButton[look="chip"]:checked:focus { border: 2px solid @ink@; }
QPushButton[look="step"] { padding: 0; min-width: 30px; min-height: 30px; font-size: 16px;
  font-weight: bold; }
QToolButton[look="rail"] { background: transparent; border: 1px solid transparent;
  border-radius: 6px; padding: 2px; font-size: 11px; color: @ink@; }
QToolButton[look="rail"]:hover { background: @hover@; }
QToolButton[look="rail"]:checked { background: @raised@; border-color: @edge@; }
QToolButton[look="rail"]:focus { border: 2px solid @sky@; }
QToolButton[look="rail"]:disabled { color: @edge@; }
)";

constexpr auto kFields = R"(
QLineEdit, QComboBox, QSpinBox, QDoubleSpinBox, QPlainTextEdit {
  background: @raised@; color: @ink@; border: 1px solid @edge@; border-radius: 6px;
  padding: 3px 7px; min-height: 18px; selection-background-color: @sky@;
  selection-color: @onsky@; }
QLineEdit:focus, QComboBox:focus, QSpinBox:focus, QDoubleSpinBox:focus, QPlainTextEdit:focus {
  border: 2px solid @sky@; padding: 2px 6px; }
QLineEdit[wrong="true"], QPlainTextEdit[wrong="true"] { border: 2px solid @alert@; padding: 2px 6px; }
QLineEdit:disabled, QComboBox:disabled, QPlainTextEdit:disabled {
  color: @edge@; border-color: @line@; background: @panel@; }
QLineEdit:read-only { background: transparent; border-color: transparent; }
QComboBox { combobox-popup: 0; }
QComboBox::drop-down { border: 0; width: 22px; }
QComboBox::down-arrow { image: url(:/icons/@chevron@); width: 12px; height: 12px; }
QComboBox QAbstractItemView { background: @raised@; color: @ink@; border: 1px solid @edge@;
  selection-background-color: @hover@; selection-color: @ink@; outline: 0; padding: 0; }
QComboBox QAbstractItemView::item { min-height: 24px; padding: 0 6px; }
QAbstractItemView[look="choices"] { background: @raised@; color: @ink@; border: 1px solid @edge@;
  selection-background-color: @hover@; selection-color: @ink@; outline: 0; }
QAbstractItemView[look="choices"]::item { min-height: 24px; padding: 0 8px; }
QCheckBox { spacing: 8px; }
QCheckBox:focus { color: @sky@; }
QCheckBox::indicator { width: 16px; height: 16px; border: 1px solid @edge@; border-radius: 4px;
  background: @raised@; }
QCheckBox::indicator:focus { border: 2px solid @sky@; }
QCheckBox::indicator:checked { background: @leaf@; border-color: @leaf@;
  image: url(:/icons/@tick@); }
QSlider::groove:horizontal { height: 4px; border-radius: 2px; background: @line@; }
QSlider::sub-page:horizontal { height: 4px; border-radius: 2px; background: @leaf@; }
QSlider::handle:horizontal { width: 14px; height: 14px; margin: -6px 0; border-radius: 8px;
  background: @raised@; border: 1px solid @edge@; }
QSlider::handle:horizontal:focus { border: 2px solid @sky@; }
)";

constexpr auto kFrames = R"(
QMainWindow, QDialog { background: @panel@; }
QSplitter::handle { background: @line@; }
QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; border: 0; }
QScrollBar { background: transparent; }
QScrollBar:vertical { width: 10px; } QScrollBar:horizontal { height: 10px; }
QScrollBar::handle { background: @edge@; border-radius: 5px; border: 2px solid @panel@; }
QScrollBar::handle:vertical { min-height: 32px; } QScrollBar::handle:horizontal { min-width: 32px; }
QScrollBar::handle:hover { background: @quiet@; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QFrame[look="rule"] { background: @line@; border: 0; max-height: 1px; min-height: 1px; }
QFrame[look="card"] { background: @raised@; border: 1px solid @line@; border-radius: 6px; }
QMenuBar { background: @panel@; color: @ink@; }
QMenuBar::item { padding: 4px 10px; background: transparent; border-radius: 4px; }
QMenuBar::item:selected { background: @hover@; }
QMenu { background: @raised@; color: @ink@; border: 1px solid @edge@; padding: 4px; }
QMenu::item { padding: 5px 24px 5px 12px; border-radius: 4px; }
QMenu::item:selected { background: @hover@; }
QMenu::item:disabled { color: @edge@; }
QMenu::separator { height: 1px; background: @line@; margin: 4px 8px; }
QStatusBar { background: @panel@; color: @quiet@; border-top: 1px solid @line@; }
QStatusBar::item { border: 0; }
QStatusBar QLabel { color: @quiet@; }
)";

QList<std::pair<QLatin1String, QString>> names(const Theme& t) {
  const QColor hover = mixed(t.raised, t.ink, 0.06);
  const QColor pressed = mixed(t.raised, t.ink, 0.13);
  const auto entry = [](const char* name, const QColor& colour) {
    return std::pair{QLatin1String(name), colour.name()};
  };
  return {entry("@paper@", t.paper),
          entry("@panel@", t.panel),
          entry("@raised@", t.raised),
          entry("@ink@", t.ink),
          entry("@quiet@", t.quietInk),
          entry("@line@", t.line),
          entry("@edge@", t.edge),
          entry("@leaf@", t.leaf),
          entry("@onleaf@", t.onLeaf),
          entry("@leafhover@", lightened(t.leaf, t.dark ? 0.04 : -0.04)),
          entry("@sky@", t.sky),
          entry("@onsky@", t.dark ? t.paper : t.raised),
          entry("@alert@", t.alert),
          entry("@hover@", hover),
          entry("@pressed@", pressed),
          {QLatin1String("@chevron@"),
           t.dark ? QStringLiteral("chevron-dark.svg") : QStringLiteral("chevron.svg")},
          {QLatin1String("@tick@"),
           t.dark ? QStringLiteral("tick-dark.svg") : QStringLiteral("tick.svg")}};
}

}  // namespace

QString styleSheetFor(const Theme& theme) {
  QString sheet = QLatin1String(kText) + QLatin1String(kButtons) + QLatin1String(kFields) +
                  QLatin1String(kFrames);
  for (const auto& [name, value] : names(theme)) sheet.replace(name, value);
  return sheet;
}

}  // namespace tussock
