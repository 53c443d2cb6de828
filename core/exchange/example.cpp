// SPDX-License-Identifier: MIT
#include "core/exchange/example.h"

#include <stdexcept>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "core/catalog/resources.h"
#include "core/exchange/geojson.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

Settings settingsFrom(const nlohmann::json& from) {
  Settings settings;
  settings.name = from.at("name");
  settings.latitude = Angle::degrees(from.at("latitude_deg"));
  settings.longitude = Angle::degrees(from.at("longitude_deg"));
  settings.timeZone = from.at("time_zone");
  settings.state = from.at("state");
  settings.hardinessZone = from.at("hardiness_zone");
  settings.lastFrost = parseMonthDay(from.at("last_frost").get<std::string>());
  settings.firstFrost = parseMonthDay(from.at("first_frost").get<std::string>());
  settings.notes = from.at("notes");
  return settings;
}

Photo photoFrom(const nlohmann::json& from, IdSource& ids) {
  Photo photo;
  photo.id = ids.take<Photo>();
  photo.name = from.at("file");
  photo.contentHash = from.at("sha256");
  photo.widthPixels = from.at("width_px");
  photo.heightPixels = from.at("height_px");
  photo.corner = {from.at("corner_m").at(0), from.at("corner_m").at(1)};
  photo.metresPerPixel = from.at("metres_per_pixel");
  photo.opacity = from.at("opacity");
  photo.locked = true;
  return photo;
}

const Bed& bedNamed(const Yard& yard, const std::string& name) {
  for (const Bed& bed : yard.beds)
    if (bed.name == name) return bed;
  throw std::runtime_error(
      fmt::format("planting.json: there is no bed \"{}\" in site.geojson", name));
}

Yard planted(const Yard& yard, const Catalogue& facts, const Bed& bed, const nlohmann::json& from,
             IdSource& ids) {
  const std::string name = from.at("species");
  const Species* species = facts.find(name);
  if (species == nullptr)
    throw std::runtime_error(fmt::format("planting.json: \"{}\" is not in the plant facts", name));
  GrowRequest request;
  request.bed = bed.id;
  request.count = from.at("count");
  request.at = {from.at("at_m").at(0), from.at("at_m").at(1)};
  request.axis = Angle::degrees(from.at("axis_deg"));
  return apply(yard, plantDrift(yard, *species, request, ids).edit);
}

}  // namespace

Example buildExample(const Catalogue& facts) {
  const auto folder = resourceFolder() / "example";
  const nlohmann::json plan = nlohmann::json::parse(readFile(folder / "planting.json"));
  IdSource ids(2);
  Yard yard;
  yard.settings = settingsFrom(plan.at("yard"));
  yard = apply(
      yard,
      importGeoJson(yard, facts, readFile(folder / "site.geojson"), "site.geojson", ids).edit);
  const Photo photo = photoFrom(plan.at("photo"), ids);
  for (const auto& [name, drifts] : plan.at("beds").items()) {
    const Bed bed = bedNamed(yard, name);
    for (const nlohmann::json& drift : drifts) yard = planted(yard, facts, bed, drift, ids);
  }
  yard.photos = yard.photos.with(photo);
  return {std::move(yard), readFile(folder / photo.name)};
}

}  // namespace tussock
