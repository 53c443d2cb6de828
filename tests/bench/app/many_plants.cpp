// SPDX-License-Identifier: MIT
#include "tests/bench/app/many_plants.h"

#include <QApplication>
#include <QMouseEvent>
#include <QWheelEvent>

namespace tussock::bench {

namespace {

constexpr int kBedsInRow = 8, kDriftsAcross = 5, kSpecies = 24;
constexpr Point kBedSize{7.0, 5.0}, kWalk{1.0, 1.0}, kFirst{0.3, 0.3};  // metres
constexpr double kSpacing = 0.35;                                       // metres

std::vector<std::string> namesOf(const Catalogue& facts) {
  std::vector<std::string> names;
  for (const Species& species : facts.species())
    if (species.usualLayer() == Layer::Main && names.size() < kSpecies)
      names.push_back(species.botanicalName);
  return names;
}

class Planter {
 public:
  explicit Planter(const Catalogue& facts) : names_(namesOf(facts)) {}

  Bed& addBed(Point low, Point size) {
    Bed bed;
    bed.id = ids_.take<Bed>();
    bed.name = "Bed " + std::to_string(beds_.size() + 1);
    bed.outline = rectangle(low, low + size);
    return beds_.emplace_back(bed);
  }

  // Ten plants in rows of four, three and three.
  void addDrift(Point low) {
    Drift drift;
    drift.id = ids_.take<Drift>();
    drift.bed = beds_.back().id;
    drift.species = names_[drifts_.size() * 7 % names_.size()];
    drift.spacing = Length::metres(kSpacing);
    for (int i = 0; i < 10; ++i) {
      const int row = i < 4 ? 0 : (i - 1) / 3;
      const int inRow = i < 4 ? i : (i - 1) % 3;
      const Point step{(inRow + (row % 2) * 0.5) * kSpacing, row * kSpacing * 0.87};
      drift.plants.push_back({ids_.take<Plant>(), low + step});
    }
    drifts_.push_back(std::move(drift));
  }

  Yard finish() {
    Yard yard;
    yard.beds = Collection<Bed>(std::move(beds_));
    yard.drifts = Collection<Drift>(std::move(drifts_));
    return yard;
  }

 private:
  std::vector<std::string> names_;
  IdSource ids_{2};
  std::vector<Bed> beds_;
  std::vector<Drift> drifts_;
};

}  // namespace

Yard bedsOfPlants(int beds, const Catalogue& facts) {
  Planter planter(facts);
  for (int i = 0; i < beds; ++i) {
    const Point low{(i % kBedsInRow) * (kBedSize.x + kWalk.x),
                    (i / kBedsInRow) * (kBedSize.y + kWalk.y)};
    planter.addBed(low, kBedSize);
    for (int drift = 0; drift < kPlantsInBed / 10; ++drift)
      planter.addDrift(low + kFirst +
                       Point{(drift % kDriftsAcross) * 1.35, (drift / kDriftsAcross) * 0.95});
  }
  return planter.finish();
}

Yard bedWithDrifts(int drifts, const Catalogue& facts) {
  Planter planter(facts);
  const int across = 20;
  planter.addBed({0.0, 0.0}, {across * 2.4, (drifts / across + 1) * 1.8});
  for (int i = 0; i < drifts; ++i)
    planter.addDrift(kFirst + Point{(i % across) * 2.4, (i / across) * 1.8});
  return planter.finish();
}

ShownYard::ShownYard() : document_(readShippedCatalogue().catalogue), canvas_(document_) {
  canvas_.resize(1920, 1080);
  canvas_.setVisible(true);
}

ShownYard::ShownYard(const Yard& yard) : ShownYard() {
  take(yard);
}

void ShownYard::take(const Yard& yard) {
  document_.create(folder_.filePath(QStringLiteral("bench.yard")), yard);
  settle();
}

void ShownYard::settle() {
  document_.waitForAnalysis();
  QApplication::processEvents();
  frame();
}

void ShownYard::wheel(int notches) {
  QWheelEvent event(pointer_, canvas_.mapToGlobal(pointer_), {}, QPoint(0, 120 * notches), {}, {},
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(&canvas_, &event);
}

void ShownYard::startPan() {
  QMouseEvent press(QEvent::MouseButtonPress, pointer_, canvas_.mapToGlobal(pointer_),
                    Qt::MiddleButton, Qt::MiddleButton, {});
  QApplication::sendEvent(&canvas_, &press);
}

void ShownYard::pan(QPointF pixels) {
  pointer_ += pixels;
  QMouseEvent move(QEvent::MouseMove, pointer_, canvas_.mapToGlobal(pointer_), Qt::NoButton,
                   Qt::MiddleButton, {});
  QApplication::sendEvent(&canvas_, &move);
}

}  // namespace tussock::bench
