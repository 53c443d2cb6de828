// SPDX-License-Identifier: MIT
// The properties of each kind of GeoJSON feature, in one list that writing and reading share.
// Angles are degrees, lengths metres. f(name, field, limits) is called for each.
#pragma once

#include "core/model/fields.h"

namespace tussock {

struct Limits {
  double least = 0.0;
  double most = 1000.0;
};
inline constexpr Limits kShare{0.0, 1.0};
inline constexpr Limits kOffset{-1000.0, 1000.0};
inline constexpr Limits kDegrees{-360.0, 360.0};
inline constexpr Limits kSpacing{0.01, 100.0};
inline constexpr Limits kStretch{1.0, 50.0};

// Property `kind` of the features that stand for objects of type T.
template <class T>
inline constexpr std::string_view kFeatureKind = {};
template <>
inline constexpr std::string_view kFeatureKind<LotLine> = "lot";
template <>
inline constexpr std::string_view kFeatureKind<Building> = "building";
template <>
inline constexpr std::string_view kFeatureKind<Barrier> = "wall";
template <>
inline constexpr std::string_view kFeatureKind<Tree> = "tree";
template <>
inline constexpr std::string_view kFeatureKind<Paving> = "paving";
template <>
inline constexpr std::string_view kFeatureKind<SteppingPlace> = "step";
template <>
inline constexpr std::string_view kFeatureKind<WaterPoint> = "water";
template <>
inline constexpr std::string_view kFeatureKind<HeightLimit> = "limit";
template <>
inline constexpr std::string_view kFeatureKind<BuriedLine> = "buried";
template <>
inline constexpr std::string_view kFeatureKind<Bed> = "bed";
template <>
inline constexpr std::string_view kFeatureKind<Patch> = "patch";
template <>
inline constexpr std::string_view kFeatureKind<Drift> = "drift";
inline constexpr std::string_view kPlantKind = "plant";
// Facts of the user's own about a species, under the columns of the plant table.
inline constexpr std::string_view kSpeciesKind = "species";

template <class T>
concept OnlyNamed = ConstOrNot<T, LotLine> || ConstOrNot<T, Paving> || ConstOrNot<T, WaterPoint>;

template <OnlyNamed T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
}

template <ConstOrNot<Building> T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
  f("roof", o.roof);
  f("eave_m", o.eave);
  f("ridge_m", o.ridge);
  f("ridge_azimuth_deg", o.ridgeAzimuth, kDegrees);
  f("base_m", o.base);
  f("overhang_m", o.overhang);
}

template <ConstOrNot<Barrier> T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
  f("barrier", o.kind);
  f("thickness_m", o.thickness);
  f("height_m", o.height);
  f("openness", o.openness, kShare);
}

template <ConstOrNot<Tree> T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
  f("height_m", o.height);
  f("crown_radius_m", o.crownRadius);
  f("crown_base_m", o.crownBase);
  f("trunk_diameter_m", o.trunkDiameter);
  f("crown", o.crown);
  f("openness_leaf", o.opennessLeaf, kShare);
  f("openness_bare", o.opennessBare, kShare);
  f("leaf_on", o.leafOn);
  f("leaf_off", o.leafOff);
  f("evergreen", o.evergreen);
  f("growth_m", o.growth);
  f("mature_height_m", o.matureHeight);
}

template <ConstOrNot<SteppingPlace> T, class F>
void visitProperties(T& o, F&& f) {
  f("radius_m", o.radius);
}

template <ConstOrNot<HeightLimit> T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
  f("height_m", o.height);
  f("datum_offset_m", o.datumOffset, kOffset);
  f("reason", o.reason);
}

template <ConstOrNot<BuriedLine> T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
  f("service", o.kind);
  f("hand_dig_width_m", o.handDigWidth);
  f("ticket", o.ticket);
  f("expiry", o.expiry);
}

template <ConstOrNot<Bed> T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
  f("moisture", o.moisture);
  f("texture", o.texture);
  f("setback_m", o.setback);
  f("viewing", o.viewing);
  f("plant_list", o.plantList);
  f("wildness", o.wildness, kShare);
}

template <ConstOrNot<Patch> T, class F>
void visitProperties(T& o, F&& f) {
  f("name", o.name);
  f("moisture", o.moisture);
}

template <ConstOrNot<Drift> T, class F>
void visitProperties(T& o, F&& f) {
  f("species", o.species);
  f("spacing_m", o.spacing, kSpacing);
  f("layer", o.layer);
  f("size", o.size);
  f("pattern", o.pattern);
  f("locked", o.locked);
  f("axis_deg", o.axis, kDegrees);
  f("stretch", o.stretch, kStretch);
}

}  // namespace tussock
