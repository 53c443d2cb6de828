// SPDX-License-Identifier: MIT
#include "app/document/personal_plants.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>

#include "core/catalog/edit_plants.h"
#include "core/catalog/own_plants.h"
#include "tests/app/data_folder.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

using test::OpenYard;

constexpr auto kName = "Echinacea purpurea";

class PersonalPlants : public OpenYard {
 protected:
  PersonalPlants() : published_(document.facts()) {}

  void writeFile(const QByteArray& text) {
    QDir().mkpath(home_.filePath(QStringLiteral("tussock")));
    QFile file(personalPlantsPath());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
  }
  [[nodiscard]] QByteArray fileText() const {
    QFile file(personalPlantsPath());
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  [[nodiscard]] ChangeSet planted() {
    Draft draft(document.yard());
    Drift drift;
    drift.id = document.ids().take<Drift>();
    drift.bed = bed;
    drift.species = kName;
    drift.spacing = Length::metres(0.6);
    drift.plants = {{document.ids().take<Plant>(), {1.0, 1.0}}};
    draft.put(drift);
    return draft.finish("Plant");
  }

  test::DataFolder home_;
  Catalogue published_;
};

TEST_F(PersonalPlants, AreAFileInTheDataFolder) {
  EXPECT_EQ(personalPlantsPath(), home_.filePath(QStringLiteral("tussock/plants.csv")));
  EXPECT_TRUE(readPersonalPlants(published_).plants.empty());
  EXPECT_TRUE(readPersonalPlants(published_).errors.empty());
  const std::vector<OwnSpecies> plants{{{}, kName, {{"spacing_cm", "61"}}}};
  savePersonalPlants(plants, published_);
  EXPECT_EQ(fileText(), "botanical_name,spacing_cm\r\nEchinacea purpurea,61\r\n");
  EXPECT_EQ(readPersonalPlants(published_).plants, plants);
}

TEST_F(PersonalPlants, AFileWhoseRowsCannotBeReadIsNotWrittenOver) {
  const QByteArray text = "plant,spacing_cm\nEchinacea purpurea,60\n";
  writeFile(text);
  EXPECT_FALSE(readPersonalPlants(published_).errors.empty());
  try {
    savePersonalPlants({{{}, kName, {{"spacing_cm", "61"}}}}, published_);
    ADD_FAILURE() << "written over";
  } catch (const std::runtime_error& refusal) {
    EXPECT_NE(std::string(refusal.what()).find("line 1, botanical_name"), std::string::npos)
        << refusal.what();
  }
  EXPECT_EQ(fileText(), text);
}

TEST_F(PersonalPlants, AColumnThatIsNotKnownStays) {
  writeFile("botanical_name,spacing\nEchinacea purpurea,60\n");
  EXPECT_EQ(readPersonalPlants(published_).errors.size(), 1u);
  savePersonalPlants({{{}, kName, {{"spacing_cm", "61"}}}}, published_);
  EXPECT_EQ(fileText(), "botanical_name,spacing,spacing_cm\r\nEchinacea purpurea,60,61\r\n");
}

TEST_F(PersonalPlants, AFileIsKeptBesideWhenAPlantGoesThatHasMoreInIt) {
  const QByteArray text = "botanical_name,spacing_cm,shelf\nEchinacea purpurea,61,3\n";
  writeFile(text);
  savePersonalPlants({}, published_);
  EXPECT_EQ(fileText(), "botanical_name,spacing_cm,shelf\r\n");
  QFile kept(personalPlantsPath() + QStringLiteral(".kept"));
  ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
  EXPECT_EQ(kept.readAll(), text);
}

// What was read with them is used once; after that they are read again.
TEST_F(PersonalPlants, StillHoldWhenTheYardsOwnPlantsChange) {
  writeFile("botanical_name,spacing_cm\nEchinacea purpurea,61\n");
  OwnPlantsReading read = readPersonalPlants(published_);
  ASSERT_EQ(read.species.size(), 1u);
  document.setPersonalPlants(read.plants, read.species);
  EXPECT_NEAR(document.facts().find(kName)->spacing.metres(), 0.61, 1e-12);
  const char* other = "Symphyotrichum laeve";
  ASSERT_NE(published_.find(other), nullptr);
  const PlantEdit edit =
      setOwnValue(document.plantLayers(), other, "spacing_cm", "77", document.ids());
  ASSERT_TRUE(document.commit(edit.edit));
  EXPECT_NEAR(document.facts().find(other)->spacing.metres(), 0.77, 1e-12);
  EXPECT_NEAR(document.facts().find(kName)->spacing.metres(), 0.61, 1e-12);
}

TEST_F(PersonalPlants, GoBeforeThePublishedOnesAndTellSo) {
  QSignalSpy told(&document, &Document::factsChanged);
  document.setPersonalPlants({{{}, kName, {{"spacing_cm", "61"}}}});
  EXPECT_EQ(told.count(), 1);
  ASSERT_NE(document.facts().find(kName), nullptr);
  EXPECT_NEAR(document.facts().find(kName)->spacing.metres(), 0.61, 1e-12);
}

TEST_F(PersonalPlants, AYardThatUsesOneCarriesItInItsFile) {
  document.setPersonalPlants({{{}, kName, {{"spacing_cm", "61"}}}});
  EXPECT_EQ(findOwn(onDisk(), kName), nullptr);
  ASSERT_TRUE(document.commit(planted()));
  const Yard elsewhere = onDisk();
  ASSERT_NE(findOwn(elsewhere, kName), nullptr);
  document.setPersonalPlants({});  // the yard's own value holds without them
  EXPECT_NEAR(document.facts().find(kName)->spacing.metres(), 0.61, 1e-12);
  document.undo();
  EXPECT_NEAR(document.facts().find(kName)->spacing.metres(),
              published_.find(kName)->spacing.metres(), 1e-12);
}

}  // namespace
}  // namespace tussock
