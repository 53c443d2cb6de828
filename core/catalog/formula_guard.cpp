// SPDX-License-Identifier: MIT
#include "core/catalog/formula_guard.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace tussock {

namespace {

constexpr char kGuard = '\'';
constexpr std::array<std::string_view, 11> kStarts{"=",  "+",  "-",  "@",  "\t", "\r",
                                                   "\n", "＝", "＋", "－", "＠"};

bool isNumber(std::string_view text) {
  if (text.starts_with('+')) text.remove_prefix(1);
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  return error == std::errc{} && end == text.data() + text.size();
}

// Text that begins with apostrophes before a formula gets one more, so that taking one away always
// gives back what was written.
std::string_view withoutGuards(std::string_view text) {
  while (text.starts_with(kGuard)) text.remove_prefix(1);
  return text;
}

}  // namespace

bool runsAsFormula(std::string_view text) {
  return !isNumber(text) &&
         std::any_of(kStarts.begin(), kStarts.end(),
                     [&](std::string_view start) { return text.starts_with(start); });
}

std::string guarded(std::string_view text) {
  std::string safe(text);
  if (runsAsFormula(withoutGuards(text))) safe.insert(safe.begin(), kGuard);
  return safe;
}

std::string unguarded(std::string_view text) {
  if (text.starts_with(kGuard) && runsAsFormula(withoutGuards(text))) text.remove_prefix(1);
  return std::string(text);
}

}  // namespace tussock
