// SPDX-License-Identifier: MIT
#include "core/model/skyline_text.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace tussock {

namespace {

constexpr std::string_view kBlank = " \t\r";
constexpr std::string_view kDegreeSign = "\u00B0";

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(kBlank);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlank) - first + 1);
}

std::string withoutDegreeSigns(std::string_view text) {
  std::string plain(text);
  for (auto at = plain.find(kDegreeSign); at != std::string::npos; at = plain.find(kDegreeSign))
    plain.erase(at, kDegreeSign.size());
  return plain;
}

std::optional<double> numberIn(std::string_view text) {
  std::string plain(trimmed(text));
  if (!plain.empty() && plain.front() == '+') plain.erase(0, 1);
  std::replace(plain.begin(), plain.end(), ',', '.');
  double value = 0.0;
  const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
  if (error != std::errc() || end != plain.data() + plain.size() || !std::isfinite(value))
    return std::nullopt;
  return value;
}

// Where the first figure ends: the strongest separator in the line.
std::size_t partingOf(std::string_view line) {
  for (const char mark : {';', '\t'})
    if (const auto at = line.find(mark); at != std::string_view::npos) return at;
  if (const auto at = line.find(", "); at != std::string_view::npos) return at;
  if (const auto at = line.find(' '); at != std::string_view::npos) return at;
  return line.find(',');
}

struct Pair {
  double azimuth, elevation;
};

std::optional<Pair> pairIn(std::string_view line) {
  const std::size_t parting = partingOf(line);
  if (parting == std::string_view::npos) return std::nullopt;
  const auto azimuth = numberIn(line.substr(0, parting));
  const auto elevation = numberIn(line.substr(parting + 1));
  if (!azimuth || !elevation) return std::nullopt;
  return Pair{*azimuth, *elevation};
}

bool hasFigure(std::string_view line) {
  return line.find_first_of("0123456789") != std::string_view::npos;
}

class Reader {
 public:
  // False once something is wrong.
  bool take(std::string_view raw) {
    ++number_;
    const std::string line(trimmed(withoutDegreeSigns(raw)));
    if (line.empty() || line.front() == '#') return true;
    const bool heading = std::exchange(first_, false) && !hasFigure(line);
    return heading || takePair(line, pairIn(line));
  }

  SkylineRead finish() {
    if (!result_.trouble.empty()) return result_;
    auto& points = result_.points;
    std::sort(points.begin(), points.end(),
              [](const SkylinePoint& a, const SkylinePoint& b) { return a.azimuth < b.azimuth; });
    const auto twice = std::adjacent_find(
        points.begin(), points.end(),
        [](const SkylinePoint& a, const SkylinePoint& b) { return a.azimuth == b.azimuth; });
    if (twice != points.end())
      return {{},
              fmt::format("Azimuth {:.6g}\u00B0 is told twice. Keep one of the two lines.",
                          twice->azimuth.degrees())};
    return result_;
  }

 private:
  bool fail(const std::string& words) {
    result_ = {{}, fmt::format("Line {}: {}", number_, words)};
    return false;
  }

  bool takePair(std::string_view line, const std::optional<Pair>& pair) {
    if (!pair)
      return fail(
          fmt::format("\u201c{}\u201d is no pair of figures. Write azimuth and elevation "
                      "in degrees, such as 120, 12.5.",
                      line));
    if (pair->azimuth < 0.0 || pair->azimuth > 360.0)
      return fail("the azimuth has to be from 0 to 360 degrees, clockwise from true north.");
    if (pair->elevation < 0.0 || pair->elevation >= 90.0)
      return fail("the elevation has to be from 0 to less than 90 degrees.");
    result_.points.push_back({Angle::degrees(pair->azimuth == 360.0 ? 0.0 : pair->azimuth),
                              Angle::degrees(pair->elevation)});
    return true;
  }

  SkylineRead result_;
  int number_ = 0;
  bool first_ = true;
};

}  // namespace

SkylineRead parseSkyline(std::string_view text) {
  Reader reader;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    if (!reader.take(text.substr(0, end))) break;
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return reader.finish();
}

std::string formatSkyline(const std::vector<SkylinePoint>& skyline) {
  std::string text;
  for (const SkylinePoint& point : skyline)
    text += fmt::format("{}{:.6g}, {:.6g}", text.empty() ? "" : "\n", point.azimuth.degrees(),
                        point.elevation.degrees());
  return text;
}

}  // namespace tussock
