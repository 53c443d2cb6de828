// SPDX-License-Identifier: MIT
// A sun map as a picture with its legend and what it was computed from.
#pragma once

#include <QString>
#include <string>

#include "core/catalog/fit.h"
#include "core/exchange/sun_notes.h"
#include "core/model/yard.h"
#include "core/sun/map.h"

namespace tussock {

struct SunPictureText {
  std::string title;
  std::string heading;         // what the hours are
  std::vector<SunNote> notes;  // printed below the legend
  SunProfile classes;          // marked on the legend
  bool bedsOnly = false;       // the map tells of the beds' ground only
};

// Throws std::runtime_error naming the path.
void writeSunPicture(const SunMap& map, const Yard& yard, const SunPictureText& text,
                     const QString& path);

}  // namespace tussock
