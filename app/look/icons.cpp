// SPDX-License-Identifier: MIT
#include "app/look/icons.h"

#include <array>
#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPixmapCache>
#include <QSvgRenderer>

#include "app/look/theme.h"

namespace tussock {

namespace {

constexpr std::array kParts{&Theme::ink,     &Theme::quietInk, &Theme::raised,
                            &Theme::leaf,    &Theme::sky,      &Theme::alert,
                            &Theme::caution, &Theme::hint,     &Theme::edge};

QByteArray drawingOf(const QString& name, const QColor& ink) {
  QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
  if (!file.open(QIODevice::ReadOnly)) return {};
  QByteArray text = file.readAll();
  const Theme drawn = Theme::light();
  for (const auto part : kParts) {
    const QColor now = part == &Theme::ink ? ink : currentTheme().*part;
    text.replace((drawn.*part).name().toUpper().toLatin1(), now.name().toLatin1());
  }
  return text;
}

void render(QPainter& painter, const QString& name, const QRectF& rect, const QColor& ink) {
  const QByteArray drawing = drawingOf(name, ink);
  if (drawing.isEmpty()) return;
  QSvgRenderer renderer(drawing);
  renderer.render(&painter, rect);
}

class LineIcon : public QIconEngine {
 public:
  explicit LineIcon(QString name) : name_(std::move(name)) {}

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    const Theme& theme = currentTheme();
    const int side = std::min(rect.width(), rect.height());
    QRectF square(0, 0, side, side);
    square.moveCenter(QRectF(rect).center());
    render(*painter, name_, square, mode == QIcon::Disabled ? theme.edge : theme.ink);
  }

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    const QString key = QStringLiteral("line-icon/%1/%2x%3/%4/%5")
                            .arg(name_)
                            .arg(size.width())
                            .arg(size.height())
                            .arg(int(mode))
                            .arg(currentTheme().ink.name());
    QPixmap picture;
    if (QPixmapCache::find(key, &picture)) return picture;
    picture = QPixmap(size);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    paint(&painter, QRect(QPoint(), size), mode, state);
    painter.end();
    QPixmapCache::insert(key, picture);
    return picture;
  }

  [[nodiscard]] QIconEngine* clone() const override { return new LineIcon(name_); }

 private:
  QString name_;
};

}  // namespace

QIcon icon(const QString& name) {
  return QIcon(new LineIcon(name));
}

void paintIcon(QPainter& painter, const QString& name, const QRectF& rect) {
  render(painter, name, rect, currentTheme().ink);
}

QString findingMark(Severity severity) {
  switch (severity) {
    case Severity::Alert:
      return QStringLiteral("finding-alert");
    case Severity::Caution:
      return QStringLiteral("finding-caution");
    case Severity::Hint:
      return QStringLiteral("finding-hint");
  }
  return {};
}

}  // namespace tussock
