// SPDX-License-Identifier: MIT
// Plants of the user's own, in the real window: what is typed ends in the yard's file, or in the
// personal catalogue.
#include "core/catalog/own_plants.h"

#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>

#include "app/document/personal_plants.h"
#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "app/panels/margin_panel.h"
#include "app/panels/species_marks.h"
#include "core/edit/draft.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

constexpr auto kBed = "POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))";
constexpr auto kBergamot = "Monarda fistulosa";

class OwnPlants : public test::WindowTest {
 protected:
  OwnPlants() {
    test::YardBuilder builder;
    builder.bed("Walk", kBed).drift(kBergamot, test::row(3, 0.5, {1.0, 1.5}));
    start(builder.build());
    window->loadOwnPlants();
    document.select({refTo(builder.lastDrift())});
  }
  template <class W>
  W* shown(const QString& name) const {
    QCoreApplication::processEvents();
    for (W* found : window->findChildren<W*>(name))
      if (found->isVisible()) return found;
    ADD_FAILURE() << "no " << qPrintable(name) << " shown";
    return nullptr;
  }
  void click(const char* name) const {
    if (auto* button = shown<QPushButton>(QLatin1String(name)))
      QTest::mouseClick(button, Qt::LeftButton);
  }
  void type(const char* column, const QString& words) const {
    auto* line = shown<QLineEdit>(QStringLiteral("plant-") + QLatin1String(column));
    ASSERT_TRUE(line);
    line->setFocus();
    line->selectAll();
    QTest::keyClick(line, Qt::Key_Delete);
    QTest::keyClicks(line, words);
    QTest::keyClick(line, Qt::Key_Return);
  }
  QString note(const char* column) const {
    auto* label = shown<QLabel>(QStringLiteral("plant-note-") + QLatin1String(column));
    return label ? label->text() : QString();
  }
  void inScope(Qt::Key key) const {
    auto* scope = shown<QComboBox>(QStringLiteral("plant-scope"));
    ASSERT_TRUE(scope);
    scope->setFocus();
    QTest::keyClick(scope, key);
  }
  void inAllYards() const { inScope(Qt::Key_Down); }
  void inThisYard() const { inScope(Qt::Key_Up); }
  // With the focus in the field that was written last.
  void keyOfUndo(Qt::KeyboardModifiers held) const {
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTest::keyClick(window->focusWidget(), Qt::Key_Z, held);
  }
  void undoByKey() const { keyOfUndo(Qt::ControlModifier); }
  void redoByKey() const { keyOfUndo(Qt::ControlModifier | Qt::ShiftModifier); }
  [[nodiscard]] ChangeSet renamed() const {
    Settings settings = document.yard().settings;
    settings.name = "Renamed";
    Draft draft(document.yard());
    draft.put(settings);
    return draft.finish("Rename");
  }
  [[nodiscard]] QString valueInFile(const char* name, const char* column) const {
    const Yard kept = inFile();
    const OwnSpecies* own = findOwn(kept, name);
    if (!own) return {};
    for (const OwnFact& fact : own->facts)
      if (fact.column == column) return QString::fromStdString(fact.value);
    return {};
  }
  [[nodiscard]] QByteArray fileText(const QString& at) const {
    QFile file(at);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  void writeFile(const QString& at, const QByteArray& bytes) const {
    QDir().mkpath(QFileInfo(at).path());
    QFile file(at);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
};

TEST_F(OwnPlants, AValueOverAPublishedOneIsInTheYardsFileAndThePublishedStaysToBeSeen) {
  const Length published = document.facts().find(kBergamot)->spacing;
  click("drift-facts");
  type("spacing_cm", QStringLiteral("75 cm"));
  EXPECT_EQ(valueInFile(kBergamot, "spacing_cm"), QStringLiteral("75"));
  EXPECT_NEAR(document.facts().find(kBergamot)->spacing.metres(), 0.75, 1e-12);
  EXPECT_TRUE(note("spacing_cm")
                  .contains(QStringLiteral("published: ") +
                            text(formatPlantSize(published, document.yard().settings.units))))
      << qPrintable(note("spacing_cm"));
  document.undo();
  EXPECT_EQ(document.facts().find(kBergamot)->spacing, published);
  EXPECT_FALSE(note("spacing_cm").contains(QStringLiteral("yours")));
}

TEST_F(OwnPlants, AnEmptyFieldBringsThePublishedValueBack) {
  const Length published = document.facts().find(kBergamot)->spacing;
  click("drift-facts");
  type("spacing_cm", QStringLiteral("75 cm"));
  type("spacing_cm", QString());
  EXPECT_EQ(inFile().ownSpecies.size(), 0u);
  EXPECT_EQ(document.facts().find(kBergamot)->spacing, published);
}

TEST_F(OwnPlants, WhatCannotBeUsedIsSaidAndChangesNothing) {
  click("drift-facts");
  for (const char* typed : {"-3 cm", "18", "90 m"}) {
    type("spacing_cm", QLatin1String(typed));
    auto* wrong = shown<QLabel>(QStringLiteral("plant-spacing_cm-wrong"));
    ASSERT_TRUE(wrong) << typed;
    EXPECT_TRUE(wrong->text().startsWith(QStringLiteral("Write a size")))
        << qPrintable(wrong->text());
  }
  type("height_min_cm", QStringLiteral("20 m"));
  auto* order = shown<QLabel>(QStringLiteral("plant-height_min_cm-wrong"));
  ASSERT_TRUE(order);
  EXPECT_TRUE(order->text().contains(QStringLiteral("Height"))) << qPrintable(order->text());
  EXPECT_FALSE(order->text().contains(QStringLiteral("_cm"))) << "no names of the table";
  type("sun", QStringLiteral("half"));
  EXPECT_TRUE(shown<QLabel>(QStringLiteral("plant-sun-wrong")));
  EXPECT_EQ(inFile().ownSpecies.size(), 0u);
}

TEST_F(OwnPlants, WhereAPublishedValueIsFromIsSaidAndMemoryIsNoSource) {
  click("drift-facts");
  EXPECT_EQ(note("family"), QStringLiteral("source: USDA PLANTS Database"));
  EXPECT_EQ(note("flower_hex"), QStringLiteral("general knowledge"));
  const auto* family = shown<QLabel>(QStringLiteral("plant-note-family"));
  EXPECT_TRUE(family->toolTip().contains(QStringLiteral("Natural Resources Conservation Service")))
      << qPrintable(family->toolTip());
}

TEST_F(OwnPlants, ANewPlantIsKeptOnceAllThatIsNeededIsThere) {
  trigger("actionPlantAdd");
  type("botanical_name", QStringLiteral("Rosa gardeniana"));
  click("plant-keep");
  const QString said = shown<QLabel>(QStringLiteral("plant-said"))->text();
  EXPECT_TRUE(said.contains(QStringLiteral("Family"))) << qPrintable(said);
  EXPECT_TRUE(said.contains(QStringLiteral("Spacing"))) << qPrintable(said);
  EXPECT_EQ(inFile().ownSpecies.size(), 0u);
  const std::initializer_list<std::pair<const char*, const char*>> values{
      {"family", "Rosaceae"},    {"layer_form", "shrub"},      {"height_min_cm", "90 cm"},
      {"height_max_cm", "4 ft"}, {"spread_cm", "80 cm"},       {"spacing_cm", "80 cm"},
      {"sun", "full sun"},       {"moisture", "dry or medium"}};
  for (const auto& [column, value] : values) type(column, QLatin1String(value));
  click("plant-keep");
  EXPECT_EQ(valueInFile("Rosa gardeniana", "spacing_cm"), QStringLiteral("80"));
  auto* bench = window->findChild<BenchPanel*>();
  QTest::keyClicks(bench->searchField(), QStringLiteral("gardeniana"));
  document.select({});
  ASSERT_EQ(bench->cards()->species().size(), 1u);
  EXPECT_EQ(bench->cards()->species().front()->botanicalName, "Rosa gardeniana");
}

TEST_F(OwnPlants, ADuplicateBeginsWithTheValuesOfTheOther) {
  click("drift-facts");
  click("plant-copy");
  type("botanical_name", QStringLiteral("Monarda 'Gate'"));
  type("height_max_cm", QStringLiteral("2 m"));
  click("plant-keep");
  EXPECT_EQ(valueInFile("Monarda 'Gate'", "height_max_cm"), QStringLiteral("200"));
  EXPECT_EQ(valueInFile("Monarda 'Gate'", "family"), QStringLiteral("Lamiaceae"));
  EXPECT_EQ(document.facts().find("Monarda 'Gate'")->sun, document.facts().find(kBergamot)->sun);
  document.undo();
  EXPECT_EQ(document.facts().find("Monarda 'Gate'"), nullptr);
}

TEST_F(OwnPlants, InAllYardsItIsInThePersonalFileAndUndoneLikeAnyEdit) {
  click("drift-facts");
  inAllYards();
  type("spacing_cm", QStringLiteral("75 cm"));
  EXPECT_EQ(fileText(personalPlantsPath()),
            "botanical_name,spacing_cm\r\nMonarda fistulosa,75\r\n");
  EXPECT_NEAR(document.facts().find(kBergamot)->spacing.metres(), 0.75, 1e-12);
  undoByKey();
  EXPECT_EQ(fileText(personalPlantsPath()), "botanical_name\r\n");
  EXPECT_NE(document.facts().find(kBergamot)->spacing.metres(), 0.75);
  redoByKey();
  EXPECT_EQ(fileText(personalPlantsPath()),
            "botanical_name,spacing_cm\r\nMonarda fistulosa,75\r\n");
}

TEST_F(OwnPlants, UndoTakesBackTheLastThingDoneInTheYardOrInAllYards) {
  click("drift-facts");
  type("spread_cm", QStringLiteral("90 cm"));  // in this yard
  inAllYards();
  type("spacing_cm", QStringLiteral("75 cm"));
  inThisYard();
  type("spread_cm", QStringLiteral("95 cm"));
  undoByKey();
  EXPECT_EQ(valueInFile(kBergamot, "spread_cm"), QStringLiteral("90"));
  EXPECT_TRUE(fileText(personalPlantsPath()).contains("75")) << "not yet";
  undoByKey();
  EXPECT_FALSE(fileText(personalPlantsPath()).contains("75"));
  EXPECT_EQ(valueInFile(kBergamot, "spread_cm"), QStringLiteral("90")) << "not yet";
  undoByKey();
  EXPECT_EQ(inFile().ownSpecies.size(), 0u);
  for (int i = 0; i < 3; ++i) redoByKey();
  EXPECT_EQ(valueInFile(kBergamot, "spread_cm"), QStringLiteral("95"));
  EXPECT_TRUE(fileText(personalPlantsPath()).contains("75"));
}

TEST_F(OwnPlants, AValueForAllYardsHoldsInAYardThatCarriesAnOlderOne) {
  click("drift-facts");
  inAllYards();
  type("spacing_cm", QStringLiteral("75 cm"));
  inThisYard();
  type("spread_cm", QStringLiteral("90 cm"));
  inAllYards();
  document.commit(renamed());  // from here on the yard carries what all yards have
  ASSERT_EQ(valueInFile(kBergamot, "spread_cm"), QStringLiteral("90"));
  type("spread_cm", QStringLiteral("85 cm"));
  EXPECT_NEAR(document.facts().find(kBergamot)->spread.metres(), 0.85, 1e-12);
  undoByKey();
  EXPECT_EQ(valueInFile(kBergamot, "spread_cm"), QStringLiteral("90"));
  EXPECT_FALSE(fileText(personalPlantsPath()).contains("85"));
  redoByKey();
  EXPECT_EQ(valueInFile(kBergamot, "spread_cm"), QStringLiteral("85"));
  EXPECT_TRUE(fileText(personalPlantsPath()).contains("85"));
}

TEST_F(OwnPlants, AChangeMadeElsewhereIsTakenInAndNotOverwritten) {
  click("drift-facts");
  inAllYards();
  type("spacing_cm", QStringLiteral("75 cm"));
  writeFile(personalPlantsPath(), "botanical_name,spacing_cm\nMonarda fistulosa,66\n");
  type("spread_cm", QStringLiteral("70 cm"));
  EXPECT_TRUE(shown<QLabel>(QStringLiteral("plant-spread_cm-wrong")));
  EXPECT_NEAR(document.facts().find(kBergamot)->spacing.metres(), 0.66, 1e-12);
  EXPECT_EQ(fileText(personalPlantsPath()), "botanical_name,spacing_cm\nMonarda fistulosa,66\n");
}

// A row that cannot be used does not hold up the others, and is still there to be mended.
TEST_F(OwnPlants, OthersAreChangedBesideARowAtFaultWhichStaysAsItWasTyped) {
  const QByteArray faulty = "Echinacea purpurea, \"wide\" ,x\n";
  writeFile(personalPlantsPath(),
            "botanical_name,spacing_cm,notes\nMonarda fistulosa,66,\n" + faulty);
  window->loadOwnPlants();
  ASSERT_NEAR(document.facts().find(kBergamot)->spacing.metres(), 0.66, 1e-12);
  click("fault-back");
  click("drift-facts");
  inAllYards();
  type("spacing_cm", QStringLiteral("75 cm"));
  EXPECT_EQ(fileText(personalPlantsPath()),
            "botanical_name,spacing_cm,notes\r\nMonarda fistulosa,75,\r\n" + faulty);
  EXPECT_NEAR(document.facts().find(kBergamot)->spacing.metres(), 0.75, 1e-12);
  undoByKey();
  EXPECT_EQ(fileText(personalPlantsPath()),
            "botanical_name,spacing_cm,notes\r\nMonarda fistulosa,66,\r\n" + faulty);
}

TEST_F(OwnPlants, BroughtInFromAFileWithTheBadRowsTold) {
  prompts->plants = path(QStringLiteral("more.csv"));
  writeFile(prompts->plants,
            "\xEF\xBB\xBF"
            "botanical_name,spacing_cm,notes\nMonarda fistulosa,75,\"=HYPERLINK(\"\"x\"\")\"\n"
            "Echinacea purpurea,\"1,200\",\nAcer nowhere,60,\n");
  trigger("actionPlantsIn");
  EXPECT_NEAR(document.facts().find(kBergamot)->spacing.metres(), 0.75, 1e-12);
  const QString told = window->messages().words();
  EXPECT_TRUE(told.contains(QStringLiteral("listed in the margin"))) << qPrintable(told);
  EXPECT_FALSE(told.contains(QStringLiteral("line 3"))) << "told once, where it can be copied";
  const QString listed = shown<QPlainTextEdit>(QStringLiteral("fault-lines"))->toPlainText();
  EXPECT_EQ(listed.count(QStringLiteral("more.csv, line 3, spacing_cm")), 1) << qPrintable(listed);
  EXPECT_TRUE(listed.contains(QStringLiteral("line 4"))) << qPrintable(listed);
  prompts->plants = path(QStringLiteral("out.csv"));
  trigger("actionOwnPlantsOut");
  EXPECT_EQ(fileText(prompts->plants),
            "botanical_name,spacing_cm,notes\r\n"
            "Monarda fistulosa,75,\"'=HYPERLINK(\"\"x\"\")\"\r\n")
      << "a spreadsheet must not run it";
}

TEST_F(OwnPlants, ValuesAreInWordsAndInTheUnitsOfTheYard) {
  click("drift-facts");
  trigger("actionUnitsFeet");
  const auto shownIn = [this](const char* column) {
    return shown<QLineEdit>(QStringLiteral("plant-") + QLatin1String(column))->text();
  };
  const Species& bergamot = *document.facts().find(kBergamot);
  EXPECT_EQ(shownIn("spacing_cm"), text(formatPlantSize(bergamot.spacing, UnitSystem::FeetInches)));
  EXPECT_EQ(shownIn("bloom_start_month"), QStringLiteral("June"));
  EXPECT_TRUE(shownIn("sun").contains(QStringLiteral("full sun"))) << qPrintable(shownIn("sun"));
  type("bloom_start_month", QStringLiteral("may"));
  EXPECT_EQ(valueInFile(kBergamot, "bloom_start_month"), QStringLiteral("5"));
  trigger("actionUnitsMetres");
  EXPECT_EQ(shownIn("spacing_cm"), text(formatPlantSize(bergamot.spacing, UnitSystem::Metres)));
}

TEST_F(OwnPlants, WeeksAreShownFromTheMonthsAndCanBeWritten) {
  click("drift-facts");
  const auto note = [this](const char* column) {
    return shown<QLabel>(QStringLiteral("plant-note-") + QLatin1String(column))->text();
  };
  EXPECT_TRUE(note("bloom_start_week").contains(QStringLiteral("the first of the month")))
      << qPrintable(note("bloom_start_week"));
  type("bloom_start_week", QStringLiteral("week 25"));
  EXPECT_EQ(valueInFile(kBergamot, "bloom_start_week"), QStringLiteral("25"));
  EXPECT_FALSE(document.facts().find(kBergamot)->bloomsInWeek(23));
  EXPECT_TRUE(document.facts().find(kBergamot)->bloomsInWeek(24));
}

TEST_F(OwnPlants, LongTextIsShownWholeAndWrittenWithEnter) {
  click("drift-facts");
  auto* states = shown<QPlainTextEdit>(QStringLiteral("plant-native_states"));
  ASSERT_TRUE(states);
  EXPECT_GT(states->height(), 2 * states->fontMetrics().lineSpacing());
  EXPECT_EQ(states->verticalScrollBar()->maximum(), 0) << "all of it fits";
  auto* notes = shown<QPlainTextEdit>(QStringLiteral("plant-notes"));
  ASSERT_TRUE(notes);
  notes->setFocus();
  notes->selectAll();
  QTest::keyClicks(notes, QStringLiteral("Divide each third year"));
  QTest::keyClick(notes, Qt::Key_Return);
  EXPECT_EQ(valueInFile(kBergamot, "notes"), QStringLiteral("Divide each third year"));
}

TEST_F(OwnPlants, ARuleIsToldAsAFirstFilter) {
  click("drift-facts");
  auto* note = shown<QLabel>(QStringLiteral("plant-note-regulated"));
  ASSERT_TRUE(note);
  EXPECT_TRUE(note->text().contains(QStringLiteral("department of agriculture")));
}

TEST_F(OwnPlants, EveryFaultOfATableCanBeReadCopiedAndSaved) {
  prompts->plants = path(QStringLiteral("bad.csv"));
  QByteArray rows = "botanical_name,spacing_cm\n";
  for (int i = 0; i < 500; ++i) rows += "Acer nowhere " + QByteArray::number(i) + ",wide\n";
  writeFile(prompts->plants, rows);
  trigger("actionPlantsIn");
  auto* lines = shown<QPlainTextEdit>(QStringLiteral("fault-lines"));
  ASSERT_TRUE(lines);
  const QString all = lines->toPlainText();
  EXPECT_TRUE(all.contains(QStringLiteral("bad.csv, line 2, spacing_cm: 'wide' is not a number")))
      << qPrintable(all.left(300));
  EXPECT_TRUE(all.contains(QStringLiteral("bad.csv, line 501, spacing_cm")));
  click("fault-copy");
  EXPECT_EQ(QGuiApplication::clipboard()->text(), all);
  prompts->plants = path(QStringLiteral("report.csv"));
  click("fault-save");
  EXPECT_TRUE(fileText(prompts->plants).contains("bad.csv,501,spacing_cm,wide,"));
  click("fault-back");
  trigger("actionPlantFaults");
  EXPECT_TRUE(shown<QPlainTextEdit>(QStringLiteral("fault-lines")));
}

TEST_F(OwnPlants, MarkupInAPlantsTextIsShownAndNotFollowed) {
  const QString markup = QStringLiteral("<img src='x'>bee balm");
  click("drift-facts");
  type("common_name", markup);
  click("plant-back");
  auto* common = shown<QLabel>(QStringLiteral("drift-common"));
  ASSERT_TRUE(common);
  EXPECT_EQ(common->text(), markup);
  EXPECT_EQ(common->textFormat(), Qt::PlainText);
  EXPECT_FALSE(plainTip(markup).contains(QStringLiteral("<img")));
  EXPECT_TRUE(plainTip(markup).contains(QStringLiteral("&lt;img")));
}

TEST_F(OwnPlants, AllPlantsGoOutAndComeBackUnchanged) {
  prompts->plants = path(QStringLiteral("all.csv"));
  trigger("actionAllPlantsOut");
  const auto back = readCatalogue(fileText(prompts->plants).toStdString(), "all.csv");
  EXPECT_TRUE(back.errors.empty());
  EXPECT_EQ(back.catalogue.species(), document.facts().species());
}

}  // namespace
}  // namespace tussock
