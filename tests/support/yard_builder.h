// SPDX-License-Identifier: MIT
// Makes small yards for tests in a few words. Ids run up from 2 in the order things are added
// (settings are 1), plants included, so a test can rely on them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/model/yard.h"

namespace tussock::test {

// bed() and drift() add one; the words after them say more about the last one added.
class YardBuilder {
 public:
  YardBuilder();  // in metres, at 38.4 N 86.9 W, last frost 20 April, first 18 October

  YardBuilder& units(UnitSystem units);
  YardBuilder& threshold(std::string id, double value);

  YardBuilder& bed(std::string name, std::string_view wkt);
  YardBuilder& setback(Length setback);
  YardBuilder& viewing(std::string_view sides);  // as parseViewing reads them
  YardBuilder& moisture(Moisture moisture);

  YardBuilder& drift(std::string species, std::vector<Point> places);  // in the last bed
  YardBuilder& spaced(double metres);                                  // 0.4 when not said
  YardBuilder& layer(Layer layer);
  YardBuilder& existing();

  YardBuilder& paving(std::string name, std::string_view wkt);
  YardBuilder& building(std::string name, std::string_view wkt);
  YardBuilder& wall(std::string name, Polyline line, double thicknessMetres);
  YardBuilder& tree(std::string name, Point at, double trunkDiameterMetres);
  YardBuilder& step(Point at, double radiusMetres);
  YardBuilder& accept(std::string findingKey, std::string reason);

  [[nodiscard]] Yard build() const { return yard_; }
  [[nodiscard]] Id<Bed> lastBed() const { return bed_.id; }
  [[nodiscard]] Id<Drift> lastDrift() const { return drift_.id; }

 private:
  void keepBed();
  void keepDrift();
  template <class T>
  YardBuilder& add(T object);

  Yard yard_;
  IdSource ids_{2};
  Bed bed_;
  Drift drift_;
};

// `count` points `step` metres apart, eastward from `from`.
[[nodiscard]] std::vector<Point> row(int count, double step, Point from);

}  // namespace tussock::test
