// SPDX-License-Identifier: MIT
#include "app/look/silhouette.h"

#include <algorithm>
#include <cmath>

#include "app/look/silhouette_parts.h"
#include "core/catalog/usual_flowers.h"

namespace tussock {

namespace {

double leafShare(const Species& species) {
  switch (species.habit) {
    case Habit::Grass:
      return 0.62;
    case Habit::Sedge:
      return 0.85;
    case Habit::Fern:
    case Habit::Shrub:
      return 1.0;
    case Habit::Vine:
      return 0.95;
    case Habit::Bulb:
      return 0.6;
    case Habit::Forb:
      break;
  }
  switch (flowerFormOf(species)) {
    case FlowerForm::None:
      return 1.0;
    case FlowerForm::Spire:
      return 0.6;
    case FlowerForm::Bell:
    case FlowerForm::Globe:
      return 0.65;
    case FlowerForm::Daisy:
    case FlowerForm::Umbel:
    case FlowerForm::Plume:
      break;
  }
  return 0.8;
}

constexpr double kLowLeaves = 0.6;  // of the height in flower: bare stems stand above

Length leafHeight(const Species& species, Length flower) {
  if (!species.foliageLow || !species.foliageHigh) return flower * leafShare(species);
  return std::min((*species.foliageLow + *species.foliageHigh) * 0.5, flower);
}

}  // namespace

Silhouette silhouetteOf(const Species& species, std::optional<int> week, bool dark,
                        Hemisphere where) {
  Silhouette made;
  made.look = glyphLook(species, week, dark, where);
  made.flower = species.height();
  made.foliage = leafHeight(species, made.flower);
  made.spread = species.spread;
  made.seeThrough = species.body == Body::SeeThrough && made.foliage <= made.flower * kLowLeaves;
  return made;
}

void paintSilhouette(QPainter& painter, QPointF foot, double pixelsPerMetre,
                     const Silhouette& silhouette) {
  if (pixelsPerMetre <= 0.0 || silhouette.flower <= Length()) return;
  painter.save();
  painter.translate(foot);
  painter.scale(pixelsPerMetre, -pixelsPerMetre);
  const SideBrush brush{painter, silhouette, 0.9 / pixelsPerMetre};
  const std::vector<StemTip> tips =
      silhouette.look.inFlower ? paintStems(brush) : std::vector<StemTip>();
  paintSideFoliage(brush);
  for (const StemTip& tip : tips) paintSideFlower(brush, tip);
  painter.restore();
}

}  // namespace tussock
