// SPDX-License-Identifier: MIT
// Plants of one's own that cannot be used, or not be checked: mended by a table brought in, told.
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>

#include "app/document/personal_plants.h"
#include "app/window/message_bar.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class BadOwnPlants : public test::WindowTest {
 protected:
  static void writeFile(const QString& at, const QByteArray& bytes) {
    QDir().mkpath(QFileInfo(at).path());
    QFile file(at);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
  [[nodiscard]] static QByteArray fileText(const QString& at) {
    QFile file(at);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  // A window with a drift of the species, and its facts beside it.
  void startWith(const char* species, const QByteArray& ownPlants) {
    writeFile(personalPlantsPath(), ownPlants);
    test::YardBuilder builder;
    builder.bed("Walk", "POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))")
        .drift(species, test::row(3, 0.5, {1.0, 1.5}));
    start(builder.build());
    window->loadOwnPlants();
    document.select({refTo(builder.lastDrift())});
    QCoreApplication::processEvents();
  }
  [[nodiscard]] QString familyNote() const {
    QCoreApplication::processEvents();
    for (auto* push : window->findChildren<QPushButton*>(QStringLiteral("drift-facts")))
      if (push->isVisible()) QTest::mouseClick(push, Qt::LeftButton);
    QCoreApplication::processEvents();
    for (const auto* label : window->findChildren<QLabel*>(QStringLiteral("plant-note-family")))
      if (label->isVisible()) return label->text();
    return QStringLiteral("no note is shown");
  }
};

TEST_F(BadOwnPlants, ARightRowBroughtInComesInPlaceOfOneAtFaultAndTheTableIsKept) {
  const QByteArray before =
      "botanical_name,spacing_cm,notes\nMonarda fistulosa,wide,\nEchinacea purpurea,-5,x\n";
  startWith("Monarda fistulosa", before);
  prompts->plants = path(QStringLiteral("more.csv"));
  writeFile(prompts->plants, "botanical_name,spacing_cm\nMonarda fistulosa,75\n");
  trigger("actionPlantsIn");
  EXPECT_NEAR(document.facts().find("Monarda fistulosa")->spacing.metres(), 0.75, 1e-12);
  EXPECT_EQ(fileText(personalPlantsPath()),
            "botanical_name,spacing_cm,notes\r\nMonarda fistulosa,75,\r\n"
            "Echinacea purpurea,-5,x\n");
  const QString kept = personalPlantsPath() + QStringLiteral(".kept");
  EXPECT_EQ(fileText(kept), before);
  EXPECT_TRUE(window->messages().words().contains(kept)) << qPrintable(window->messages().words());
}

// Hosta is in the Asparagaceae (APG IV), but no Hosta is published here to tell so.
TEST_F(BadOwnPlants, OfAGenusThatIsNotKnownItIsSaidThatTheFamilyWasNotChecked) {
  startWith("Hosta nova",
            "botanical_name,family,layer_form,height_min_cm,height_max_cm,spread_cm,spacing_cm,"
            "sun,moisture\nHosta nova,Rosaceae,forb,30,60,50,50,shade,moist\n");
  EXPECT_TRUE(
      familyNote().contains(QStringLiteral("not checked: the genus Hosta is not known here")))
      << qPrintable(familyNote());
}

TEST_F(BadOwnPlants, OfAKnownGenusNothingIsSaidOfTheFamily) {
  startWith("Monarda nova",
            "botanical_name,family,layer_form,height_min_cm,height_max_cm,spread_cm,spacing_cm,"
            "sun,moisture\nMonarda nova,Lamiaceae,forb,30,60,50,50,full,dry\n");
  EXPECT_TRUE(familyNote().startsWith(QStringLiteral("yours"))) << qPrintable(familyNote());
  EXPECT_FALSE(familyNote().contains(QStringLiteral("not checked")));
}

}  // namespace
}  // namespace tussock
