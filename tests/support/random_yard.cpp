// SPDX-License-Identifier: MIT
#include "tests/support/random_yard.h"

#include <cmath>
#include <set>

#include "core/edit/draft.h"
#include "core/model/fields.h"
#include "core/store/sha256.h"

namespace tussock::test {

namespace {

int upTo(Random& random, int most) {
  return std::uniform_int_distribution<int>(0, most)(random);
}
double within(Random& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}
Point randomPoint(Random& random) {
  return {within(random, -100, 100), within(random, -100, 100)};
}

// A star about a point, so it never crosses itself; sometimes with a small hole in the middle.
Ring star(Random& random, Point centre, double least, double most, bool anticlockwise) {
  const int corners = 5 + upTo(random, 6);
  Ring ring;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2 * std::numbers::pi * i / corners * (anticlockwise ? 1 : -1);
    const double far = within(random, least, most);
    ring.push_back(centre + Point{far * std::cos(turn), far * std::sin(turn)});
  }
  return ring;
}

struct Filler {
  Random& random;
  IdSource& ids;
  const std::vector<Id<Bed>>& beds;

  void operator()(std::string_view name, double& field) const {
    const bool share = name.starts_with("open") || name == "opacity" || name == "wildness";
    field = share ? within(random, 0, 1) : within(random, 0.001, 9);
  }
  void operator()(std::string_view, Length& field) const {
    field = Length::metres(within(random, 0.01, 30));
  }
  void operator()(std::string_view, Angle& field) const {
    field = Angle::radians(within(random, 0.0, 1.5));
  }
  void operator()(std::string_view, bool& field) const { field = upTo(random, 1) == 1; }
  void operator()(std::string_view, int& field) const { field = 1 + upTo(random, 5000); }
  void operator()(std::string_view name, std::string& field) const {
    static const std::vector<std::string> kTexts{
        "",       "Schöne Ecke",         "quote \" ' and \\ slash", "two\nlines\t", "{\"a\":[1,2]}",
        "🌿 漢字", std::string("a\0b", 3)};
    field = kTexts[static_cast<std::size_t>(upTo(random, 6))];
    if (name == "content_hash") field = sha256(randomPicture(upTo(random, 5)));
  }
  void operator()(std::string_view, NamedEnum auto& field) const {
    const auto& values = EnumWords<std::decay_t<decltype(field)>>::values;
    field =
        values[static_cast<std::size_t>(upTo(random, static_cast<int>(values.size()) - 1))].first;
  }
  void operator()(std::string_view, Point& field) const { field = randomPoint(random); }
  void operator()(std::string_view, Polygon& field) const {
    const Point centre = randomPoint(random);
    field = {star(random, centre, 3, 9, true), {}};
    if (upTo(random, 2) == 0) field.holes.push_back(star(random, centre, 0.5, 1.5, false));
  }
  void operator()(std::string_view, Polyline& field) const {
    field.clear();
    for (int i = 2 + upTo(random, 4); i > 0; --i) field.push_back(randomPoint(random));
  }
  void operator()(std::string_view, MonthDay& field) const {
    field = MonthDay{std::chrono::month{static_cast<unsigned>(1 + upTo(random, 11))},
                     std::chrono::day{static_cast<unsigned>(1 + upTo(random, 27))}};
  }
  void operator()(std::string_view, Date& field) const {
    field = std::chrono::sys_days{std::chrono::days{upTo(random, 40000)}};
  }
  void operator()(std::string_view, Viewing& field) const {
    field = {upTo(random, 3) == 0, {}};
    for (int i = upTo(random, 3); i > 0; --i)
      field.from.push_back(upTo(random, 1) == 0 ? Angle::radians(within(random, -7, 7))
                                                : Angle::degrees(22.5 * upTo(random, 15)));
  }
  void operator()(std::string_view, std::vector<ListedSpecies>& field) const {
    field.clear();
    for (int i = upTo(random, 3); i > 0; --i)
      field.push_back(
          {"Carex \"no. " + std::to_string(i), within(random, 0, 1), upTo(random, 3) == 0});
  }
  void operator()(std::string_view, std::vector<ThresholdOverride>& field) const {
    field.clear();
    for (int i = upTo(random, 3); i > 0; --i)
      field.push_back({"threshold " + std::to_string(i), within(random, -9, 9)});
  }
  void operator()(std::string_view, std::vector<SkylinePoint>& field) const {
    field.clear();
    for (int i = upTo(random, 3); i > 0; --i)
      field.push_back({Angle::radians(within(random, 0, 6)), Angle::radians(within(random, 0, 1))});
  }
  void operator()(std::string_view, std::vector<OwnFact>& field) const {
    field.clear();
    for (int i = upTo(random, 3); i > 0; --i)
      field.push_back({"column_" + std::to_string(i), "\"value\", " + std::to_string(i)});
  }
  void operator()(std::string_view, std::vector<KeptDrift>& field) const {
    field.clear();
    for (int i = upTo(random, 3); i > 0; --i) {
      KeptDrift& kept = field.emplace_back();
      kept.species = "Carex " + std::to_string(i);
      kept.spacing = Length::metres(within(random, 0.1, 2));
      kept.pattern = Pattern::Square;
      kept.places = {randomPoint(random), randomPoint(random)};
    }
  }
  // Keeps some plants, in another order and place, and adds some.
  void operator()(std::string_view, std::vector<Plant>& field) const {
    std::erase_if(field, [&](const Plant&) { return upTo(random, 3) == 0; });
    for (Plant& plant : field)
      if (upTo(random, 2) == 0) plant.at = randomPoint(random);
    if (upTo(random, 3) == 0) std::shuffle(field.begin(), field.end(), random);
    for (int i = upTo(random, 12); i > 0; --i)
      field.push_back({ids.take<Plant>(), randomPoint(random)});
  }
  void operator()(std::string_view, Id<Bed>& field) const {
    field = beds[static_cast<std::size_t>(upTo(random, static_cast<int>(beds.size()) - 1))];
  }
  template <class T>
  void operator()(std::string_view name, std::optional<T>& field) const {
    field.reset();
    if (upTo(random, 1) == 0) (*this)(name, field.emplace());
  }
};

// Two or three of every kind; drifts come after the beds they lie in.
template <std::size_t... I>
void addAll(Draft& draft, Random& random, IdSource& ids, std::index_sequence<I...>) {
  std::vector<Id<Bed>> beds;
  auto addSome = [&](const auto& blank) {
    for (int i = 2 + upTo(random, 1); i > 0; --i) {
      auto object = blank;
      object.id = ids.take<decltype(object)>();
      visitFields(object, Filler{random, ids, beds});
      if constexpr (std::is_same_v<decltype(object), Bed>) beds.push_back(object.id);
      draft.put(object);
    }
  };
  (addSome(std::variant_alternative_t<I + 1, Object>{}), ...);
}

}  // namespace

