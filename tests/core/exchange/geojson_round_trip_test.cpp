// SPDX-License-Identifier: MIT
// Any yard comes back from GeoJSON as it was, and no damaged file does harm.
#include <cstdlib>
#include <fstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "core/exchange/field_json.h"
#include "core/exchange/geojson.h"
#include "core/model/fields.h"
#include "core/store/example_file.h"
#include "core/store/yard_file.h"
#include "tests/support/geojson_rules.h"
#include "tests/support/random_yard.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

// An object as numbers, compared to 1e-6, and all else as text.
class Flat {
 public:
  std::vector<double> numbers;
  std::string text;

  Flat(const Yard& yard, const auto& object) : yard_(yard) { visitFields(object, *this); }

  template <class T>
  void operator()(const char* name, const T& field) {
    text.append("\n").append(name);
    add(field);
  }

 private:
  void add(const NumberField auto& field) { numbers.push_back(numberOf(field)); }
  void add(Point p) { numbers.insert(numbers.end(), {p.x, p.y}); }
  void add(const Polyline& line) {
    for (const Point p : line) add(p);
  }
  void add(const Polygon& polygon) {
    add(polygon.outer);
    for (const Ring& hole : polygon.holes) text += " hole", add(hole);
  }
  void add(const std::vector<Plant>& plants) {
    for (const Plant& plant : plants) add(plant.at);
  }
  void add(Id<Bed> bed) { text += yard_.beds.find(bed)->name; }
  template <class T>
  void add(const std::optional<T>& field) {
    text += field ? " given" : " none";
    if (field) add(*field);
  }
  void add(const auto& field) { text += toJson(field).dump(); }

  const Yard& yard_;
};

template <class T>
void expectSame(const Yard& a, const Yard& b) {
  const auto& before = collectionOf<T>(a);
  const auto& after = collectionOf<T>(b);
  ASSERT_EQ(before.size(), after.size()) << kKind<T>;
  auto at = after.begin();
  for (const T& object : before) {
    const Flat x(a, object), y(b, *at);
    EXPECT_EQ(x.text, y.text);
    ASSERT_EQ(x.numbers.size(), y.numbers.size()) << kKind<T>;
    for (std::size_t i = 0; i < x.numbers.size(); ++i)
      EXPECT_NEAR(x.numbers[i], y.numbers[i], 1e-6) << kKind<T>;
    ++at;
  }
}

void nameUnknown(std::string& foreign, int& count) {
  foreign = ++count % 2 == 0 ? "" : R"({"a":[1,2],"b":null})";
}

// A random yard within what GeoJSON can say: see docs/geojson.md.
Yard sayable(test::Random& random) {
  Draft draft(test::randomYard(random));
  int count = 0;
  Settings settings = draft.yard().settings;
  settings.foreign = R"({"survey":"spring"})";
  draft.put(settings);
  auto each = [&](auto collection, auto change) {
    for (auto object : collection) {
      change(object);
      draft.put(object);
    }
  };
  auto unknown = [&](auto& object) { nameUnknown(object.foreign, count); };
  const Yard start = draft.yard();
  each(start.lotLines, unknown), each(start.trees, unknown), each(start.pavings, unknown);
  each(start.steppingPlaces, unknown), each(start.waterPoints, unknown);
  each(start.heightLimits, unknown), each(start.buriedLines, unknown), each(start.patches, unknown);
  each(start.buildings, [&](Building& b) {
    unknown(b);
    b.ridge = b.roof == Roof::Flat ? b.eave : std::max(b.ridge, b.eave);
  });
  each(start.barriers, [&](Barrier& b) {
    unknown(b);
    if (count % 3 == 0)
      b.line.clear();
    else
      b.footprint = {};
  });
  each(start.beds, [&](Bed& b) {
    unknown(b);
    b.name = "bed " + std::to_string(b.id.value());
  });
  each(start.drifts, [&](Drift& d) {
    unknown(d);
    d.species = "Carex no" + std::to_string(d.id.value());
    d.stretch += 1.0;
  });
  each(start.ownSpecies, [&](OwnSpecies& own) {
    own.botanicalName = "Carex own" + std::to_string(own.id.value());
    own.facts = {{"family", "Cyperaceae"}, {"height_max_cm", "60"}, {"height_min_cm", "30"},
                 {"layer_form", "sedge"},  {"moisture", "wet"},     {"spacing_cm", "40"},
                 {"spread_cm", "50"},      {"sun", "full;part"}};
  });
  each(start.foreignFeatures, [&](ForeignFeature& f) {
    f.json = R"({"type":"Feature","geometry":null,"properties":{"n":)" +
             std::to_string(f.id.value()) + "}}";
  });
  return draft.yard();
}

GeoJsonImport importAgain(const Yard& yard, const std::string& json) {
  IdSource ids(2);
  return importGeoJson(yard, Catalogue(), json, "site.geojson", ids);
}

TEST(GeoJsonRoundTrip, AnyYardComesBackAsItWas) {
  for (unsigned seed = 1; seed <= 20; ++seed) {
    SCOPED_TRACE(seed);
    test::Random random(seed);
    const Yard yard = sayable(random);
    const std::string json = yardToGeoJson(yard);
    EXPECT_THAT(test::brokenGeoJsonRules(json), testing::IsEmpty());
    Yard target;
    target.settings = yard.settings;
    const GeoJsonImport result = importAgain(target, json);
    EXPECT_THAT(result.warnings, testing::IsEmpty());
    const Yard back = apply(target, result.edit);
    EXPECT_EQ(back.settings, yard.settings);
    expectSame<LotLine>(yard, back), expectSame<Building>(yard, back);
    expectSame<Barrier>(yard, back), expectSame<Tree>(yard, back), expectSame<Paving>(yard, back);
    expectSame<SteppingPlace>(yard, back), expectSame<WaterPoint>(yard, back);
    expectSame<HeightLimit>(yard, back), expectSame<BuriedLine>(yard, back);
    expectSame<Bed>(yard, back), expectSame<Patch>(yard, back), expectSame<Drift>(yard, back);
    expectSame<ForeignFeature>(yard, back), expectSame<OwnSpecies>(yard, back);
  }
}

