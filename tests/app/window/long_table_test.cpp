// SPDX-License-Identifier: MIT
// A long table of plants in the window: while it is read the pointer and words say so.
#include <QEvent>
#include <QFile>
#include <QGuiApplication>
#include <QLocale>

#include "app/document/personal_plants.h"
#include "app/window/plant_commands.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

// The words that the message bar was painted with, in order.
class Painted : public QObject {
 public:
  explicit Painted(MessageBar& bar) : bar_(bar) { bar.installEventFilter(this); }
  QStringList words;

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint && !words.contains(bar_.words())) words << bar_.words();
    return false;
  }

 private:
  MessageBar& bar_;
};

class LongTableTest : public test::WindowTest {
 protected:
  LongTableTest() {
    start();
    prompts->plants = path(QStringLiteral("long.csv"));
  }
  // One row that can be used, then rows that cannot.
  void writeTable(int rows) {
    QFile file(prompts->plants);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("botanical_name,spacing_cm\nMonarda fistulosa,66\n");
    for (int i = 1; i < rows; ++i) file.write("Acer nowhere,wide\n");
  }
  [[nodiscard]] QString reading(int rows) const {
    return QStringLiteral("Reading %1 rows…").arg(QLocale().toString(rows));
  }
};

TEST_F(LongTableTest, IsToldOfWhileItIsRead) {
  writeTable(3000);
  const Painted painted(window->messages());
  bool busy = false;
  QObject::connect(window->findChild<PlantCommands*>(), &PlantCommands::told, window.get(), [&] {
    const QCursor* pointer = QGuiApplication::overrideCursor();
    busy = pointer && pointer->shape() == Qt::WaitCursor;
  });
  trigger("actionPlantsIn");
  EXPECT_TRUE(painted.words.contains(reading(3000)))
      << qPrintable(painted.words.join(QStringLiteral("; ")));
  EXPECT_TRUE(busy);
  EXPECT_FALSE(QGuiApplication::overrideCursor()) << "given back";
  EXPECT_TRUE(window->messages().words().startsWith(
      QStringLiteral("Plants brought in for all your yards: 1")))
      << qPrintable(window->messages().words());
  QFile kept(personalPlantsPath());
  ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
  EXPECT_EQ(kept.readAll(), "botanical_name,spacing_cm\r\nMonarda fistulosa,66\r\n");
}

TEST_F(LongTableTest, AShortOneIsNotWorthTheWords) {
  writeTable(20);
  const Painted painted(window->messages());
  trigger("actionPlantsIn");
  EXPECT_FALSE(painted.words.contains(reading(20)));
  EXPECT_FALSE(QGuiApplication::overrideCursor());
}

}  // namespace
}  // namespace tussock
