// SPDX-License-Identifier: MIT
#include "tests/support/yard_builder.h"

#include <stdexcept>

#include "core/geometry/wkt.h"

namespace tussock::test {

namespace {

Polygon shape(std::string_view wkt) {
  const auto polygon = polygonFromWkt(wkt);
  if (!polygon) throw std::invalid_argument("no polygon: " + std::string(wkt));
  return *polygon;
}

}  // namespace

YardBuilder::YardBuilder() {
  using namespace std::chrono;
  yard_.settings.latitude = Angle::degrees(38.4);
  yard_.settings.longitude = Angle::degrees(-86.9);
  yard_.settings.units = UnitSystem::Metres;
  yard_.settings.lastFrost = April / 20;
  yard_.settings.firstFrost = October / 18;
}

template <class T>
YardBuilder& YardBuilder::add(T object) {
  object.id = ids_.take<T>();
  collectionOf<T>(yard_) = collectionOf<T>(yard_).with(std::move(object));
  return *this;
}

void YardBuilder::keepBed() {
  yard_.beds = yard_.beds.with(bed_);
}

void YardBuilder::keepDrift() {
  yard_.drifts = yard_.drifts.with(drift_);
}

YardBuilder& YardBuilder::units(UnitSystem units) {
  yard_.settings.units = units;
  return *this;
}

YardBuilder& YardBuilder::threshold(std::string id, double value) {
  yard_.settings.thresholds.push_back({std::move(id), value});
  return *this;
}

YardBuilder& YardBuilder::bed(std::string name, std::string_view wkt) {
  bed_ = {};
  bed_.id = ids_.take<Bed>();
  bed_.name = std::move(name);
  bed_.outline = shape(wkt);
  keepBed();
  return *this;
}

YardBuilder& YardBuilder::setback(Length setback) {
  bed_.setback = setback;
  keepBed();
  return *this;
}

YardBuilder& YardBuilder::viewing(std::string_view sides) {
  bed_.viewing = parseViewing(sides).value();
  keepBed();
  return *this;
}

YardBuilder& YardBuilder::moisture(Moisture moisture) {
  bed_.moisture = moisture;
  keepBed();
  return *this;
}

YardBuilder& YardBuilder::drift(std::string species, std::vector<Point> places) {
  drift_ = {};
  drift_.id = ids_.take<Drift>();
  drift_.bed = bed_.id;
  drift_.species = std::move(species);
  drift_.spacing = Length::centimetres(40);
  for (const Point place : places) drift_.plants.push_back({ids_.take<Plant>(), place});
  keepDrift();
  return *this;
}

YardBuilder& YardBuilder::spaced(double metres) {
  drift_.spacing = Length::metres(metres);
  keepDrift();
  return *this;
}

YardBuilder& YardBuilder::layer(Layer layer) {
  drift_.layer = layer;
  keepDrift();
  return *this;
}

YardBuilder& YardBuilder::existing() {
  drift_.size = StockSize::Existing;
  keepDrift();
  return *this;
}

YardBuilder& YardBuilder::paving(std::string name, std::string_view wkt) {
  Paving paving;
  paving.name = std::move(name);
  paving.outline = shape(wkt);
  return add(std::move(paving));
}

YardBuilder& YardBuilder::building(std::string name, std::string_view wkt) {
  Building building;
  building.name = std::move(name);
  building.footprint = shape(wkt);
  return add(std::move(building));
}

YardBuilder& YardBuilder::wall(std::string name, Polyline line, double thicknessMetres) {
  Barrier wall;
  wall.name = std::move(name);
  wall.line = std::move(line);
  wall.thickness = Length::metres(thicknessMetres);
  return add(std::move(wall));
}

YardBuilder& YardBuilder::tree(std::string name, Point at, double trunkDiameterMetres) {
  Tree tree;
  tree.name = std::move(name);
  tree.at = at;
  tree.trunkDiameter = Length::metres(trunkDiameterMetres);
  return add(std::move(tree));
}

YardBuilder& YardBuilder::step(Point at, double radiusMetres) {
  SteppingPlace step;
  step.at = at;
  step.radius = Length::metres(radiusMetres);
  return add(step);
}

YardBuilder& YardBuilder::accept(std::string findingKey, std::string reason) {
  Acceptance acceptance;
  acceptance.findingKey = std::move(findingKey);
  acceptance.reason = std::move(reason);
  return add(std::move(acceptance));
}

std::vector<Point> row(int count, double step, Point from) {
  std::vector<Point> places;
  for (int i = 0; i < count; ++i) places.push_back({from.x + step * i, from.y});
  return places;
}

}  // namespace tussock::test
