// SPDX-License-Identifier: MIT
// Enumerations as the words used in files and on the command line.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace tussock {

// Specialised beside each enumeration: `static constexpr std::array values{pair{E, "word"}, ...}`.
template <class E>
struct EnumWords;

template <class E>
concept NamedEnum = requires {
  EnumWords<E>::values.size();
};

template <NamedEnum E>
[[nodiscard]] constexpr std::string_view wordOf(E value) {
  for (const auto& [candidate, word] : EnumWords<E>::values)
    if (candidate == value) return word;
  return {};
}

template <NamedEnum E>
[[nodiscard]] constexpr std::optional<E> fromWord(std::string_view text) {
  for (const auto& [value, word] : EnumWords<E>::values)
    if (word == text) return value;
  return std::nullopt;
}

template <class E, std::size_t N>
using WordTable = std::array<std::pair<E, std::string_view>, N>;

}  // namespace tussock
