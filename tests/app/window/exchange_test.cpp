// SPDX-License-Identifier: MIT
// Sites brought in and out through the menus.
#include <QFile>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/app/window/window_fixture.h"
#include "tests/support/geojson_rules.h"

namespace tussock {
namespace {

// A bed 0.0001 degrees on a side, anticlockwise as RFC 7946, 3.1.6 asks of outer rings.
constexpr auto kSite = R"({"type": "FeatureCollection", "features": [
  {"type": "Feature", "properties": {"kind": "bed", "name": "From the survey"},
   "geometry": {"type": "Polygon", "coordinates": [[
     [-86.9, 38.4], [-86.8999, 38.4], [-86.8999, 38.4001], [-86.9, 38.4001], [-86.9, 38.4]]]}}]})";

class ExchangeTest : public test::WindowTest {
 protected:
  void write(const QString& file, const QByteArray& bytes) const {
    QFile out(file);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(bytes);
  }
  [[nodiscard]] std::string read(const QString& file) const {
    QFile in(file);
    EXPECT_TRUE(in.open(QIODevice::ReadOnly));
    return in.readAll().toStdString();
  }
};

TEST_F(ExchangeTest, AnImportIsOneEditInTheFile) {
  start();
  prompts->site = path(QStringLiteral("site.geojson"));
  write(prompts->site, kSite);
  trigger("actionImport");
  ASSERT_EQ(inFile().beds.size(), 1u);
  const Bed bed = *inFile().beds.begin();
  EXPECT_EQ(bed.name, "From the survey");
  // WGS 84 at 38.4 N: a degree of latitude is 111.0 km, one of longitude 87.3 km (from the
  // ellipsoid's series, Snyder 1987, table 3 and formula 4-19, worked out by hand).
  const Box box = boundsOf(bed.outline);
  EXPECT_NEAR(box.width(), 8.73, 0.02);
  EXPECT_NEAR(box.height(), 11.10, 0.02);
  trigger("actionUndo");
  EXPECT_TRUE(inFile().beds.empty());
}

TEST_F(ExchangeTest, WhatIsNoSiteIsToldAndChangesNothing) {
  start();
  const Yard before = inFile();
  prompts->site = path(QStringLiteral("notes.geojson"));
  write(prompts->site, "a shopping list");
  trigger("actionImport");
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("notes.geojson")));
  prompts->site = path(QStringLiteral("nowhere.geojson"));
  trigger("actionImport");
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("nowhere.geojson")));
  EXPECT_EQ(inFile(), before);
}

TEST_F(ExchangeTest, AnExportKeepsToTheStandardAndComesInAgain) {
  start(test::YardBuilder()
            .bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0), (2 0.5, 2 1.5, 3 1.5, 3 0.5, 2 0.5))")
            .drift("Echinacea purpurea", test::row(5, 0.5, {3.5, 1}))
            .build());
  prompts->exported = path(QStringLiteral("out.geojson"));
  trigger("actionExport");
  const std::string json = read(prompts->exported);
  EXPECT_EQ(test::brokenGeoJsonRules(json), std::vector<std::string>());
  prompts->yard = path(QStringLiteral("again.yard"));
  document.create(prompts->yard, test::YardBuilder().build());
  prompts->site = prompts->exported;
  trigger("actionImport");
  const Yard again = inFile();
  ASSERT_EQ(again.beds.size(), 1u);
  ASSERT_EQ(again.drifts.size(), 1u);
  EXPECT_EQ(again.beds.begin()->outline.holes.size(), 1u);
  EXPECT_EQ(again.drifts.begin()->plants.size(), 5u);
  EXPECT_NEAR(areaOf(again.beds.begin()->outline).squareMetres(), 11.0, 0.01);
}

TEST_F(ExchangeTest, WhereNothingCanBeWrittenItIsTold) {
  start();
  prompts->exported = path(QStringLiteral("no/such/folder/out.geojson"));
  trigger("actionExport");
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("out.geojson")));
}

}  // namespace
}  // namespace tussock
