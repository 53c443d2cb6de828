// SPDX-License-Identifier: MIT
#include "app/tools/breakage.h"

#include <algorithm>

#include "app/canvas/furniture.h"
#include "core/checks/describe.h"
#include "core/checks/moved_plant.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

constexpr qsizetype kMostLines = 4;  // beside the pointer; what is below is named by its number
constexpr double kLineHeight = 26.0;
constexpr double kLeastRing = 7.0;

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

QString wordsOf(const Document& document, const Finding& finding) {
  const auto measure = [&](double metres) {
    return QString::fromStdString(
        formatLength(Length::metres(std::max(0.0, metres)), document.yard().settings.units));
  };
  const QString title = titleOf(document, finding);
  if (finding.check == CheckId::SetBack && finding.measured < 0.0)
    return QObject::tr("%1: %2 beyond its edge").arg(title, measure(-finding.measured));
  return finding.required > 0.0
             ? QObject::tr("%1: %2, %3 asked")
                   .arg(title, measure(finding.measured), measure(finding.required))
             : title;
}

double shortOf(const Finding& finding) {
  return finding.required - finding.measured;
}

}  // namespace

Breakage::Breakage(const Document& document, const Drift& drift,
                   const std::vector<Finding>& findings)
    : spacing_(drift.spacing) {
  std::vector<Finding> worst = findings;
  std::stable_sort(worst.begin(), worst.end(),
                   [](const Finding& a, const Finding& b) { return shortOf(a) > shortOf(b); });
  for (const Finding& finding : worst) words_ << wordsOf(document, finding);
  for (const Plant& plant : drift.plants)
    if (std::any_of(worst.begin(), worst.end(), [&](const Finding& finding) {
          return std::find(finding.plants.begin(), finding.plants.end(), plant.id) !=
                 finding.plants.end();
        }))
      places_.push_back(plant.at);
}

Breakage breakageOf(const Document& document, const Drift& drift) {
  const CheckInput input{document.yard(), document.facts()};
  return {document, drift, findingsAt(surveyOf(input), drift)};
}

void Breakage::paint(QPainter& painter, const Canvas& canvas, Point beside) const {
  const Theme& theme = canvas.look().theme;
  paintRings(painter, canvas.mapping(), places_, spacing_, theme.alert);
  QPointF at = canvas.mapping().toPixels(beside);
  const qsizetype rest = words_.size() - kMostLines;
  for (const QString& line : words_.first(std::min(kMostLines, words_.size()))) {
    paintNote(painter, at, line, theme);
    at += QPointF(0.0, kLineHeight);
  }
  if (rest > 0) paintNote(painter, at, QObject::tr("and %1 more").arg(rest), theme);
}

void paintRings(QPainter& painter, const SceneMapping& mapping, const std::vector<Point>& places,
                Length spacing, const QColor& colour) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colour, 2.0));
  const double radius = std::max(kLeastRing, mapping.pixels(spacing.metres() * 0.42));
  for (const Point place : places) painter.drawEllipse(mapping.toPixels(place), radius, radius);
}

}  // namespace tussock
