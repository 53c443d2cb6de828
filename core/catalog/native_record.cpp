// SPDX-License-Identifier: MIT
#include "core/catalog/native_record.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/catalog/source_list.h"
#include "core/catalog/source_names.h"

namespace tussock {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 66> kStates{
    {{"AL", "Alabama"},
     {"AK", "Alaska"},
     {"AZ", "Arizona"},
     {"AR", "Arkansas"},
     {"CA", "California"},
     {"CO", "Colorado"},
     {"CT", "Connecticut"},
     {"DE", "Delaware"},
     {"DC", "District of Columbia"},
     {"FL", "Florida"},
     {"GA", "Georgia"},
     {"HI", "Hawaii"},
     {"ID", "Idaho"},
     {"IL", "Illinois"},
     {"IN", "Indiana"},
     {"IA", "Iowa"},
     {"KS", "Kansas"},
     {"KY", "Kentucky"},
     {"LA", "Louisiana"},
     {"ME", "Maine"},
     {"MD", "Maryland"},
     {"MA", "Massachusetts"},
     {"MI", "Michigan"},
     {"MN", "Minnesota"},
     {"MS", "Mississippi"},
     {"MO", "Missouri"},
     {"MT", "Montana"},
     {"NE", "Nebraska"},
     {"NV", "Nevada"},
     {"NH", "New Hampshire"},
     {"NJ", "New Jersey"},
     {"NM", "New Mexico"},
     {"NY", "New York"},
     {"NC", "North Carolina"},
     {"ND", "North Dakota"},
     {"OH", "Ohio"},
     {"OK", "Oklahoma"},
     {"OR", "Oregon"},
     {"PA", "Pennsylvania"},
     {"RI", "Rhode Island"},
     {"SC", "South Carolina"},
     {"SD", "South Dakota"},
     {"TN", "Tennessee"},
     {"TX", "Texas"},
     {"UT", "Utah"},
     {"VT", "Vermont"},
     {"VA", "Virginia"},
     {"WA", "Washington"},
     {"WV", "West Virginia"},
     {"WI", "Wisconsin"},
     {"WY", "Wyoming"},
     {"PR", "Puerto Rico"},
     {"VI", "Virgin Islands"},
     {"AB", "Alberta"},
     {"BC", "British Columbia"},
     {"MB", "Manitoba"},
     {"NB", "New Brunswick"},
     {"NL", "Newfoundland and Labrador"},
     {"NS", "Nova Scotia"},
     {"NT", "Northwest Territories"},
     {"NU", "Nunavut"},
     {"ON", "Ontario"},
     {"PE", "Prince Edward Island"},
     {"QC", "Quebec"},
     {"SK", "Saskatchewan"},
     {"YT", "Yukon"}}};

}  // namespace

std::string_view stateName(std::string_view letters) {
  const auto at = std::find_if(kStates.begin(), kStates.end(),
                               [&](const auto& one) { return one.first == letters; });
  return at == kStates.end() ? std::string_view() : at->second;
}

std::string nativeRecordOf(const Species& species) {
  const std::string_view keys = species.sourceOf("native_states");
  if (keys == "memory") return "from memory";
  if (isOwn(keys)) return "by your own account";
  const auto other = shippedSourceNames().find(keys);  // of several keys, the USDA's comes first
  if (keys == "USDA" || other == shippedSourceNames().end()) return "USDA PLANTS";
  return shortTitle(other->second);
}

}  // namespace tussock
