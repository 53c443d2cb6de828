// SPDX-License-Identifier: MIT
#include "app/window/start_page.h"

#include <cmath>
#include <optional>
#include <QComboBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/theme.h"

namespace tussock {

namespace {

QLabel* words(const QString& text, const char* look) {
  auto* label = new QLabel(text);
  label->setProperty("look", QString::fromLatin1(look));
  label->setWordWrap(true);
  return label;
}

QLineEdit* field(const char* name, const QString& placeholder) {
  auto* edit = new QLineEdit;
  edit->setObjectName(QString::fromLatin1(name));
  edit->setPlaceholderText(placeholder);
  return edit;
}

QPushButton* button(const char* name, const QString& text, const char* look) {
  auto* made = new QPushButton(text);
  made->setObjectName(QString::fromLatin1(name));
  made->setProperty("look", QString::fromLatin1(look));
  return made;
}

// Degrees within ±`most`; nothing when it is not such a number.
std::optional<double> degreesIn(const QLineEdit& edit, double most) {
  bool ok = false;
  const double value = QLocale::c().toDouble(edit.text().trimmed(), &ok);
  if (!ok || !std::isfinite(value) || std::abs(value) > most) return std::nullopt;
  return value;
}

}  // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("startPage"));
  auto* page = new QVBoxLayout(this);
  page->setContentsMargins(kSpace6, kSpace6, kSpace6, kSpace6);
  auto* column = new QWidget;
  column->setFixedWidth(760);
  auto* inside = new QVBoxLayout(column);
  inside->setSpacing(kSpace5);
  auto* title = words(tr("Which yard shall it be?"), "large");
  inside->addWidget(title);
  auto* halves = new QHBoxLayout;
  halves->setSpacing(kSpace6);
  halves->addWidget(makeNewYard(), 3, Qt::AlignTop);
  halves->addWidget(makeOpen(), 2, Qt::AlignTop);
  inside->addLayout(halves);
  page->addStretch(2);
  page->addWidget(column, 0, Qt::AlignHCenter);
  page->addStretch(3);
}

QWidget* StartPage::makeNewYard() {
  auto* card = new QFrame;
  card->setProperty("look", QStringLiteral("card"));
  auto* column = new QVBoxLayout(card);
  column->setContentsMargins(kSpace5, kSpace5, kSpace5, kSpace5);
  column->setSpacing(kSpace3);
  column->addWidget(words(tr("Start a new yard"), "heading"));
  column->addWidget(words(tr("Where it lies decides the sun. Two decimals are enough."), "quiet"));
  name_ = field("newName", tr("Front garden"));
  latitude_ = field("newLatitude", tr("38.40"));
  longitude_ = field("newLongitude", tr("-86.90 (west is negative)"));
  units_ = new QComboBox;
  units_->setObjectName(QStringLiteral("newUnits"));
  units_->addItem(tr("Feet and inches"), int(UnitSystem::FeetInches));
  units_->addItem(tr("Metres"), int(UnitSystem::Metres));
  auto* form = new QFormLayout;
  form->setVerticalSpacing(kSpace2);
  form->addRow(tr("Name"), name_);
  form->addRow(tr("Latitude"), latitude_);
  form->addRow(tr("Longitude"), longitude_);
  form->addRow(tr("Units"), units_);
  column->addLayout(form);
  trouble_ = words({}, "error");
  trouble_->setObjectName(QStringLiteral("newTrouble"));
  column->addWidget(trouble_);
  auto* go = button("newStart", tr("Choose where to keep it…"), "primary");
  column->addWidget(go);
  connect(go, &QPushButton::clicked, this, &StartPage::start);
  for (QLineEdit* edit : {name_, latitude_, longitude_})
    connect(edit, &QLineEdit::returnPressed, this, &StartPage::start);
  return card;
}

QWidget* StartPage::makeOpen() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setSpacing(kSpace2);
  column->addWidget(words(tr("Go on with one"), "heading"));
  auto* open = button("startOpen", tr("Open a yard…"), "button");
  auto* example = button("startExample", tr("See the example yard"), "button");
  column->addWidget(open);
  column->addWidget(example);
  connect(open, &QPushButton::clicked, this, &StartPage::openWanted);
  connect(example, &QPushButton::clicked, this, &StartPage::exampleWanted);
  column->addSpacing(kSpace2);
  recent_ = new QVBoxLayout;
  recent_->setSpacing(0);
  column->addLayout(recent_);
  return side;
}

void StartPage::showRecent(const QStringList& paths) {
  while (QLayoutItem* item = recent_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  if (!paths.isEmpty()) recent_->addWidget(words(tr("Opened lately"), "note"));
  for (const QString& path : paths) {
    auto* link = new QPushButton(QFileInfo(path).completeBaseName());
    link->setProperty("look", QStringLiteral("link"));
    link->setToolTip(path);
    connect(link, &QPushButton::clicked, this, [this, path] { emit recentWanted(path); });
    recent_->addWidget(link);
  }
}

void StartPage::start() {
  const auto latitude = degreesIn(*latitude_, 90.0);
  const auto longitude = degreesIn(*longitude_, 180.0);
  if (!latitude)
    return trouble_->setText(tr("Give the latitude in degrees, from -90 to 90, such as 38.40."));
  if (!longitude)
    return trouble_->setText(
        tr("Give the longitude in degrees, from -180 to 180, such as -86.90."));
  trouble_->clear();
  Settings settings;
  const QString name = name_->text().trimmed();
  settings.name = (name.isEmpty() ? tr("New yard") : name).toStdString();
  settings.latitude = Angle::degrees(*latitude);
  settings.longitude = Angle::degrees(*longitude);
  settings.units = UnitSystem(units_->currentData().toInt());
  emit newYardWanted(settings);
}

void StartPage::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(rect(), currentTheme().paper);
}

}  // namespace tussock
