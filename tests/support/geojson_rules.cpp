// SPDX-License-Identifier: MIT
#include "tests/support/geojson_rules.h"

#include <nlohmann/json.hpp>

namespace tussock::test {

namespace {

using nlohmann::json;

class Rules {
 public:
  std::vector<std::string> broken;

  void collection(const json& root) {
    expect(root.is_object() && root.value("type", "") == "FeatureCollection", "type, 3.3");
    expect(!root.contains("crs"), "no crs member, 4");
    expect(!root.contains("coordinates") && !root.contains("geometry"), "7.1");
    if (!root.contains("features") || !root["features"].is_array())
      return expect(false, "features is an array, 3.3");
    for (const json& one : root["features"]) feature(one);
  }

 private:
  void expect(bool kept, const std::string& rule) {
    if (!kept) broken.push_back(where_ + ": " + rule);
  }

  void feature(const json& one) {
    where_ = "feature " + std::to_string(++count_);
    expect(one.value("type", "") == "Feature", "type, 3.2");
    expect(one.contains("geometry"), "geometry member, 3.2");
    expect(one.contains("properties"), "properties member, 3.2");
    if (!one.contains("geometry") || one["geometry"].is_null()) return;
    const json& shape = one["geometry"];
    const std::string type = shape.value("type", "");
    const json& at = shape.at("coordinates");
    if (type == "Point") return position(at);
    if (type == "LineString") return line(at);
    expect(type == "Polygon", "a geometry that we write");
    for (std::size_t i = 0; i < at.size(); ++i) ring(at[i], i == 0);
  }

  void position(const json& at) {
    expect(at.is_array() && at.size() == 2 && at[0].is_number() && at[1].is_number(),
           "two numbers, 3.1.1");
    expect(std::abs(at[0].get<double>()) <= 180.0, "longitude first, within 180, 4");
    expect(std::abs(at[1].get<double>()) <= 90.0, "latitude within 90, 4");
  }

  void line(const json& at) {
    expect(at.size() >= 2, "two or more positions, 3.1.4");
    for (const json& p : at) position(p);
  }

  void ring(const json& at, bool outer) {
    expect(at.size() >= 4, "four or more positions, 3.1.6");
    expect(at.front() == at.back(), "first and last the same, 3.1.6");
    double doubled = 0.0;
    for (std::size_t i = 0; i + 1 < at.size(); ++i) {
      const double x0 = at[0][0], y0 = at[0][1];
      position(at[i]);
      doubled += (at[i][0].get<double>() - x0) * (at[i + 1][1].get<double>() - y0) -
                 (at[i + 1][0].get<double>() - x0) * (at[i][1].get<double>() - y0);
    }
    expect(outer ? doubled > 0.0 : doubled < 0.0, "right-hand rule, 3.1.6");
  }

  std::string where_ = "top";
  int count_ = 0;
};

}  // namespace

std::vector<std::string> brokenGeoJsonRules(std::string_view text) {
  Rules rules;
  rules.collection(json::parse(text));
  return rules.broken;
}

}  // namespace tussock::test
