// SPDX-License-Identifier: MIT
#include "core/catalog/likeness.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include <fmt/format.h>

#include "core/catalog/bloom.h"
#include "core/catalog/fact_words.h"
#include "core/catalog/oklab.h"
#include "core/catalog/usual_flowers.h"
#include "core/catalog/week_range.h"

namespace tussock {

namespace {

// Points that each part gives at most; 100 together.
constexpr double kHeight = 22.0, kForm = 18.0, kWeeks = 20.0, kColour = 15.0, kSun = 10.0,
                 kMoisture = 10.0, kSpread = 5.0;
// Distance in OKLab from which two colours have nothing in common: about half of that between red
// and blue.
constexpr double kOtherColour = 0.25;
// Less than this is little enough to leave unsaid.
constexpr double kMuch = 0.75;

double ratio(Length a, Length b) {
  return std::max(a, b) > Length{} ? std::min(a, b) / std::max(a, b) : 1.0;
}

template <class E>
double inCommon(const std::vector<E>& a, const std::vector<E>& b) {
  std::size_t both = 0;
  for (const E value : a) both += static_cast<std::size_t>(std::count(b.begin(), b.end(), value));
  const std::size_t either = a.size() + b.size() - both;
  return either == 0 ? 1.0 : static_cast<double>(both) / static_cast<double>(either);
}

double weeksInCommon(WeekSet a, WeekSet b) {
  return (a | b) == 0 ? 1.0 : static_cast<double>(std::popcount(a & b)) / std::popcount(a | b);
}

// As the ferns: known to have none, not of a colour that nobody wrote down.
bool hasNoFlowers(const Species& species) {
  return !species.flowerColour && species.flowerColourWord == "none";
}

std::string_view colourWordOf(const Species& species) {
  return species.flowerColourWord.empty() ? std::string_view("a colour that is not known")
                                          : species.flowerColourWord;
}

double colourLikeness(const Species& a, const Species& b) {
  if (hasNoFlowers(a) && hasNoFlowers(b)) return 1.0;
  const auto ofA = flowerColourOf(a), ofB = flowerColourOf(b);
  if (!ofA || !ofB) return 0.0;  // of what is not known nothing is alike
  const Oklab x = oklabOf(*ofA), y = oklabOf(*ofB);
  const double distance = std::hypot(x.lightness - y.lightness, x.a - y.a, x.b - y.b);
  return std::max(0.0, 1.0 - distance / kOtherColour);
}

std::string monthsInFlower(const Species& species) {
  static constexpr std::array<std::string_view, 12> kMonths{
      "January", "February", "March",     "April",   "May",      "June",
      "July",    "August",   "September", "October", "November", "December"};
  const auto months = species.bloomMonths();
  if (!months) return "never in flower";
  return fmt::format("in flower {} to {}", kMonths[static_cast<std::size_t>(months->first - 1)],
                     kMonths[static_cast<std::size_t>(months->last - 1)]);
}

// In months, or in weeks of the year where the months are the same.
std::string otherWeeks(const Species& of, const Species& with) {
  const std::string was = monthsInFlower(of), is = monthsInFlower(with);
  const auto weeksOf = of.bloomWeeks(), weeksWith = with.bloomWeeks();
  if (was != is || !weeksOf || !weeksWith) return fmt::format("{}, not {}", is, was);
  return fmt::format("in flower {}, not {}", formatWeeks(*weeksWith), formatWeeks(*weeksOf));
}

// "full sun or part shade".
template <class E>
std::string wordsOf(std::string_view column, const std::vector<E>& values) {
  std::string all;
  for (const E value : values)
    all.append(all.empty() ? "" : " or ")
        .append(shownFact(column, wordOf(value), UnitSystem::FeetInches));
  return all;
}

}  // namespace

double Likeness::points() const {
  return kHeight * height + kForm * form + kWeeks * weeks + kColour * colour + kSun * sun +
         kMoisture * moisture + kSpread * spread;
}

Likeness likenessOf(const Species& a, const Species& b) {
  Likeness likeness;
  likeness.height = ratio(a.height(), b.height());
  likeness.form =
      (a.habit == b.habit ? 0.5 : 0.0) + (flowerFormOf(a) == flowerFormOf(b) ? 0.5 : 0.0);
  likeness.weeks = weeksInCommon(weeksInFlower(a), weeksInFlower(b));
  likeness.colour = colourLikeness(a, b);
  likeness.sun = inCommon(a.sun, b.sun);
  likeness.moisture = inCommon(a.moisture, b.moisture);
  likeness.spread = ratio(a.spacing, b.spacing);
  return likeness;
}

std::vector<std::string> differencesOf(const Species& of, const Species& with, UnitSystem units) {
  const Likeness likeness = likenessOf(of, with);
  std::vector<std::string> words;
  if (likeness.height < kMuch)
    words.push_back(fmt::format("{}: {}, not {}", with.height() > of.height() ? "higher" : "lower",
                                formatPlantSize(with.height(), units),
                                formatPlantSize(of.height(), units)));
  if (of.habit != with.habit)
    words.push_back(fmt::format("a {} in place of a {}", wordOf(with.habit), wordOf(of.habit)));
  if (likeness.weeks < kMuch) words.push_back(otherWeeks(of, with));
  if (likeness.colour < kMuch && of.flowerColourWord != with.flowerColourWord)
    words.push_back(fmt::format("{} in place of {}", colourWordOf(with), colourWordOf(of)));
  if (likeness.sun < kMuch)
    words.push_back(
        fmt::format("takes {} in place of {}", wordsOf("sun", with.sun), wordsOf("sun", of.sun)));
  if (likeness.moisture < kMuch)
    words.push_back(fmt::format("takes {} ground in place of {}",
                                wordsOf("moisture", with.moisture),
                                wordsOf("moisture", of.moisture)));
  return words;
}

}  // namespace tussock
