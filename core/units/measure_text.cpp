// SPDX-License-Identifier: MIT
#include "core/units/measure_text.h"

#include <cctype>
#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace tussock {

namespace {

constexpr long kFeetFromInches = 48;  // plant sizes below this are told in inches alone

// Reads numbers and unit words off the front of a text.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : rest_(text) { skipSpace(); }

  [[nodiscard]] bool done() const { return rest_.empty(); }

  bool take(std::string_view word) {
    if (!rest_.starts_with(word)) return false;
    rest_.remove_prefix(word.size());
    skipSpace();
    return true;
  }

  std::optional<double> number() {
    double value = 0.0;
    const char* begin = rest_.data();
    if (rest_.empty() ||
        (std::isdigit(static_cast<unsigned char>(rest_[0])) == 0 && rest_[0] != '.'))
      return std::nullopt;
    const auto [end, error] =
        std::from_chars(begin, begin + rest_.size(), value, std::chars_format::fixed);
    if (error != std::errc{}) return std::nullopt;
    rest_.remove_prefix(static_cast<std::size_t>(end - begin));
    skipSpace();
    return value;
  }

  // "6", "6.5", "1/2" or "6 1/2".
  std::optional<double> mixedNumber() {
    const auto whole = number();
    if (!whole) return std::nullopt;
    if (take("/")) return fraction(*whole);
    const std::string_view before = rest_;
    if (const auto above = number()) {
      if (take("/"))
        if (const auto part = fraction(*above)) return *whole + *part;
      rest_ = before;
    }
    return whole;
  }

 private:
  std::optional<double> fraction(double above) {
    const auto below = number();
    if (!below || *below <= 0.0) return std::nullopt;
    return above / *below;
  }
  void skipSpace() {
    while (!rest_.empty() && std::isspace(static_cast<unsigned char>(rest_.front())) != 0)
      rest_.remove_prefix(1);
  }
  std::string_view rest_;
};

enum class Unit { None, Foot, Inch, Metre, Centimetre, Millimetre };

Unit takeUnit(Scanner& scan) {
  for (const auto word : {"feet", "foot", "ft", "′", "’", "'"})
    if (std::string_view(word) == "'" ? (scan.take("''") ? false : scan.take("'"))
                                      : scan.take(word))
      return Unit::Foot;
  for (const auto word : {"inches", "inch", "in", "″", "”", "\""})
    if (scan.take(word)) return Unit::Inch;
  for (const auto word : {"millimetres", "mm"})
    if (scan.take(word)) return Unit::Millimetre;
  for (const auto word : {"centimetres", "cm"})
    if (scan.take(word)) return Unit::Centimetre;
  for (const auto word : {"metres", "meters", "metre", "meter", "m"})
    if (scan.take(word)) return Unit::Metre;
  return Unit::None;
}

std::optional<Length> finite(Length length) {
  return std::isfinite(length.metres()) ? std::optional(length) : std::nullopt;
}

}  // namespace

std::optional<Length> parseLength(std::string_view text, UnitSystem bare) {
  Scanner scan(text);
  const auto first = scan.mixedNumber();
  if (!first) return std::nullopt;
  const Unit unit = takeUnit(scan);
  if (unit == Unit::Foot && !scan.done()) {
    scan.take(".");
    const auto inches = scan.mixedNumber();
    const Unit second = takeUnit(scan);
    if (!inches || *inches >= 12.0 || (second != Unit::Inch && second != Unit::None) ||
        !scan.done())
      return std::nullopt;
    return finite(Length::feet(*first) + Length::inches(*inches));
  }
  if (!scan.done()) return std::nullopt;
  switch (unit) {
    case Unit::Foot:
      return finite(Length::feet(*first));
    case Unit::Inch:
      return finite(Length::inches(*first));
    case Unit::Metre:
      return finite(Length::metres(*first));
    case Unit::Centimetre:
      return finite(Length::centimetres(*first));
    case Unit::Millimetre:
      return finite(Length::millimetres(*first));
    case Unit::None:
      break;
  }
  return finite(bare == UnitSystem::FeetInches ? Length::feet(*first) : Length::metres(*first));
}

std::string formatLength(Length length, UnitSystem units) {
  if (units == UnitSystem::Metres) return fmt::format("{:.2f} m", length.metres());
  const bool halves = std::abs(length.feet()) < 3.0;
  const double step = halves ? 2.0 : 1.0;
  const long parts = std::lround(std::abs(length.inches()) * step);
  const long perFoot = halves ? 24 : 12;
  const long feet = parts / perFoot;
  const long rest = parts % perFoot;
  const std::string sign = length < Length() && parts > 0 ? "−" : "";
  if (!halves) return fmt::format("{}{}' {}\"", sign, feet, rest);
  const std::string half = rest % 2 != 0 ? "½" : "";
  const std::string inches = rest == 1 && feet == 0 ? half : fmt::format("{}{}", rest / 2, half);
  return feet > 0 ? fmt::format("{}{}' {}\"", sign, feet, inches)
                  : fmt::format("{}{}\"", sign, inches);
}

std::string formatPlantSize(Length length, UnitSystem units) {
  if (units == UnitSystem::Metres) {
    const long centimetres = std::lround(length.metres() * 100.0);
    return centimetres < 100 ? fmt::format("{} cm", centimetres)
                             : fmt::format("{:.2f} m", double(centimetres) / 100.0);
  }
  const long inches = std::lround(length.inches());
  return inches < kFeetFromInches ? fmt::format("{} in", inches)
                                  : fmt::format("{}' {}\"", inches / 12, inches % 12);
}

std::string formatArea(Area area, UnitSystem units) {
  const double value = units == UnitSystem::Metres ? area.squareMetres() : area.squareFeet();
  const std::string_view name = units == UnitSystem::Metres ? "m²" : "sq ft";
  return value < 10.0    ? fmt::format("{:.2f} {}", value, name)
         : value < 100.0 ? fmt::format("{:.1f} {}", value, name)
                         : fmt::format("{:.0f} {}", value, name);
}

}  // namespace tussock
