// SPDX-License-Identifier: MIT
// How a yard's main layer is shared out among species, genera and families.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/checks/survey.h"

namespace tussock {

enum class Rank { Species, Genus, Family };

// Which the check of shares is about; nothing for other checks.
[[nodiscard]] std::optional<Rank> rankOf(CheckId check);

struct Share {
  std::string_view name;  // empty where the family is not known
  int plants = 0;
  double share = 0.0;  // of all plants of the main layer, new and existing
};
// Largest first, then by name. The names are those of the survey's yard and facts.
[[nodiscard]] std::vector<Share> sharesOf(const Survey& survey, Rank rank);
[[nodiscard]] std::string_view nameAt(const SurveyedDrift& drift, Rank rank);

// True when there are too few kinds for each to stay within the limit: of fewer than ten species
// one is bound to be over a tenth.
[[nodiscard]] bool tooFewKinds(std::size_t kinds, double limit);

}  // namespace tussock
