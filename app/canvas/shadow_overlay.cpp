// SPDX-License-Identifier: MIT
#include "app/canvas/shadow_overlay.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/canvas/item.h"
#include "app/look/sun_scale.h"
#include "core/sun/shade.h"

namespace tussock {

namespace {

// A wash over the plan, and how much of it that covers.
struct Wash {
  QColor colour;
  double share = 0.0;
};
// On a dark ground hardly anything darker can be seen, so that there the sun is painted too.
const Wash kSunInDark{QColor(255, 236, 184), 0.19};
const Wash kShadeInDark{QColor(14, 14, 44), 0.45};
Wash shadeInLight() {
  return {sunColour(0.0).darker(140), 0.50};
}

constexpr int kShrink = 2;  // the picture is this much coarser than the canvas: soft edges
constexpr int kBlur = 1;    // pixels of the picture, each way

QPainterPath outlinePath(const Ring& ring) {
  QPainterPath path;
  path.moveTo(ring.front().x, ring.front().y);
  for (std::size_t i = 1; i < ring.size(); ++i) path.lineTo(ring[i].x, ring[i].y);
  path.closeSubpath();
  return path;
}

// A running mean along lines of `count` bytes that are `step` apart.
void smooth(uchar* first, int count, qsizetype step, std::vector<int>& line) {
  line.resize(std::size_t(count));
  for (int i = 0; i < count; ++i) line[std::size_t(i)] = first[i * step];
  for (int i = 0; i < count; ++i) {
    int sum = 0;
    for (int k = -kBlur; k <= kBlur; ++k) sum += line[std::size_t(std::clamp(i + k, 0, count - 1))];
    first[i * step] = uchar(sum / (2 * kBlur + 1));
  }
}

void soften(QImage& mask) {
  std::vector<int> line;
  for (int y = 0; y < mask.height(); ++y) smooth(mask.scanLine(y), mask.width(), 1, line);
  for (int x = 0; x < mask.width(); ++x)
    smooth(mask.bits() + x, mask.height(), mask.bytesPerLine(), line);
}

// Part of one wash and the rest of the other, premultiplied.
QRgb mixed(const Wash& sun, const Wash& shade, double kept) {
  const auto channel = [&](int inSun, int inShade) {
    const double value = inSun * sun.share * (1.0 - kept) + inShade * shade.share * kept;
    return int(std::lround(value));
  };
  return qRgba(channel(sun.colour.red(), shade.colour.red()),
               channel(sun.colour.green(), shade.colour.green()),
               channel(sun.colour.blue(), shade.colour.blue()), channel(255, 255));
}

QImage coloured(const QImage& mask, const Wash& sun, const Wash& shade) {
  std::array<QRgb, 256> shades{};
  for (int i = 0; i < 256; ++i) shades[std::size_t(i)] = mixed(sun, shade, i / 255.0);
  QImage picture(mask.size(), QImage::Format_ARGB32_Premultiplied);
  for (int y = 0; y < mask.height(); ++y) {
    const uchar* from = mask.constScanLine(y);
    auto* to = reinterpret_cast<QRgb*>(picture.scanLine(y));
    for (int x = 0; x < mask.width(); ++x) to[x] = shades[from[x]];
  }
  return picture;
}

}  // namespace

void ShadowOverlay::clear() {
  casts_.clear();
  roofs_ = QPainterPath();
  dark_ = taken_ = false;
  picture_ = QImage();
}

void ShadowOverlay::take(const Yard& yard, const SunPosition& sun, MonthDay day) {
  clear();
  taken_ = true;
  const Solids solids = solidsOf(yard);
  dark_ = !sunlit(solids, sun);
  int group = -1;
  for (const Shadow& shadow : shadowsOf(solids, sun, day)) {
    const Ring outline = ringOf(shadow.outline);
    if (outline.size() < 3) continue;
    if (shadow.group != group) casts_.push_back({QPainterPath(), shadow.openness});
    group = shadow.group;
    casts_.back().path.setFillRule(Qt::WindingFill);
    casts_.back().path.addPath(outlinePath(outline));
  }
  for (const Building& building : yard.buildings)
    roofs_.addPath(tussock::pathOf(building.footprint));
}

// In the mask is the share of the sun that is kept off: laid over one another, 1 - a and 1 - b
// leave a b, as the sun map has it. It is made faint only when it is given its colour.
QImage ShadowOverlay::pictureFor(const SceneMapping& mapping, const Theme& theme) const {
  const QSize size = (mapping.view() / kShrink).toSize().expandedTo(QSize(1, 1));
  QImage mask(size, QImage::Format_Alpha8);
  const auto cover = [](double share) { return QColor(0, 0, 0, int(std::lround(share * 255.0))); };
  mask.fill(dark_ ? cover(1.0) : QColor(0, 0, 0, 0));
  const auto begin = [&](QPainter& painter) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(1.0 / kShrink, 1.0 / kShrink);
    painter.setTransform(mapping.transform(), true);
  };
  {
    QPainter painter(&mask);
    begin(painter);
    for (const Cast& cast : casts_) painter.fillPath(cast.path, cover(1.0 - cast.openness));
  }
  soften(mask);
  if (!dark_) {  // roofs are as dark as the ground when there is no sun
    QPainter painter(&mask);
    begin(painter);
    painter.setCompositionMode(QPainter::CompositionMode_Clear);
    painter.fillPath(roofs_, Qt::black);
  }
  return theme.dark ? coloured(mask, kSunInDark, kShadeInDark)
                    : coloured(mask, Wash(), shadeInLight());
}

void ShadowOverlay::paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) {
  if (!taken_) return;
  if (picture_.isNull() || !(pictureFor_ == mapping) || pictureDark_ != look.theme.dark) {
    picture_ = pictureFor(mapping, look.theme);
    pictureFor_ = mapping;
    pictureDark_ = look.theme.dark;
  }
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawImage(QRectF(QPointF(), mapping.view()), picture_);
  painter.restore();
}

}  // namespace tussock
