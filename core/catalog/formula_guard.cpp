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

// What would be cells of their own to a program that splits at semicolons, tabs or line ends, each
// with what stands before it there: marks of separation, and quotes or blanks that may be dropped.
template <class Call>
void forEachCell(std::string_view text, const Call& call) {
  constexpr std::string_view kBetween = ";\t\r\n";
  std::string_view lead;
  while (true) {
    const std::size_t end = std::min(text.find_first_of(kBetween), text.size());
    call(lead, text.substr(0, end));
    text.remove_prefix(end);
    if (text.empty()) return;
    const std::size_t next = std::min(text.find_first_not_of(";\t\r\n\" "), text.size());
    lead = text.substr(0, next);
    text.remove_prefix(next);
  }
}

}  // namespace

bool runsAsFormula(std::string_view text) {
  return !isNumber(text) &&
         std::any_of(kStarts.begin(), kStarts.end(),
                     [&](std::string_view start) { return text.starts_with(start); });
}

std::string guarded(std::string_view text) {
  std::string safe = runsAsFormula(withoutGuards(text)) ? std::string(1, kGuard) : std::string();
  forEachCell(text, [&](std::string_view lead, std::string_view cell) {
    safe += lead;
    if (!lead.empty() && runsAsFormula(withoutGuards(cell))) safe += kGuard;
    safe += cell;
  });
  return safe;
}

bool mayBeGuarded(std::string_view text) {
  return text.find(kGuard) != std::string_view::npos;
}

std::string unguarded(std::string_view text) {
  if (!mayBeGuarded(text)) return std::string(text);
  if (text.starts_with(kGuard) && runsAsFormula(withoutGuards(text))) text.remove_prefix(1);
  std::string plain;
  forEachCell(text, [&](std::string_view lead, std::string_view cell) {
    if (!lead.empty() && cell.starts_with(kGuard) && runsAsFormula(withoutGuards(cell)))
      cell.remove_prefix(1);
    plain.append(lead).append(cell);
  });
  return plain;
}

}  // namespace tussock
