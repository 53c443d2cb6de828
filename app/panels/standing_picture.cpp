// SPDX-License-Identifier: MIT
#include "app/panels/standing_picture.h"

#include <algorithm>
#include <cmath>
#include <QHelpEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include "app/look/botanical.h"
#include "app/look/silhouette.h"
#include "app/look/theme.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr double kRise = 0.16;        // of the ground, for each metre of depth
constexpr double kScaleWidth = 34.0;  // pixels on the left, for the heights
constexpr double kCaption = 18.0;     // pixels under the ground
constexpr double kTop = 6.0;

// Steps of the height scale: feet or half metres that leave room for their figures.
double stepOf(UnitSystem units, double pixelsPerMetre) {
  const double unit = units == UnitSystem::FeetInches ? Length::feet(1).metres() : 0.5;
  double step = unit;
  while (step * pixelsPerMetre < 16.0) step += unit;
  return step;
}

}  // namespace

StandingPicture::StandingPicture(Document& document, Id<Bed> bed, std::optional<int> week,
                                 QWidget* parent)
    : QWidget(parent), document_(document), bed_(bed), week_(week) {
  setObjectName(QStringLiteral("bed-standing"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  refresh();
}

QSize StandingPicture::sizeHint() const {
  return {280, heightForWidth(280)};
}

// As high as the plants ask for at the scale that the width gives, within reason.
int StandingPicture::heightForWidth(int width) const {
  const double scale = (width - kScaleWidth - kSpace2) / std::max(view_.width, 0.3);
  return int(std::clamp(kTop + kCaption + heightShown() * scale, 70.0, 190.0));
}

void StandingPicture::setWeek(std::optional<int> week) {
  week_ = week;
  drawn_ = {};
  update();
}

void StandingPicture::refresh() {
  drawn_ = {};
  tallest_ = 0.0;
  view_ = {};
  if (const Bed* bed = document_.yard().beds.find(bed_))
    view_ = standingView(document_.yard(), *bed);
  for (const StandingPlant& plant : view_.plants)
    if (const Species* species = speciesOf(plant.drift))
      tallest_ = std::max(tallest_, species->height().metres());
  setVisible(!view_.plants.empty());
  updateGeometry();
  setAccessibleName(tr("The bed from its side. %1").arg(caption()));
  update();
}

const Species* StandingPicture::speciesOf(Id<Drift> id) const {
  const Drift* drift = document_.yard().drifts.find(id);
  return drift ? document_.facts().find(drift->species) : nullptr;
}

double StandingPicture::heightShown() const {
  return std::max(tallest_, 0.3) + view_.depth * kRise;
}

double StandingPicture::pixelsPerMetre() const {
  const double across = (width() - kScaleWidth - kSpace2) / std::max(view_.width, 0.3);
  const double up = (height() - kCaption - kTop) / heightShown();
  return std::max(1.0, std::min(across, up));
}

QPointF StandingPicture::foot(const StandingPlant& plant) const {
  const double scale = pixelsPerMetre();
  return {kScaleWidth + plant.across * scale, height() - kCaption - plant.depth * kRise * scale};
}

std::optional<QPointF> StandingPicture::footOf(Id<Plant> id) const {
  for (const StandingPlant& plant : view_.plants)
    if (plant.plant == id) return foot(plant);
  return std::nullopt;
}

std::optional<Id<Drift>> StandingPicture::driftAt(QPointF at) const {
  const double scale = pixelsPerMetre();
  for (auto plant = view_.plants.rbegin(); plant != view_.plants.rend(); ++plant) {
    const Species* species = speciesOf(plant->drift);
    if (!species) continue;
    const QPointF from = at - foot(*plant);
    const bool beside = std::abs(from.x()) <= species->spread.metres() * 0.5 * scale;
    if (beside && from.y() <= 0.0 && -from.y() <= species->height().metres() * scale)
      return plant->drift;
  }
  return std::nullopt;
}

void StandingPicture::paintPlants(QPainter& painter) const {
  const double scale = pixelsPerMetre();
  const bool dark = currentTheme().dark;
  for (const StandingPlant& plant : view_.plants)
    if (const Species* species = speciesOf(plant.drift))
      paintSilhouette(painter, foot(plant), scale,
                      silhouetteOf(*species, week_, dark, document_.facts().hemisphere()));
}

void StandingPicture::paintScale(QPainter& painter) const {
  const Theme& theme = currentTheme();
  const UnitSystem units = document_.yard().settings.units;
  const double scale = pixelsPerMetre(), ground = height() - kCaption;
  const double right = kScaleWidth + view_.width * scale, back = view_.depth * kRise * scale;
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.soil);
  painter.drawRect(QRectF(QPointF(kScaleWidth, ground - back), QPointF(right, ground)));
  QFont small = font();
  small.setPixelSize(11);
  painter.setFont(small);
  const double step = stepOf(units, scale);
  for (double up = 0.0; up <= heightShown() && up * scale <= ground - kTop; up += step) {
    const double y = ground - up * scale;
    painter.setPen(theme.line);
    if (up > 0.0) painter.drawLine(QPointF(kScaleWidth, y), QPointF(right, y));
    painter.setPen(theme.quietInk);
    painter.drawText(QRectF(0, y - 8, kScaleWidth - 6, 16), Qt::AlignRight | Qt::AlignVCenter,
                     heightMark(up, units));
  }
  painter.drawText(
      QRectF(kScaleWidth, ground + 3, width() - kScaleWidth, kCaption - 3),
      Qt::AlignLeft | Qt::AlignVCenter,
      painter.fontMetrics().elidedText(caption(), Qt::ElideRight, int(width() - kScaleWidth)));
}

QString StandingPicture::caption() const {
  const QString side = text(describeViewing({false, {view_.from}}));
  const Bed* bed = document_.yard().beds.find(bed_);
  if (!bed || !bed->viewing.known()) return tr("No viewing side set: drawn from %1").arg(side);
  return bed->viewing.allRound ? tr("Seen all round: drawn from %1").arg(side)
                               : tr("Seen from %1").arg(side);
}

void StandingPicture::paintEvent(QPaintEvent*) {
  if (drawn_.isNull()) {
    const double dpr = devicePixelRatioF();
    drawn_ = QPixmap((QSizeF(size()) * dpr).toSize());
    drawn_.setDevicePixelRatio(dpr);
    drawn_.fill(Qt::transparent);
    QPainter painter(&drawn_);
    painter.setRenderHint(QPainter::Antialiasing);
    paintScale(painter);
    paintPlants(painter);
  }
  QPainter(this).drawPixmap(0, 0, drawn_);
}

void StandingPicture::resizeEvent(QResizeEvent*) {
  drawn_ = {};
}

void StandingPicture::mousePressEvent(QMouseEvent* event) {
  if (const auto drift = driftAt(event->position())) document_.select({refTo(*drift)});
}

// Colours are in the picture kept; they change with the theme.
void StandingPicture::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) {
    drawn_ = {};
    update();
  }
  QWidget::changeEvent(event);
}

bool StandingPicture::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const auto drift = driftAt(help->pos());
  const Species* species = drift ? speciesOf(*drift) : nullptr;
  if (!species) {
    QToolTip::hideText();
    return true;
  }
  const QString name = QString::fromStdString(species->botanicalName);
  QToolTip::showText(help->globalPos(),
                     QStringLiteral("%1<br>%2").arg(botanicalHtml(name), text(species->commonName)),
                     this);
  return true;
}

}  // namespace tussock
