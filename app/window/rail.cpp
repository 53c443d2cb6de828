// SPDX-License-Identifier: MIT
#include "app/window/rail.h"

#include <algorithm>
#include <QActionGroup>
#include <QPainter>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/window/tool_set.h"

namespace tussock {

namespace {

constexpr int kTall = 52;   // icon over name, at ease
constexpr int kShort = 44;  // the least that holds both
constexpr int kIconOnly = 32;
constexpr int kGap = 2;

// A rail button with the key letter in its corner.
class RailButton : public QToolButton {
 public:
  explicit RailButton(QAction* action, QString key) : key_(std::move(key)) {
    setDefaultAction(action);
    setObjectName(action->objectName() + QLatin1String("Button"));
    setProperty("look", QStringLiteral("rail"));
    setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    setIconSize(QSize(24, 24));
    setFixedSize(60, kTall);
    setFocusPolicy(Qt::TabFocus);
  }

 protected:
  void paintEvent(QPaintEvent* event) override {
    QToolButton::paintEvent(event);
    QPainter painter(this);
    QFont font = fontFor(TextRole::Note);
    font.setPixelSize(10);
    painter.setFont(font);
    painter.setPen(currentTheme().quietInk);
    painter.drawText(rect().adjusted(0, 4, -7, 0), Qt::AlignTop | Qt::AlignRight, key_);
  }

 private:
  QString key_;
};

}  // namespace

Rail::Rail(const ToolSet& tools, QActionGroup& group, QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("rail"));
  setFixedWidth(76);
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 1, 0);
  auto* scroll = new QScrollArea;
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidgetResizable(true);
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(kSpace2, kSpace2, kSpace1, kSpace2);
  column->setSpacing(kGap);
  for (const ToolEntry& entry : tools.entries()) {
    auto* action = new QAction(icon(entry.icon), entry.label, &group);
    action->setObjectName(entry.name);
    action->setCheckable(true);
    action->setShortcut(entry.key);
    action->setToolTip(tr("%1 (%2)").arg(entry.label, entry.key.toString()));
    addAction(action);
    buttons_.push_back(new RailButton(action, entry.key.toString()));
    column->addWidget(buttons_.back(), 0, Qt::AlignHCenter);
  }
  column->addStretch();
  scroll->setWidget(inside);
  outer->addWidget(scroll);
}

// A low window shortens the buttons before it hides a tool, and takes the names off last.
void Rail::resizeEvent(QResizeEvent*) {
  const int count = static_cast<int>(buttons_.size());
  if (count == 0) return;
  const int each = (height() - 2 * kSpace2) / count - kGap;
  const int tall = std::clamp(each, kIconOnly, kTall);
  for (QToolButton* button : buttons_) {
    button->setToolButtonStyle(tall < kShort ? Qt::ToolButtonIconOnly
                                             : Qt::ToolButtonTextUnderIcon);
    button->setIconSize(tall < kTall ? QSize(20, 20) : QSize(24, 24));
    button->setFixedHeight(tall);
  }
}

void Rail::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), currentTheme().panel);
  painter.fillRect(QRect(width() - 1, 0, 1, height()), currentTheme().line);
}

}  // namespace tussock
