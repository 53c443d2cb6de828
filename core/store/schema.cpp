// SPDX-License-Identifier: MIT
// One table per kind of object, its columns in the order of core/model/fields.h. A column's name
// ends in its unit: _m metres, _rad radians, _px pixels, _wkt well-known text, _json JSON.
// A number below 9e999 in size is one that is finite.
#include "core/store/schema.h"

namespace tussock {

const char* schemaSql() {
  return R"sql(
CREATE TABLE yard (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  revision INTEGER NOT NULL CHECK (revision >= 0),
  next_id INTEGER NOT NULL CHECK (next_id > 1)
) STRICT;

CREATE TABLE settings (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  name TEXT NOT NULL,
  latitude_rad REAL NOT NULL CHECK (abs(latitude_rad) < 1.58),
  longitude_rad REAL NOT NULL CHECK (abs(longitude_rad) < 3.15),
  time_zone TEXT NOT NULL,
  state TEXT NOT NULL,
  hardiness_zone TEXT NOT NULL,
  deer_about TEXT NOT NULL CHECK (deer_about IN ('no', 'yes')),
  last_frost TEXT,
  first_frost TEXT,
  slope_rad REAL NOT NULL CHECK (abs(slope_rad) < 1.58),
  aspect_rad REAL NOT NULL CHECK (abs(aspect_rad) < 9e999),
  skyline_json TEXT NOT NULL,
  units TEXT NOT NULL CHECK (units IN ('feet', 'metres')),
  sun_profile TEXT NOT NULL,
  thresholds_json TEXT NOT NULL,
  notes TEXT NOT NULL,
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE lot_line (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  outline_wkt TEXT NOT NULL,
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE building (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  footprint_wkt TEXT NOT NULL,
  roof TEXT NOT NULL CHECK (roof IN ('flat', 'gable', 'hip')),
  eave_m REAL NOT NULL CHECK (abs(eave_m) < 9e999),
  ridge_m REAL NOT NULL CHECK (abs(ridge_m) < 9e999),
  ridge_azimuth_rad REAL CHECK (abs(ridge_azimuth_rad) < 9e999),
  base_m REAL NOT NULL CHECK (abs(base_m) < 9e999),
  overhang_m REAL NOT NULL CHECK (abs(overhang_m) < 9e999),
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE barrier (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('wall', 'fence', 'hedge')),
  line_wkt TEXT NOT NULL,
  thickness_m REAL NOT NULL CHECK (abs(thickness_m) < 9e999),
  footprint_wkt TEXT NOT NULL,
  height_m REAL NOT NULL CHECK (abs(height_m) < 9e999),
  openness REAL NOT NULL CHECK (openness BETWEEN 0 AND 1),
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE tree (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  at_x_m REAL NOT NULL CHECK (abs(at_x_m) < 9e999),
  at_y_m REAL NOT NULL CHECK (abs(at_y_m) < 9e999),
  height_m REAL NOT NULL CHECK (abs(height_m) < 9e999),
  crown_radius_m REAL NOT NULL CHECK (abs(crown_radius_m) < 9e999),
  crown_base_m REAL NOT NULL CHECK (abs(crown_base_m) < 9e999),
  trunk_diameter_m REAL NOT NULL CHECK (abs(trunk_diameter_m) < 9e999),
  crown TEXT NOT NULL CHECK (crown IN ('ellipsoid', 'cone', 'column')),
  openness_leaf REAL NOT NULL CHECK (openness_leaf BETWEEN 0 AND 1),
  openness_bare REAL NOT NULL CHECK (openness_bare BETWEEN 0 AND 1),
  leaf_on TEXT NOT NULL,
  leaf_off TEXT NOT NULL,
  evergreen INTEGER NOT NULL CHECK (evergreen IN (0, 1)),
  growth_m REAL NOT NULL CHECK (abs(growth_m) < 9e999),
  mature_height_m REAL CHECK (abs(mature_height_m) < 9e999),
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE paving (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  outline_wkt TEXT NOT NULL,
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE stepping_place (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  at_x_m REAL NOT NULL CHECK (abs(at_x_m) < 9e999),
  at_y_m REAL NOT NULL CHECK (abs(at_y_m) < 9e999),
  radius_m REAL NOT NULL CHECK (abs(radius_m) < 9e999),
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE water_point (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  at_x_m REAL NOT NULL CHECK (abs(at_x_m) < 9e999),
  at_y_m REAL NOT NULL CHECK (abs(at_y_m) < 9e999),
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE height_limit (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  outline_wkt TEXT NOT NULL,
  height_m REAL NOT NULL CHECK (abs(height_m) < 9e999),
  datum_offset_m REAL NOT NULL CHECK (abs(datum_offset_m) < 9e999),
  reason TEXT NOT NULL,
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE buried_line (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  line_wkt TEXT NOT NULL,
  kind TEXT NOT NULL,
  hand_dig_width_m REAL NOT NULL CHECK (abs(hand_dig_width_m) < 9e999),
  ticket TEXT NOT NULL,
  expiry TEXT,
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE bed (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  outline_wkt TEXT NOT NULL,
  moisture TEXT NOT NULL CHECK (moisture IN ('dry', 'medium', 'moist', 'wet')),
  texture TEXT NOT NULL CHECK (texture IN ('unknown', 'sand', 'loam', 'silt', 'clay')),
  setback_m REAL CHECK (abs(setback_m) < 9e999),
  viewing TEXT NOT NULL,
  plant_list_json TEXT NOT NULL,
  wildness REAL NOT NULL CHECK (wildness BETWEEN 0 AND 1),
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE patch (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  outline_wkt TEXT NOT NULL,
  moisture TEXT NOT NULL CHECK (moisture IN ('dry', 'medium', 'moist', 'wet')),
  foreign_json TEXT NOT NULL
) STRICT;

CREATE TABLE drift (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  bed_id INTEGER NOT NULL REFERENCES bed (id) DEFERRABLE INITIALLY DEFERRED,
  species TEXT NOT NULL,
  layer TEXT NOT NULL CHECK (layer IN ('main', 'ground', 'bulbs')),
  spacing_m REAL NOT NULL CHECK (abs(spacing_m) < 9e999),
  size TEXT NOT NULL CHECK (size IN ('seed', 'plug', 'quart', 'gallon', 'existing')),
  pattern TEXT NOT NULL
    CHECK (pattern IN ('staggered', 'triangular', 'square', 'single', 'matrix')),
  locked INTEGER NOT NULL CHECK (locked IN (0, 1)),
  axis_rad REAL NOT NULL CHECK (abs(axis_rad) < 9e999),
  stretch REAL NOT NULL CHECK (abs(stretch) < 9e999),
  foreign_json TEXT NOT NULL
) STRICT;
CREATE INDEX drift_bed ON drift (bed_id);

CREATE TABLE plant (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  drift_id INTEGER NOT NULL REFERENCES drift (id) DEFERRABLE INITIALLY DEFERRED,
  place INTEGER NOT NULL CHECK (place >= 0),
  at_x_m REAL NOT NULL CHECK (abs(at_x_m) < 9e999),
  at_y_m REAL NOT NULL CHECK (abs(at_y_m) < 9e999)
) STRICT;
CREATE INDEX plant_drift ON plant (drift_id);

CREATE TABLE plan_code (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  species TEXT NOT NULL,
  code TEXT NOT NULL
) STRICT;

CREATE TABLE photo (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  name TEXT NOT NULL,
  content_hash TEXT NOT NULL REFERENCES blob (hash) DEFERRABLE INITIALLY DEFERRED,
  width_px INTEGER NOT NULL CHECK (width_px >= 0),
  height_px INTEGER NOT NULL CHECK (height_px >= 0),
  corner_x_m REAL NOT NULL CHECK (abs(corner_x_m) < 9e999),
  corner_y_m REAL NOT NULL CHECK (abs(corner_y_m) < 9e999),
  metres_per_pixel REAL NOT NULL CHECK (abs(metres_per_pixel) < 9e999),
  turn_rad REAL NOT NULL CHECK (abs(turn_rad) < 9e999),
  opacity REAL NOT NULL CHECK (opacity BETWEEN 0 AND 1),
  locked INTEGER NOT NULL CHECK (locked IN (0, 1))
) STRICT;

CREATE TABLE acceptance (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  finding_key TEXT NOT NULL,
  reason TEXT NOT NULL
) STRICT;

CREATE TABLE foreign_feature (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  json TEXT NOT NULL
) STRICT;

CREATE TABLE sun_reading (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  at_x_m REAL NOT NULL CHECK (abs(at_x_m) < 9e999),
  at_y_m REAL NOT NULL CHECK (abs(at_y_m) < 9e999),
  day TEXT NOT NULL,
  hours REAL NOT NULL CHECK (hours BETWEEN 0 AND 24),
  note TEXT NOT NULL
) STRICT;

CREATE TABLE own_species (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  botanical_name TEXT NOT NULL,
  facts_json TEXT NOT NULL
) STRICT;

CREATE TABLE arrangement (
  id INTEGER PRIMARY KEY CHECK (id > 1),
  bed_id INTEGER NOT NULL REFERENCES bed (id) DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL,
  seed INTEGER NOT NULL,
  wildness REAL NOT NULL CHECK (wildness BETWEEN 0 AND 1),
  drifts_json TEXT NOT NULL
) STRICT;
CREATE INDEX arrangement_bed ON arrangement (bed_id);

CREATE TABLE blob (
  hash TEXT PRIMARY KEY CHECK (length(hash) = 64),
  bytes BLOB NOT NULL
) STRICT;

CREATE TABLE history (
  number INTEGER PRIMARY KEY CHECK (number > 0),
  label TEXT NOT NULL,
  time_utc TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('done', 'undone')),
  change_json TEXT NOT NULL
) STRICT;
)sql";
}

}  // namespace tussock
