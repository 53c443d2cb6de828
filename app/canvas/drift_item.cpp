// SPDX-License-Identifier: MIT
// A drift: its plants, one soft outline around them with a light wash, and its label.
#include <algorithm>

#include "app/canvas/drift_picture.h"
#include "app/canvas/items.h"
#include "app/look/glyphs.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

constexpr double kNamesFrom = 85.0;     // pixels a metre from which names are written out
constexpr int kLargestSprite = 128;     // pixels; larger symbols are drawn afresh
constexpr double kWidest = 1.25;        // of the spacing, for a symbol
constexpr double kPlainSpread = 0.4;    // metres, for a species without facts
constexpr double kSlideShare = 0.3;     // of the drift, that its label may be moved
constexpr double kMostHidden = 0.5;     // of a drift, by its label
constexpr double kMostSlide = 30.0;     // pixels
constexpr double kDriftOverhang = 4.0;  // pixels that lines and rounding take

Depth depthOf(Layer layer) {
  switch (layer) {
    case Layer::Ground:
      return Depth::GroundLayer;
    case Layer::Main:
      return Depth::MainLayer;
    case Layer::Bulbs:
      return Depth::BulbLayer;
  }
  return Depth::MainLayer;
}

class DriftItem : public Item {
 public:
  DriftItem(const Drift& drift, const Yard& yard)
      : Item(refTo(drift.id), depthOf(drift.layer)),
        drift_(drift),
        code_(QString::fromStdString(codeOf(yard, drift.species))) {
    double most = -1.0;
    std::vector<Polygon> outline = outlineOf(drift);
    for (const Polygon& piece : outline) {
      const double area = areaOf(piece).squareMetres();
      ground_ += area;
      if (area <= most) continue;
      most = area;
      middle_ = labelPoint(piece);
      width_ = boundsOf(piece).width();
      height_ = boundsOf(piece).height();
    }
    setArea(std::move(outline));
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const Species* species = look.facts.find(drift_.species);
    const DriftPicture::Look drawn{glyphOf(species, look), radiusOf(species, look), look.theme.ink,
                                   look.theme.dark};
    const double overhang = mapping.pixels(drawn.radius) + kDriftOverhang;
    const QRectF box =
        mapping.toPixels(bounds()).adjusted(-overhang, -overhang, overhang, overhang);
    picture_.lay(painter, box, mapping, drawn, [&](QPainter& on, const SceneMapping& there) {
      paintWash(on, there, drawn);
      paintPlants(on, there, drawn.glyph, drawn.radius, look.dpr);
    });
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    QFont font = fontFor(TextRole::Note);
    font.setWeight(QFont::Bold);
    const QString count = QString::number(drift_.plants.size());
    const QString code = code_.isEmpty() ? QString::fromStdString(drift_.species) : code_;
    Label label{{QStringLiteral("%1 × %2").arg(count, code)},
                font,
                botanicalFont(TextRole::Note),
                look.theme.ink};
    label.middle = mapping.toPixels(middle_);
    label.slide = std::min(kMostSlide, mapping.pixels(height_) * kSlideShare);
    label.aside = std::min(kMostSlide, mapping.pixels(width_) * kSlideShare);
    label.weight = 100.0 + double(drift_.plants.size());
    label.brief = code;
    if (look.allNames || mapping.scale() > kNamesFrom)
      label.lines.append(QString::fromStdString(drift_.species));
    label.always = look.allNames;
    if (!look.allNames) {
      if (drift_.locked) label.mark = QStringLiteral("locked");
      label.room = mapping.pixels(width_) * 1.02;
      label.ground = kMostHidden * mapping.pixels(mapping.pixels(ground_));
      label.set = drift_.bed.value();
      label.within = refTo(drift_.bed);
    }
    labels.push_back(std::move(label));
  }

 private:
  [[nodiscard]] GlyphLook glyphOf(const Species* species, const CanvasLook& look) const {
    Species plain;
    plain.botanicalName = drift_.species;
    GlyphLook glyph =
        glyphLook(species ? *species : plain, look.week, look.theme.dark, look.facts.hemisphere());
    glyph.existing = drift_.existing();
    return glyph;
  }

  // Metres, in the week and year shown.
  [[nodiscard]] double radiusOf(const Species* species, const CanvasLook& look) const {
    if (!species) return std::max(drift_.spacing.metres(), kPlainSpread) / 2.0;
    // Neighbours close up at their spacing: a symbol far wider would hide who stands where.
    const double spread = std::min(spreadIn(*species, drift_.size, look.year).metres(),
                                   drift_.spacing.metres() * kWidest);
    return spread / 2.0 * seasonShare(*species, look);
  }

  void paintWash(QPainter& painter, const SceneMapping& mapping,
                 const DriftPicture::Look& drawn) const {
    painter.save();
    painter.setTransform(mapping.transform(), true);
    painter.setPen(linePen(faded(drawn.ink, 0.30), 0.8));
    painter.setBrush(faded(washColour(drawn.glyph, drawn.dark), drawn.dark ? 0.20 : 0.24));
    painter.drawPath(shape());
    painter.restore();
  }

  void paintPlants(QPainter& painter, const SceneMapping& mapping, const GlyphLook& glyph,
                   double radius, double dpr) const {
    const double pixels = std::max(1.5, mapping.pixels(radius));
    if (pixels > kLargestSprite) {
      for (const Plant& plant : drift_.plants)
        paintGlyph(painter, mapping.toPixels(plant.at), pixels, glyph);
      return;
    }
    const int side = std::max(2, int(std::lround(pixels)));
    const QPixmap& sprite = glyphSprite(glyph, side, dpr);
    for (const Plant& plant : drift_.plants)
      painter.drawPixmap((mapping.toPixels(plant.at) - QPointF(side, side)).toPoint(), sprite);
  }

  Drift drift_;
  QString code_;
  Point middle_;
  double width_ = 0.0, height_ = 0.0;  // metres, of the largest piece
  double ground_ = 0.0;                // square metres of all pieces
  mutable DriftPicture picture_;
};

}  // namespace

std::unique_ptr<Item> makeDriftItem(const Drift& drift, const Yard& yard) {
  return std::make_unique<DriftItem>(drift, yard);
}

}  // namespace tussock
