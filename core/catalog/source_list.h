// SPDX-License-Identifier: MIT
// The cell of a plant table that tells where each value was read.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species.h"

namespace tussock {

// The word among the keys of a value that is the user's own. Keys that it came with follow it.
inline constexpr std::string_view kOwnKey = "own";

// From "USDA: family genus; memory: spacing_cm", one for each column; nothing where a group has no
// key before a colon.
[[nodiscard]] std::optional<std::vector<FactSource>> sourcesFrom(std::string_view cell);
// The same in place, for tables of many thousand plants: each column with its keys, as they stand
// in the cell. False where a group has no key; those before it have been given.
using SourceTaker = std::function<void(std::string_view field, std::string_view keys)>;
bool forEachSource(std::string_view cell, const SourceTaker& take);
// The same back, the keys in the order in which they first come.
[[nodiscard]] std::string sourcesText(const std::vector<FactSource>& sources);

// With several columns of the same keys in one, in the order of their first ones.
void addTo(std::vector<FactSource>& groups, std::string_view field, std::string_view keys);

// The keys of that column; empty for none.
[[nodiscard]] std::string_view keysOf(const std::vector<FactSource>& sources,
                                      std::string_view column);
// "own USDA" of "USDA", and "USDA" of "own USDA".
[[nodiscard]] std::string asOwn(std::string_view keys);
[[nodiscard]] std::string_view withoutOwn(std::string_view keys);
[[nodiscard]] bool isOwn(std::string_view keys);

}  // namespace tussock
