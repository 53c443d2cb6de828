// SPDX-License-Identifier: MIT
#include "app/tools/nudge_gesture.h"

#include "app/canvas/furniture.h"
#include "core/checks/describe.h"
#include "core/checks/moved_plant.h"
#include "core/planting/edit_drift.h"
#include "core/units/measure_text.h"

namespace tussock {

std::optional<PlantAt> plantAt(const Yard& yard, Point p, double reach) {
  std::optional<PlantAt> found;
  double nearest = reach;
  for (const Drift& drift : yard.drifts)
    for (const Plant& plant : drift.plants)
      if (const double away = distance(p, plant.at); away <= nearest) {
        nearest = away;
        found = PlantAt{drift.id, plant.id};
      }
  return found;
}

namespace {

// "Too close to prairie dropseed", else the finding's own title.
QString titleOf(const Document& document, const Finding& finding) {
  const auto other = finding.check == CheckId::Spacing && finding.subjects.size() > 1
                         ? idIf<Drift>(finding.subjects.back())
                         : std::nullopt;
  const Drift* drift = other ? document.yard().drifts.find(*other) : nullptr;
  const Species* species = drift ? document.facts().find(drift->species) : nullptr;
  if (species)
    return QObject::tr("Too close to %1").arg(QString::fromStdString(species->commonName));
  return QString::fromStdString(describe(finding, document.yard(), document.facts()).title);
}

QStringList wordsFor(Document& document, const PlantAt& plant, Point to) {
  const Yard& yard = document.yard();
  const CheckInput input{yard, document.facts()};
  QStringList words;
  for (const Finding& finding : findingsAt(surveyOf(input), plant.drift, plant.plant, to)) {
    const auto measure = [&](double metres) {
      return QString::fromStdString(
          formatLength(Length::metres(std::max(0.0, metres)), yard.settings.units));
    };
    const QString title = titleOf(document, finding);
    words << (finding.required > 0.0
                  ? QObject::tr("%1: %2, %3 asked")
                        .arg(title, measure(finding.measured), measure(finding.required))
                  : title);
  }
  return words;
}

}  // namespace

ChangeSet NudgeGesture::edit(Point to) const {
  return nudgePlant(canvas_.document().yard(), plant_.drift, plant_.plant, to).edit;
}

void NudgeGesture::move(const PointerAt& at) {
  dragged_ = true;
  to_ = at.site;
  words_ = wordsFor(canvas_.document(), plant_, to_);
  canvas_.show(edit(at.site));
}

void NudgeGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  if (dragged_) canvas_.document().commit(edit(at.site));
}

void NudgeGesture::paint(QPainter& painter, const SceneMapping& mapping) const {
  QPointF at = mapping.toPixels(to_);
  for (const QString& line : words_) {
    paintNote(painter, at, line, canvas_.look().theme);
    at += QPointF(0.0, 26.0);
  }
}

}  // namespace tussock
