// SPDX-License-Identifier: MIT
// Whether a species suits a place.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalog/species.h"
#include "core/model/settings.h"

namespace tussock {

// Hours of direct sun that the classes of sun need stand for. Sources disagree, so there are
// several profiles (checks named with their sources in sunProfiles()).
struct SunProfile {
  std::string id;
  std::string source;
  double fullFrom = 6.0;  // hours a day and more: full sun
  double partFrom = 3.0;  // hours a day and more: part; less is shade
};
[[nodiscard]] const std::vector<SunProfile>& sunProfiles();
[[nodiscard]] const SunProfile& sunProfile(std::string_view id);  // "usual" when not known
[[nodiscard]] SunNeed sunClass(double hours, const SunProfile& profile);

struct HoursRange {
  double least = 0.0;
  double most = 24.0;
};
// Hours of sun that a species asks for: its own range, else the union of its classes.
[[nodiscard]] HoursRange hoursWanted(const Species& species, const SunProfile& profile);

struct Place {
  std::optional<double> sunHours;
  std::optional<Moisture> moisture;
  std::string state = {};
  std::string hardinessZone = {};
  SoilTexture soil = SoilTexture::Unknown;
  DeerAbout deer = DeerAbout::No;
  std::optional<Length> heightLimit = std::nullopt;  // no plant may grow higher
  UnitSystem units = UnitSystem::FeetInches;         // for words
};
// Reasons, in words, why the species does not fit; empty when it does. What is not known of the
// place excludes nothing.
[[nodiscard]] std::vector<std::string> whyNot(const Species& species, const Place& place,
                                              const SunProfile& profile);

// A plan code of six letters, three of genus and three of the epithet, with a digit in place of the
// last letter where that is taken.
[[nodiscard]] std::string proposeCode(std::string_view botanicalName,
                                      const std::vector<std::string>& taken);

}  // namespace tussock