std::string randomPicture(int number) {
  return "picture " + std::to_string(number) + std::string("\0\xff", 2);
}

Yard randomYard(Random& random) {
  IdSource ids(2);
  Draft draft{Yard{}};
  Settings settings;
  visitFields(settings, Filler{random, ids, {}});
  draft.put(settings);
  addAll(draft, random, ids, std::make_index_sequence<std::variant_size_v<Object> - 1>{});
  return draft.yard();
}

Yard randomNext(const Yard& yard, Random& random) {
  IdSource ids(largestId(yard) + 1);
  Draft draft(yard);
  std::vector<Id<Bed>> beds;
  for (const Bed& bed : yard.beds) beds.push_back(bed.id);
  forEachObject(yard, [&](auto object) {
    using T = decltype(object);
    if (upTo(random, 3) != 0) return;
    const bool stays = std::is_same_v<T, Settings> || std::is_same_v<T, Bed>;
    if constexpr (!std::is_same_v<T, Settings>)
      if (!stays && upTo(random, 3) == 0) return draft.remove(object.id);
    visitFields(object, Filler{random, ids, beds});
    draft.put(object);
    if constexpr (!std::is_same_v<T, Settings> && !std::is_same_v<T, Drift>) {
      object.id = ids.take<T>();
      draft.put(object);
    }
  });
  return draft.yard();
}

}  // namespace tussock::test
