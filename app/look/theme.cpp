// SPDX-License-Identifier: MIT
#include "app/look/theme.h"

#include <QApplication>
#include <QFontDatabase>
#include <QStyle>
#include <QStyleFactory>

#include "app/look/style_sheet.h"

namespace tussock {

namespace {

Theme& shownTheme() {
  static Theme theme = Theme::light();
  return theme;
}

}  // namespace

Theme Theme::light() {
  Theme t;
  t.paper = QColor(0xFB, 0xF8, 0xF1);
  t.panel = QColor(0xF4, 0xEF, 0xE4);
  t.raised = QColor(0xFF, 0xFE, 0xFA);
  t.ink = QColor(0x2B, 0x2A, 0x27);
  t.quietInk = QColor(0x66, 0x62, 0x5A);
  t.line = QColor(0xD9, 0xD2, 0xC3);
  t.edge = QColor(0x87, 0x80, 0x70);
  t.soil = QColor(0xD8, 0xC7, 0xAC);
  t.leaf = QColor(0x4A, 0x75, 0x37);
  t.onLeaf = QColor(0xFF, 0xFF, 0xFF);
  t.sky = QColor(0x35, 0x66, 0x86);
  t.alert = QColor(0xAF, 0x3E, 0x29);
  t.caution = QColor(0x86, 0x59, 0x10);
  t.hint = QColor(0x6A, 0x5A, 0x9C);
  t.lawn = QColor(0xE9, 0xEE, 0xDC);
  t.paving = QColor(0xE4, 0xDF, 0xD5);
  t.building = QColor(0xDD, 0xD3, 0xC6);
  return t;
}

Theme Theme::darkTheme() {
  Theme t;
  t.dark = true;
  t.paper = QColor(0x1F, 0x21, 0x1E);
  t.panel = QColor(0x25, 0x28, 0x23);
  t.raised = QColor(0x2D, 0x31, 0x2B);
  t.ink = QColor(0xEC, 0xE8, 0xDD);
  t.quietInk = QColor(0xAC, 0xA7, 0x98);
  t.line = QColor(0x3B, 0x3F, 0x37);
  t.edge = QColor(0x80, 0x85, 0x76);
  t.soil = QColor(0x4A, 0x40, 0x31);
  t.leaf = QColor(0x8D, 0xB8, 0x70);
  t.onLeaf = QColor(0x1B, 0x21, 0x16);
  t.sky = QColor(0x86, 0xB4, 0xD1);
  t.alert = QColor(0xE5, 0x87, 0x72);
  t.caution = QColor(0xDD, 0xB0, 0x63);
  t.hint = QColor(0xB3, 0xA5, 0xE0);
  t.lawn = QColor(0x26, 0x2C, 0x22);
  t.paving = QColor(0x31, 0x31, 0x2D);
  t.building = QColor(0x3B, 0x39, 0x34);
  return t;
}

Theme themeFor(ThemeChoice choice, const QPalette& system) {
  if (choice == ThemeChoice::Light) return Theme::light();
  if (choice == ThemeChoice::Dark) return Theme::darkTheme();
  const bool dark =
      system.color(QPalette::Window).lightness() < system.color(QPalette::WindowText).lightness();
  return dark ? Theme::darkTheme() : Theme::light();
}

QFont fontFor(TextRole role) {
  QFont font(
      QStringList{QStringLiteral("Lato"), QStringLiteral("Carlito"), QStringLiteral("sans-serif")});
  font.setHintingPreference(QFont::PreferVerticalHinting);
  switch (role) {
    case TextRole::Note:
      font.setPixelSize(11);
      break;
    case TextRole::Body:
      font.setPixelSize(13);
      break;
    case TextRole::Heading:
      font.setPixelSize(16);
      font.setWeight(QFont::Bold);
      break;
    case TextRole::LargeHeading:
      font.setPixelSize(20);
      font.setWeight(QFont::Bold);
      break;
  }
  return font;
}

QFont botanicalFont(TextRole role) {
  QFont font = fontFor(role);
  font.setItalic(true);
  return font;
}

QPalette paletteFor(const Theme& t) {
  QPalette p;
  p.setColor(QPalette::Window, t.panel);
  p.setColor(QPalette::Base, t.raised);
  p.setColor(QPalette::AlternateBase, t.panel);
  p.setColor(QPalette::Button, t.raised);
  for (const auto role :
       {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
    p.setColor(role, t.ink);
  p.setColor(QPalette::ToolTipBase, t.raised);
  p.setColor(QPalette::PlaceholderText, t.quietInk);
  p.setColor(QPalette::Link, t.sky);
  p.setColor(QPalette::LinkVisited, t.hint);
  p.setColor(QPalette::Highlight, t.sky);
  p.setColor(QPalette::HighlightedText, t.dark ? t.paper : t.raised);
  p.setColor(QPalette::Light, t.raised);
  p.setColor(QPalette::Midlight, t.line);
  p.setColor(QPalette::Mid, t.line);
  p.setColor(QPalette::Dark, t.edge);
  p.setColor(QPalette::Shadow, t.edge);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    p.setColor(QPalette::Disabled, role, t.edge);
  return p;
}

void applyTheme(QApplication& application, const Theme& theme) {
  shownTheme() = theme;
  if (application.style()->name() != QLatin1String("fusion"))
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QApplication::setPalette(paletteFor(theme));
  QApplication::setFont(fontFor(TextRole::Body));
  application.setStyleSheet(styleSheetFor(theme));
}

const Theme& currentTheme() {
  return shownTheme();
}

}  // namespace tussock
