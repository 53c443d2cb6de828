// SPDX-License-Identifier: MIT
// The fields of every object by name: one list that the yard file's columns, the change sets in its
// history and the tests all read. A name carries its unit. f(name, field) is called for each field
// but the id, in column order.
//
// A Point field named "at" stands for the columns at_x_m and at_y_m. Plants of a drift are rows of
// their own; see Drift.
#pragma once

#include <string_view>
#include <type_traits>

#include "core/model/yard.h"

namespace tussock {

// Fields that the history of files of earlier versions does not have. What they hold there is what
// a new object has.
[[nodiscard]] constexpr bool isLaterField(std::string_view name) {
  return name == "deer_about";  // since version 2
}

template <class Candidate, class T>
concept ConstOrNot = std::is_same_v<std::remove_const_t<Candidate>, T>;

template <ConstOrNot<Settings> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("latitude_rad", o.latitude);
  f("longitude_rad", o.longitude);
  f("time_zone", o.timeZone);
  f("state", o.state);
  f("hardiness_zone", o.hardinessZone);
  f("deer_about", o.deerAbout);
  f("last_frost", o.lastFrost);
  f("first_frost", o.firstFrost);
  f("slope_rad", o.slope);
  f("aspect_rad", o.aspect);
  f("skyline_json", o.skyline);
  f("units", o.units);
  f("sun_profile", o.sunProfile);
  f("thresholds_json", o.thresholds);
  f("notes", o.notes);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<LotLine> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("outline_wkt", o.outline);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<Building> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("footprint_wkt", o.footprint);
  f("roof", o.roof);
  f("eave_m", o.eave);
  f("ridge_m", o.ridge);
  f("ridge_azimuth_rad", o.ridgeAzimuth);
  f("base_m", o.base);
  f("overhang_m", o.overhang);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<Barrier> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("kind", o.kind);
  f("line_wkt", o.line);
  f("thickness_m", o.thickness);
  f("footprint_wkt", o.footprint);
  f("height_m", o.height);
  f("openness", o.openness);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<Tree> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("at", o.at);
  f("height_m", o.height);
  f("crown_radius_m", o.crownRadius);
  f("crown_base_m", o.crownBase);
  f("trunk_diameter_m", o.trunkDiameter);
  f("crown", o.crown);
  f("openness_leaf", o.opennessLeaf);
  f("openness_bare", o.opennessBare);
  f("leaf_on", o.leafOn);
  f("leaf_off", o.leafOff);
  f("evergreen", o.evergreen);
  f("growth_m", o.growth);
  f("mature_height_m", o.matureHeight);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<Paving> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("outline_wkt", o.outline);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<SteppingPlace> T, class F>
void visitFields(T& o, F&& f) {
  f("at", o.at);
  f("radius_m", o.radius);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<WaterPoint> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("at", o.at);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<HeightLimit> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("outline_wkt", o.outline);
  f("height_m", o.height);
  f("datum_offset_m", o.datumOffset);
  f("reason", o.reason);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<BuriedLine> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("line_wkt", o.line);
  f("kind", o.kind);
  f("hand_dig_width_m", o.handDigWidth);
  f("ticket", o.ticket);
  f("expiry", o.expiry);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<Bed> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("outline_wkt", o.outline);
  f("moisture", o.moisture);
  f("texture", o.texture);
  f("setback_m", o.setback);
  f("viewing", o.viewing);
  f("plant_list_json", o.plantList);
  f("wildness", o.wildness);
  f("foreign_json", o.foreign);
}

template <ConstOrNot<Patch> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("outline_wkt", o.outline);
  f("moisture", o.moisture);
  f("foreign_json", o.foreign);
}

// The plants come last; a file keeps them as rows of table plant (id, drift_id, at_x_m, at_y_m).
template <ConstOrNot<Drift> T, class F>
void visitFields(T& o, F&& f) {
  f("bed_id", o.bed);
  f("species", o.species);
  f("layer", o.layer);
  f("spacing_m", o.spacing);
  f("size", o.size);
  f("pattern", o.pattern);
  f("locked", o.locked);
  f("axis_rad", o.axis);
  f("stretch", o.stretch);
  f("foreign_json", o.foreign);
  f("plants", o.plants);
}

template <ConstOrNot<PlanCode> T, class F>
void visitFields(T& o, F&& f) {
  f("species", o.species);
  f("code", o.code);
}

template <ConstOrNot<Photo> T, class F>
void visitFields(T& o, F&& f) {
  f("name", o.name);
  f("content_hash", o.contentHash);
  f("width_px", o.widthPixels);
  f("height_px", o.heightPixels);
  f("corner", o.corner);
  f("metres_per_pixel", o.metresPerPixel);
  f("turn_rad", o.turn);
  f("opacity", o.opacity);
  f("locked", o.locked);
}

template <ConstOrNot<Acceptance> T, class F>
void visitFields(T& o, F&& f) {
  f("finding_key", o.findingKey);
  f("reason", o.reason);
}

template <ConstOrNot<ForeignFeature> T, class F>
void visitFields(T& o, F&& f) {
  f("json", o.json);
}

template <ConstOrNot<SunReading> T, class F>
void visitFields(T& o, F&& f) {
  f("at", o.at);
  f("day", o.day);
  f("hours", o.hours);
  f("note", o.note);
}

template <ConstOrNot<OwnSpecies> T, class F>
void visitFields(T& o, F&& f) {
  f("botanical_name", o.botanicalName);
  f("facts_json", o.facts);
}

template <ConstOrNot<Arrangement> T, class F>
void visitFields(T& o, F&& f) {
  f("bed_id", o.bed);
  f("name", o.name);
  f("seed", o.seed);
  f("wildness", o.wildness);
  f("drifts_json", o.drifts);
}

}  // namespace tussock
