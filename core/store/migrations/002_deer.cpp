// SPDX-License-Identifier: MIT
#include "core/store/migrations/steps.h"

namespace tussock {

// Written anew rather than added to, so that the table is to the letter that of a new file.
const char* deerStep() {
  return R"sql(
CREATE TEMP TABLE kept AS SELECT * FROM settings;
DROP TABLE settings;
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
INSERT INTO settings SELECT id, name, latitude_rad, longitude_rad, time_zone, state, hardiness_zone,
  'no', last_frost, first_frost, slope_rad, aspect_rad, skyline_json, units, sun_profile,
  thresholds_json, notes, foreign_json FROM kept;
DROP TABLE kept;
)sql";
}

}  // namespace tussock