// Whether the validator of Debian's python3-geojson accepts every file.
bool acceptedByGeneralValidator(const std::vector<std::filesystem::path>& files) {
  std::string command = R"py(/usr/bin/python3 -c "
import geojson, sys
found = [(name, geojson.load(open(name)).errors()) for name in sys.argv[1:]]
wrong = [each for each in found if each[1]]
for each in wrong: print(*each)
sys.exit(3 if wrong else 0)")py";
  for (const auto& file : files) command += " '" + file.string() + "'";
  const int status = std::system(command.c_str());
  EXPECT_TRUE(status == 0 || WEXITSTATUS(status) == 3)
      << "The validator did not run. Install python3-geojson, named in .ci/packages.";
  return status == 0;
}

void write(const std::filesystem::path& path, const std::string& text) {
  std::ofstream(path) << text;
}

TEST(GeneralGeoJsonValidator, AcceptsTheExampleYardAndRandomOnes) {
  const test::TemporaryFolder folder;
  writeExample(folder / "example.yard", readShippedCatalogue().catalogue);
  const YardFile example = YardFile::open(folder / "example.yard");
  std::vector<std::filesystem::path> files{folder / "example.geojson"};
  write(files[0], yardToGeoJson(example.yard()));
  for (unsigned seed = 31; seed <= 38; ++seed) {
    test::Random random(seed);
    files.push_back(folder / (std::to_string(seed) + ".geojson"));
    write(files.back(), yardToGeoJson(sayable(random)));
  }
  EXPECT_TRUE(acceptedByGeneralValidator(files));
}

TEST(GeneralGeoJsonValidator, RefusesARingThatIsOpen) {
  const test::TemporaryFolder folder;
  write(folder / "open.geojson", R"({"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,1]]]})");
  EXPECT_FALSE(acceptedByGeneralValidator({folder / "open.geojson"}));
}

// One value somewhere in the file becomes something else.
void damage(Json& json, test::Random& random) {
  Json* at = &json;
  while (at->is_structured() && !at->empty() && random() % 12 != 0) {
    auto next = at->begin();
    std::advance(next, static_cast<std::ptrdiff_t>(random() % at->size()));
    at = &*next;
  }
  static const std::vector<Json> kOthers{nullptr,
                                         true,
                                         -1e308,
                                         1e308,
                                         0,
                                         "",
                                         "bed",
                                         Json::array(),
                                         Json::object(),
                                         "NaN",
                                         "wall",
                                         1e9,
                                         -5,
                                         "13-40",
                                         0.1,
                                         Json::array({1}),
                                         Json::array({nullptr, "x"})};
  *at = kOthers[random() % kOthers.size()];
}

void expectSound(const Yard& yard) {
  for (const Bed& bed : yard.beds) EXPECT_EQ(invalidityOf(bed.outline), std::nullopt);
  for (const Building& building : yard.buildings)
    EXPECT_EQ(invalidityOf(building.footprint), std::nullopt);
  for (const Tree& tree : yard.trees) EXPECT_TRUE(isFinite(tree.at));
  for (const Drift& drift : yard.drifts) {
    EXPECT_NE(yard.beds.find(drift.bed), nullptr);
    EXPECT_GT(drift.spacing, Length());
    for (const Plant& plant : drift.plants) EXPECT_TRUE(isFinite(plant.at));
  }
}

void tryImport(const std::string& text, int& read) {
  const Yard yard;
  try {
    expectSound(apply(yard, importAgain(yard, text).edit));
    ++read;
  } catch (const FormatError&) {
    // Refused, which is as good.
  }
}

TEST(GeoJsonRoundTrip, DamagedValuesDoNoHarm) {
  test::Random random(7);
  Draft draft{sayable(random)};
  Settings settings = draft.yard().settings;
  settings.latitude = settings.longitude = Angle();
  draft.put(settings);
  const Json whole = Json::parse(yardToGeoJson(draft.yard()));
  int read = 0;
  for (int round = 0; round < 400; ++round) {
    SCOPED_TRACE(round);
    Json json = whole;
    for (std::size_t i = 1 + random() % 6; i > 0; --i) damage(json, random);
    tryImport(json.dump(), read);
  }
  EXPECT_GT(read, 50);
}

TEST(GeoJsonRoundTrip, DamagedBytesDoNoHarm) {
  test::Random random(8);
  const std::string whole = yardToGeoJson(sayable(random));
  int read = 0;
  for (int round = 0; round < 300; ++round) {
    SCOPED_TRACE(round);
    std::string text = whole;
    for (std::size_t i = 1 + random() % 3; i > 0; --i)
      text[random() % text.size()] =
          static_cast<char>("0123456789.-e,]}[{\"abc\xff"[random() % 23]);
    if (random() % 10 == 0) text.resize(random() % text.size());
    tryImport(text, read);
  }
  EXPECT_GT(read, 10);
}

}  // namespace
}  // namespace tussock
