// SPDX-License-Identifier: MIT
#include "app/look/glyphs.h"

#include <algorithm>
#include <cmath>
#include <QHash>

#include "app/look/glyph_parts.h"
#include "app/look/oklab.h"
#include "core/catalog/oklab.h"
#include "core/catalog/season_weeks.h"
#include "core/catalog/usual_flowers.h"

namespace tussock {

namespace {

// FNV-1a: the same on every machine, so that a species looks the same everywhere.
unsigned hashOf(std::string_view text) {
  unsigned hash = 2166136261u;
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 16777619u;
  return hash ^ (hash >> 15);
}

// How far the leaves have turned to straw in a week of the north: bare ground in winter, green by
// the end of April, turning from late September.
double strawShare(const Species& species, int week) {
  const bool gone = species.usualLayer() == Layer::Bulbs && week > 24;
  if (gone || week < 9 || week > 46) return 1.0;
  if (week < 17) return (17 - week) / 8.0;
  if (week > 37) return (week - 37) / 10.0;
  return 0.0;
}

QColor summerGreen(const Species& species, unsigned hash, bool dark) {
  double hue = 112.0 + double(hash % 46u), chroma = 0.055 + double((hash >> 8) % 40u) / 1000.0;
  double lightness = (dark ? 0.46 : 0.66) + double((hash >> 16) % 14u) / 100.0;
  switch (species.habit) {
    case Habit::Grass:
    case Habit::Sedge:
      hue -= 6.0, chroma *= 0.85, lightness += dark ? 0.06 : 0.0;
      break;
    case Habit::Fern:
      hue = std::max(hue, 132.0), chroma += 0.02;
      break;
    case Habit::Shrub:
      lightness -= 0.05;
      break;
    case Habit::Forb:
    case Habit::Vine:
    case Habit::Bulb:
      break;
  }
  return fromOklch(lightness, chroma, hue);
}

QColor flowerColour(const Species& species, bool dark) {
  const std::optional<Rgb> known = flowerColourOf(species);
  if (!known) return {};
  const Rgb rgb = *known;
  const QColor colour(rgb.red, rgb.green, rgb.blue);
  const double lightness = toOklab(colour).lightness;
  return dark && lightness < 0.58 ? lightened(colour, 0.58 - lightness) : colour;
}

int detailFor(double pixels) {
  if (pixels < 6.0) return 0;
  return pixels < 14.0 ? 1 : 2;
}

void paintCentre(const GlyphBrush& b) {
  const double dot = std::max(0.055, b.hairline * 1.3);
  b.painter.setPen(Qt::NoPen);
  // On a blot of bloom a dark dot shows in either theme; light ones would drown the colours.
  const bool onBloom = b.detail == 0 && b.look.inFlower && b.look.flower.isValid();
  b.painter.setBrush(onBloom ? GlyphLook().centre : b.look.centre);
  if (b.look.existing || b.detail < 2) {
    b.painter.drawEllipse(QPointF(0, 0), dot * 1.25, dot * 1.25);
    return;
  }
  b.painter.drawEllipse(QPointF(0, 0), dot * 0.8, dot * 0.8);
  b.painter.setPen(QPen(b.look.centre, std::max(0.03, b.hairline * 0.8)));
  const double reach = dot * 2.1;
  b.painter.drawLine(QPointF(-reach, 0), QPointF(reach, 0));
  b.painter.drawLine(QPointF(0, -reach), QPointF(0, reach));
}

void paintBlot(const GlyphBrush& b) {
  b.painter.setPen(Qt::NoPen);
  b.painter.setBrush(withAlpha(b.look.foliage, 0.75));
  b.painter.drawEllipse(QPointF(0, 0), 0.94, 0.94);
  if (!b.look.inFlower || !b.look.flower.isValid()) return;
  b.painter.setBrush(b.look.flower);
  b.painter.drawEllipse(QPointF(0, 0), 0.60, 0.60);
}

struct SpriteKey {
  GlyphLook look;
  int radius = 0;
  int dprPercent = 100;
  bool operator==(const SpriteKey&) const = default;
};
std::size_t qHash(const SpriteKey& key, std::size_t seed = 0) {
  const GlyphLook& l = key.look;
  return qHashMulti(seed, int(l.habit), int(l.form), l.flower.rgba(), l.foliage.rgba(),
                    l.centre.rgba(), l.inFlower, l.existing, l.mat, l.variety, key.radius,
                    key.dprPercent);
}

QPixmap drawSprite(const GlyphLook& look, int radiusPixels, double dpr) {
  const int side = int(std::ceil(2.0 * radiusPixels * dpr));
  QPixmap sprite(side, side);
  sprite.setDevicePixelRatio(dpr);
  sprite.fill(Qt::transparent);
  QPainter painter(&sprite);
  painter.setRenderHint(QPainter::Antialiasing);
  paintGlyph(painter, QPointF(radiusPixels, radiusPixels), radiusPixels, look);
  return sprite;
}

constexpr int kMostSprites = 4000;

}  // namespace

GlyphLook glyphLook(const Species& species, std::optional<int> week, bool dark, Hemisphere where) {
  const unsigned hash = hashOf(species.botanicalName);
  GlyphLook look;
  look.habit = species.habit;
  look.form = flowerFormOf(species);
  look.variety = int((hash >> 4) % 256u);
  look.mat = species.usualLayer() == Layer::Ground && species.habit == Habit::Forb;
  look.centre = dark ? QColor(0xF3, 0xEF, 0xE4) : QColor(0x2B, 0x2A, 0x27);
  look.flower = flowerColour(species, dark);
  look.inFlower = look.flower.isValid() && (!week || species.bloomsInWeek(*week));
  const QColor straw = dark ? QColor(0x7A, 0x6C, 0x4C) : QColor(0xC9, 0xB4, 0x83);
  look.foliage = summerGreen(species, hash, dark);
  if (week)
    look.foliage =
        mixed(look.foliage, straw, strawShare(species, northernWeek(*week, where)) * 0.9);
  return look;
}

QColor washColour(const GlyphLook& look, bool dark) {
  if (!look.inFlower || !look.flower.isValid()) return look.foliage;
  const Rgb flower{look.flower.red(), look.flower.green(), look.flower.blue()};
  return !dark && lostOnPaper(flower) ? look.foliage : look.flower;
}

void paintGlyph(QPainter& painter, QPointF centre, double radius, const GlyphLook& look) {
  if (radius <= 0.0) return;
  const double scale = std::sqrt(std::abs(painter.deviceTransform().determinant()));
  const double pixels = radius * scale;
  painter.save();
  painter.translate(centre);
  painter.scale(radius, radius);
  const GlyphBrush brush{painter, look, detailFor(pixels), std::max(0.012, 0.8 / pixels)};
  if (brush.detail == 0) {
    paintBlot(brush);
  } else {
    paintFoliage(brush);
    if (look.inFlower) paintFlowers(brush);
  }
  paintCentre(brush);
  painter.restore();
}

const QPixmap& glyphSprite(const GlyphLook& look, int radiusPixels, double dpr) {
  static QHash<SpriteKey, QPixmap> sprites;
  const SpriteKey key{look, radiusPixels, int(std::lround(dpr * 100.0))};
  if (const auto found = sprites.constFind(key); found != sprites.constEnd()) return *found;
  if (sprites.size() >= kMostSprites) sprites.clear();
  return *sprites.insert(key, drawSprite(look, radiusPixels, dpr));
}

}  // namespace tussock
