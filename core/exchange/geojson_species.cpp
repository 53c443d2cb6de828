// SPDX-License-Identifier: MIT
// What a GeoJSON file knows of species of its yard's own: judged as a table of plants is.
#include <algorithm>

#include <fmt/format.h>

#include "core/catalog/own_plants.h"
#include "core/exchange/geojson_import.h"
#include "core/exchange/plant_names.h"

namespace tussock {

namespace {

// As a table of plants passes over blanks around a value.
std::string withoutBlanksAround(const std::string& text) {
  constexpr const char* kBlanks = " \t\r\n";
  const auto first = text.find_first_not_of(kBlanks);
  if (first == std::string::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

// The values by their columns. Numbers stand for their text; blank ones are none.
std::vector<OwnFact> factsFrom(const Json& json) {
  if (!json.is_object()) throw FormatError("its \"facts\" are no object of values by column names");
  std::vector<OwnFact> facts;
  for (const auto& [column, value] : json.items()) {
    if (!value.is_string() && !value.is_number())
      throw FormatError(fmt::format("its {} is neither a text nor a number", column));
    std::string text =
        value.is_string() ? withoutBlanksAround(value.get<std::string>()) : value.dump();
    if (!text.empty()) facts.push_back({column, std::move(text)});
  }
  return facts;
}

OwnSpecies ownIn(const Json& properties) {
  PropertyReader reader(properties);
  OwnSpecies own;
  reader("species", own.botanicalName);
  own.botanicalName = withoutBlanksAround(own.botanicalName);
  if (own.botanicalName.empty())
    throw FormatError("it names no species; give the botanical name as \"species\"");
  const Json* facts = reader.take("facts");
  if (facts == nullptr) throw FormatError("it has no \"facts\"");
  own.facts = factsFrom(*facts);
  return own;
}

// Why it says nothing, or two things; empty when neither.
std::string faultOfForm(OwnSpecies& own) {
  const auto named = std::ranges::find(own.facts, "botanical_name", &OwnFact::column);
  if (named != own.facts.end()) {
    if (named->value != own.botanicalName)
      return fmt::format(
          "it is named {} as \"species\" and {} among its \"facts\". Leave botanical_name out of "
          "these",
          own.botanicalName, named->value);
    own.facts.erase(named);
  }
  return own.facts.empty() ? "its \"facts\" say nothing. Give a value, or leave the feature out"
                           : std::string();
}

}  // namespace

OwnSpeciesJudge& GeoImport::judge() {
  if (!judge_) {
    Catalogue north = facts_.in(Hemisphere::North);
    EntryChecks checks({north, {}, draft_.yard()});
    judge_.emplace(OwnSpeciesJudge{std::move(north), std::move(checks)});
  }
  return *judge_;
}

void GeoImport::keepFaulty(const FeatureIn& feature, std::string_view why) {
  warn(feature, fmt::format("kept aside, for it cannot be used. {} Mend it and import again", why));
  keep(feature);
}

void GeoImport::readSpecies(const FeatureIn& feature) {
  OwnSpecies own = ownIn(feature.properties);
  if (const std::string fault = faultOfForm(own); !fault.empty()) {
    warn(feature, fmt::format("kept aside: {}", fault));
    return keep(feature);
  }
  auto& [north, checks] = judge();
  const std::string written = own.botanicalName;
  if (const Species* known = plantCalled(written, north); known && known->botanicalName != written)
    takeName(own, known->botanicalName);
  if (const OwnSpecies* had = findOwn(draft_.yard(), own.botanicalName)) {
    if (had->facts == own.facts) return;
    throw FormatError(
        fmt::format("this yard has its own values of {}, and they stay", own.botanicalName));
  }
  std::vector<CatalogueError> errors = checks.of(own, own.botanicalName);
  if (!errors.empty()) return keepFaulty(feature, errors.front().text());
  const auto species = speciesOver(north.find(own.botanicalName), own, errors);
  if (!species) return keepFaulty(feature, errors.front().text());
  if (written != own.botanicalName) {
    warn(feature, fmt::format("{} is a synonym of {}; the values are for that plant", written,
                              own.botanicalName));
    renamed_.insert_or_assign(written, own.botanicalName);
  }
  checks.take(own);
  species_.insert_or_assign(own.botanicalName, *species);
  draft_.put(OwnSpecies{ids_.take<OwnSpecies>(), own.botanicalName, own.facts});
}

}  // namespace tussock
