// SPDX-License-Identifier: MIT
#include "core/catalog/fit.h"

#include <algorithm>
#include <array>
#include <charconv>

#include <fmt/format.h>

#include "core/catalog/native_record.h"
#include "core/catalog/regulated.h"

namespace tussock {

namespace {

bool listed(const auto& list, const auto& value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

std::string joined(const auto& values) {
  std::string text;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (i > 0) text += i + 1 == values.size() ? " or " : ", ";
    text += wordOf(values[i]);
  }
  return text;
}

bool hasSunFor(const Species& species, double hours, const SunProfile& profile) {
  if (species.sunHoursLeast)
    return hours >= *species.sunHoursLeast && hours <= *species.sunHoursMost;
  return species.sun.empty() || listed(species.sun, sunClass(hours, profile));
}

std::optional<std::string> againstSun(const Species& species, const Place& place,
                                      const SunProfile& profile) {
  if (!place.sunHours || hasSunFor(species, *place.sunHours, profile)) return std::nullopt;
  const HoursRange wanted = hoursWanted(species, profile);
  const bool open = wanted.most >= 24.0;
  return fmt::format("has {:.1f} hours of sun here; asks for {}", *place.sunHours,
                     open ? fmt::format("{:g} and more", wanted.least)
                          : fmt::format("{:g} to {:g}", wanted.least, wanted.most));
}

std::optional<std::string> againstMoisture(const Species& species, const Place& place) {
  if (!place.moisture || species.moisture.empty() || listed(species.moisture, *place.moisture))
    return std::nullopt;
  return fmt::format("the ground is {}; asks for {}", wordOf(*place.moisture),
                     joined(species.moisture));
}

std::optional<std::string> againstState(const Species& species, const Place& place) {
  if (place.state.empty() || species.nativeStates.empty() ||
      listed(species.nativeStates, place.state))
    return std::nullopt;
  return fmt::format("not recorded as native in {} ({})", place.state, nativeRecordOf(species));
}

// The number of "6b"; the half zones are finer than the plant facts.
std::optional<int> zoneNumber(const std::string& zone) {
  int number = 0;
  const auto [end, error] = std::from_chars(zone.data(), zone.data() + zone.size(), number);
  if (error != std::errc{}) return std::nullopt;
  return number;
}

std::optional<std::string> againstZone(const Species& species, const Place& place) {
  const auto zone = zoneNumber(place.hardinessZone);
  if (!zone || species.zoneHigh == 0) return std::nullopt;
  if (*zone >= species.zoneLow && *zone <= species.zoneHigh) return std::nullopt;
  return fmt::format("grows in zones {} to {}; here it is {}", species.zoneLow, species.zoneHigh,
                     place.hardinessZone);
}

std::optional<std::string> againstSoil(const Species& species, const Place& place) {
  if (place.soil == SoilTexture::Unknown || species.soil.empty() ||
      listed(species.soil, place.soil))
    return std::nullopt;
  return fmt::format("the soil is {}; grows in {}", wordOf(place.soil), joined(species.soil));
}

std::optional<std::string> againstRule(const Species& species, const Place& place) {
  if (!isRegulatedIn(species, place.state)) return std::nullopt;
  return fmt::format(
      "regulated: {}; a first filter, so ask the department of agriculture of your state",
      species.regulated);
}

std::optional<std::string> againstDeer(const Species& species, const Place& place) {
  if (place.deer == DeerAbout::No || species.deerResistant != Answer::No) return std::nullopt;
  return "deer eat it";
}

std::optional<std::string> againstHeight(const Species& species, const Place& place) {
  if (!place.heightLimit || species.heightHigh <= *place.heightLimit) return std::nullopt;
  return fmt::format("grows to {}; no more than {} is allowed here",
                     formatPlantSize(species.heightHigh, place.units),
                     formatPlantSize(*place.heightLimit, place.units));
}

struct ClassRange {
  double from, to;
};

ClassRange rangeOf(SunNeed need, const SunProfile& profile) {
  switch (need) {
    case SunNeed::Full:
      return {profile.fullFrom, 24.0};
    case SunNeed::Part:
      return {profile.partFrom, profile.fullFrom};
    case SunNeed::Shade:
      return {0.0, profile.partFrom};
  }
  return {0.0, 24.0};
}

}  // namespace

const std::vector<SunProfile>& sunProfiles() {
  static const std::vector<SunProfile> profiles{
      {"usual",
       "Central Michigan University botanical garden: full sun at least six hours, part three to "
       "five, shade less than three; five to six counted as part (UF/IFAS Extension Duval County "
       "alike: partial sun four to five hours, partial shade roughly three)",
       6.0, 3.0},
      {"two-to-six",
       "Lady Bird Johnson Wildflower Center: sun 6 hours or more, part shade 2 to 6, shade less "
       "than 2 (NC State Extension alike, as others quote it; Penn State and Nebraska Extension "
       "too, when their partial sun, 4 to 6, and partial shade, 2 to 4, are taken together)",
       6.0, 2.0},
      {"four-to-six",
       "Penn State Extension and Nebraska Extension, partial sun: 4 to 6 hours; their partial "
       "shade, 2 to 4, and shade, less than 2, counted as shade",
       6.0, 4.0},
      {"one-and-a-half",
       "Huddleston and Crawford, Easy Gardens for North Central Texas, as told by the Abilene "
       "Reporter-News: part from more than one and a half hours to less than six",
       6.0, 1.5},
  };
  return profiles;
}

const SunProfile& sunProfile(std::string_view id) {
  const auto& profiles = sunProfiles();
  const auto at = std::find_if(profiles.begin(), profiles.end(),
                               [&](const SunProfile& profile) { return profile.id == id; });
  return at == profiles.end() ? profiles.front() : *at;
}

SunNeed sunClass(double hours, const SunProfile& profile) {
  if (hours >= profile.fullFrom) return SunNeed::Full;
  return hours >= profile.partFrom ? SunNeed::Part : SunNeed::Shade;
}

HoursRange hoursWanted(const Species& species, const SunProfile& profile) {
  if (species.sunHoursLeast) return {*species.sunHoursLeast, *species.sunHoursMost};
  if (species.sun.empty()) return {};
  HoursRange wanted{24.0, 0.0};
  for (const SunNeed need : species.sun) {
    const ClassRange range = rangeOf(need, profile);
    wanted.least = std::min(wanted.least, range.from);
    wanted.most = std::max(wanted.most, range.to);
  }
  return wanted;
}

std::vector<std::string> whyNot(const Species& species, const Place& place,
                                const SunProfile& profile) {
  std::vector<std::string> reasons;
  for (auto& reason :
       {againstRule(species, place), againstSun(species, place, profile),
        againstMoisture(species, place), againstSoil(species, place), againstZone(species, place),
        againstState(species, place), againstDeer(species, place), againstHeight(species, place)})
    if (reason) reasons.push_back(*reason);
  return reasons;
}

}  // namespace tussock
