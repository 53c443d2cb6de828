// SPDX-License-Identifier: MIT
// What is true of the whole yard, and the findings that someone has accepted.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/id.h"
#include "core/model/names.h"
#include "core/units/date.h"
#include "core/units/measure_text.h"

namespace tussock {

template <>
struct EnumWords<UnitSystem> {
  static constexpr WordTable<UnitSystem, 2> values{
      {{UnitSystem::FeetInches, "feet"}, {UnitSystem::Metres, "metres"}}};
};

// Whether deer come to the yard and eat there.
enum class DeerAbout { No, Yes };
template <>
struct EnumWords<DeerAbout> {
  static constexpr WordTable<DeerAbout, 2> values{{{DeerAbout::No, "no"}, {DeerAbout::Yes, "yes"}}};
};

// A threshold that this yard sets otherwise than the default of the checks.
struct ThresholdOverride {
  std::string threshold;
  double value = 0.0;

  bool operator==(const ThresholdOverride&) const = default;
};

// How high hills and far buildings stand in one direction.
struct SkylinePoint {
  Angle azimuth;  // clockwise from true north
  Angle elevation;

  bool operator==(const SkylinePoint&) const = default;
};

struct Settings {
  Id<Settings> id{1};  // there is one
  std::string name = "New yard";
  Angle latitude;                // north positive
  Angle longitude;               // east positive
  std::string timeZone = "UTC";  // IANA name
  std::string state;             // two letters, or empty
  std::string hardinessZone;     // such as 6b, or empty
  DeerAbout deerAbout = DeerAbout::No;
  std::optional<MonthDay> lastFrost;
  std::optional<MonthDay> firstFrost;
  Angle slope;                                // of the ground, 0 level
  Angle aspect;                               // azimuth the slope faces
  std::vector<SkylinePoint> skyline;          // joined by straight lines; empty when open
  UnitSystem units = UnitSystem::FeetInches;  // as shown; metres are kept
  std::string sunProfile = "usual";           // which table of sun classes
  std::vector<ThresholdOverride> thresholds;
  std::string notes;
  std::string foreign;

  bool operator==(const Settings&) const = default;
};

// The seasons of one half of the earth come half a year after those of the other; the equator
// counts as north.
enum class Hemisphere { North, South };
[[nodiscard]] Hemisphere hemisphereOf(const Settings& settings);

struct GrowingSeason {
  MonthDay first;
  MonthDay last;
  bool assumed = false;  // frost dates not known: 1 April to 31 October, or half a year later

  bool operator==(const GrowingSeason&) const = default;
};
[[nodiscard]] GrowingSeason growingSeason(const Settings& settings);

// When a tree is taken to be in leaf until its own days are told: 20 April to 1 November, half a
// year later south of the equator (common practice).
struct LeafDays {
  MonthDay on;
  MonthDay off;
};
[[nodiscard]] LeafDays usualLeafDays(const Settings& settings);

// A finding someone has looked at and lets stand, with the reason.
struct Acceptance {
  Id<Acceptance> id;
  std::string findingKey;
  std::string reason;

  bool operator==(const Acceptance&) const = default;
};

}  // namespace tussock
