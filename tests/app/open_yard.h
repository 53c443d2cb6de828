// SPDX-License-Identifier: MIT
// A document on a fresh file, with a few species and one bed, for tests of the window's parts.
#pragma once

#include <optional>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/document/document.h"
#include "core/edit/draft.h"
#include "core/planting/edit_drift.h"

namespace tussock::test {

// Invented figures, so that tests know them; not plant facts.
inline Species species(std::string name, std::string common, Habit habit, FlowerForm form) {
  Species s;
  s.botanicalName = std::move(name);
  s.commonName = std::move(common);
  s.genus = std::string(genusOf(s.botanicalName));
  s.family = "Testaceae";
  s.habit = habit;
  s.flowerForm = form;
  s.heightLow = s.heightHigh = Length::metres(0.9);
  s.spread = s.spacing = Length::metres(0.4);
  s.sun = {SunNeed::Full};
  s.moisture = {Moisture::Medium};
  s.bloomFirstMonth = 7;
  s.bloomLastMonth = 9;
  s.flowerColour = Rgb{180, 60, 140};
  s.flowerColourWord = "purple";
  s.zoneLow = 3;
  s.zoneHigh = 9;
  return s;
}

inline Catalogue fewSpecies() {
  Species coneflower = species("Echinacea purpurea", "coneflower", Habit::Forb, FlowerForm::Daisy);
  Species bluestem =
      species("Schizachyrium scoparium", "little bluestem", Habit::Grass, FlowerForm::Plume);
  bluestem.moisture = {Moisture::Dry};
  Species fern = species("Adiantum pedatum", "maidenhair fern", Habit::Fern, FlowerForm::None);
  fern.sun = {SunNeed::Shade};
  fern.bloomFirstMonth.reset(), fern.bloomLastMonth.reset(), fern.flowerColour.reset();
  Species aster = species("Symphyotrichum laeve", "smooth aster", Habit::Forb, FlowerForm::Daisy);
  aster.sun = {SunNeed::Full, SunNeed::Part};
  return Catalogue({coneflower, bluestem, fern, aster});
}

class OpenYard : public testing::Test {
 protected:
  OpenYard() {
    Yard yard;
    yard.settings.name = "Test yard";
    yard.settings.latitude = Angle::degrees(38.4);
    yard.settings.longitude = Angle::degrees(-86.9);
    yard.settings.lastFrost = MonthDay{std::chrono::April, std::chrono::day{20}};
    yard.settings.firstFrost = MonthDay{std::chrono::October, std::chrono::day{18}};
    Bed made;
    made.id = bed;
    made.name = "Walk";
    made.outline = rectangle({0, 0}, {8, 4});
    yard.beds = yard.beds.with(made);
    document.create(path(), yard);
  }

  [[nodiscard]] QString path() const { return folder_.filePath(QStringLiteral("test.yard")); }
  // What is in the file, read afresh.
  [[nodiscard]] Yard onDisk() const {
    return YardFile::open(path().toStdString(), YardFile::Access::ReadOnly).yard();
  }
  Id<Drift> plant(const char* name, int count, Point at) {
    const Species* found = document.facts().find(name);
    GrowRequest request;
    request.bed = bed;
    request.spacing = found->spacing;
    request.count = count;
    request.at = at;
    const DriftEdit made = plantDrift(document.yard(), *found, request, document.ids());
    EXPECT_EQ(made.fitted, count);
    EXPECT_TRUE(document.commit(made.edit));
    return made.drift;
  }
  template <class T>
  ChangeSet put(T object, const char* label) const {
    Draft draft(document.yard());
    draft.put(std::move(object));
    return draft.finish(label);
  }
  // As far south of the equator, with no frosts told unless they are given.
  void moveSouth(std::optional<MonthDay> lastFrost = {}, std::optional<MonthDay> firstFrost = {}) {
    Settings settings = document.yard().settings;
    settings.latitude = -settings.latitude;
    settings.lastFrost = lastFrost, settings.firstFrost = firstFrost;
    ASSERT_TRUE(document.commit(put(settings, "Move south")));
  }
  [[nodiscard]] ChangeSet renamed(const char* name) const {
    Bed changed = *document.yard().beds.find(bed);
    changed.name = name;
    return put(changed, "Rename bed");
  }

 private:
  QTemporaryDir folder_;

 protected:
  const Id<Bed> bed{2};
  Document document{fewSpecies()};
};

}  // namespace tussock::test
