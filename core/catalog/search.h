// SPDX-License-Identifier: MIT
// Finding species by words: each species has one lower-case text, made once, that words are looked
// up in.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species.h"

namespace tussock {

// Names, family, colour and habit, and marks such as "=tall" or "=dry" that only match whole.
[[nodiscard]] std::string searchTextOf(const Species& species);
// Lower case, split at blanks and hyphens.
[[nodiscard]] std::vector<std::string> searchWords(std::string_view text);
// How well the words are met, nothing unless each is. The start of the botanical name counts most,
// then the start of a word; the inside of a word only for four letters and more.
[[nodiscard]] std::optional<int> searchScore(std::string_view searchText,
                                             const std::vector<std::string>& words);

}  // namespace tussock
