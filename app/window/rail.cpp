// SPDX-License-Identifier: MIT
#include "app/window/rail.h"

#include <algorithm>
#include <QActionGroup>
#include <QPainter>
#include <QToolButton>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/window/tool_set.h"

namespace tussock {

namespace {

constexpr int kTall = 52;   // icon over name, at ease
constexpr int kShort = 40;  // the least that holds both
constexpr int kIconOnly = 32;
constexpr int kLeast = 24;
constexpr int kWide = 76;
constexpr int kGap = 2;

int inEachColumn(int count, int columns) {
  return (count + columns - 1) / columns;
}

int roomForEach(int height, int count, int columns) {
  return (height - 2 * kSpace2 + kGap) / inEachColumn(count, columns) - kGap;
}

// A rail button with the key letter in its corner.
class RailButton : public QToolButton {
 public:
  RailButton(QAction* action, QString key, QWidget* rail)
      : QToolButton(rail), key_(std::move(key)) {
    setDefaultAction(action);
    setObjectName(action->objectName() + QLatin1String("Button"));
    setProperty("look", QStringLiteral("rail"));
    setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    setFocusPolicy(Qt::TabFocus);
  }

 protected:
  void paintEvent(QPaintEvent* event) override {
    QToolButton::paintEvent(event);
    if (width() < kWide / 2) return;  // beside the icon there is no room for the letter
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
  setFixedWidth(kWide);
  for (const ToolEntry& entry : tools.entries()) {
    auto* action = new QAction(icon(entry.icon), entry.label, &group);
    action->setObjectName(entry.name);
    action->setCheckable(true);
    action->setShortcut(entry.key);
    action->setToolTip(tr("%1 (%2)").arg(entry.label, entry.key.toString()));
    addAction(action);
    if (entry.onRail) buttons_.push_back(new RailButton(action, entry.key.toString(), this));
  }
}

QSize Rail::minimumSizeHint() const {
  const int rows = inEachColumn(int(buttons_.size()), 2);
  return {kWide, 2 * kSpace2 + rows * (kLeast + kGap) - kGap};
}

// A low window shortens the buttons, then takes the names off, then stands them in two columns: no
// tool is ever out of reach.
void Rail::resizeEvent(QResizeEvent*) {
  place(roomForEach(height(), int(buttons_.size()), 1) >= kIconOnly ? 1 : 2);
}

void Rail::place(int columns) {
  const int count = int(buttons_.size());
  const int room = roomForEach(height(), count, columns);
  const int tall =
      columns == 1 ? std::clamp(room, kIconOnly, kTall) : std::clamp(room, kLeast, kIconOnly);
  const int wide = columns == 1 ? 60 : (kWide - kSpace2 - kGap) / columns;
  const int left = (kWide - 1 - columns * wide - (columns - 1) * kGap) / 2;
  const int rows = inEachColumn(count, columns);
  for (int i = 0; i < count; ++i) {
    QToolButton* button = buttons_[std::size_t(i)];
    const bool named = columns == 1 && tall >= kShort;
    button->setToolButtonStyle(named ? Qt::ToolButtonTextUnderIcon : Qt::ToolButtonIconOnly);
    button->setIconSize(tall < kTall ? QSize(20, 20) : QSize(24, 24));
    button->setGeometry(left + i / rows * (wide + kGap), kSpace2 + i % rows * (tall + kGap), wide,
                        tall);
  }
}

void Rail::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), currentTheme().panel);
  painter.fillRect(QRect(width() - 1, 0, 1, height()), currentTheme().line);
}

}  // namespace tussock
