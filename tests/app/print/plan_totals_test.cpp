// SPDX-License-Identifier: MIT
// The plants of a yard, counted from the words of the printed PDF as poppler's pdftotext reads
// them: on labels, in the schedules of the beds and in the overview's.
#include <algorithm>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include "app/print/plan_output.h"
#include "tests/app/print/run_tool.h"
#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"
#include "tests/support/special_yards.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

using namespace test;

int plantsOf(const Yard& yard) {
  int plants = 0;
  for (const Drift& drift : yard.drifts) plants += static_cast<int>(drift.plants.size());
  return plants;
}

// Of the first group of every match, line by line.
int sumOf(const QString& text, const QRegularExpression& pattern) {
  int sum = 0;
  for (auto found = pattern.globalMatch(text); found.hasNext();)
    sum += found.next().captured(1).toInt();
  return sum;
}

struct Read {
  int labels = 0, bedSchedules = 0, wholeSchedule = 0;
  int agreements = 0;  // totals that the page itself says agree
};

// "7 × ECHPUR", "4 of 7 × ECHPUR", "1 existing ECHPUR".
int labelsOn(const QString& page) {
  static const QRegularExpression label(
      QStringLiteral("(?<![0-9])([0-9]+)(?: of [0-9]+)? (?:×|existing) [A-Z]{3,}"));
  return sumOf(page, label);
}

// "ECHPUR  7  1  Echinacea purpurea ...": code, quantity, drifts, genus.
int scheduledOn(const QString& page) {
  static const QRegularExpression row(
      QStringLiteral("^ *[A-Z]{3,}[0-9]* +([0-9]+) +[0-9]+ +[A-Z][a-z]+"),
      QRegularExpression::MultilineOption);
  return sumOf(page, row);
}

Read readBack(const Plan& plan) {
  const TemporaryFolder folder;
  const QString pdf = QString::fromStdString(folder / "plan.pdf");
  writePlanPdf(plan, pdf);
  const QString text =
      run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")})
          .output;
  static const QRegularExpression agreement(
      QStringLiteral("([0-9]+) +plants(?: \\([^)]*\\))?: labels, drawing and schedule agree"));
  Read read;
  for (const QString& page : text.split(QLatin1Char('\f'), Qt::SkipEmptyParts)) {
    const bool whole = page.contains(QStringLiteral("Whole plant schedule")) ||
                       page.contains(QStringLiteral("Overview"));
    (whole ? read.wholeSchedule : read.bedSchedules) += scheduledOn(page);
    if (!whole) read.labels += labelsOn(page);
    if (whole) read.agreements += sumOf(page, agreement);
  }
  return read;
}

void expectTotals(const Yard& yard, const Plan& plan) {
  const Read read = readBack(plan);
  const int plants = plantsOf(yard);
  ASSERT_GT(plants, 0);
  EXPECT_EQ(read.labels, plants);
  EXPECT_EQ(read.bedSchedules, plants);
  EXPECT_EQ(read.wholeSchedule, plants);
  EXPECT_EQ(read.agreements, plants);
}

TEST(PlanTotals, OfThePlantedYardReadBackAlike) {
  const Yard yard = plantedYard();
  for (const Paper paper : {Paper::Letter, Paper::A4}) expectTotals(yard, planOf(yard, paper));
}

TEST(PlanTotals, OfABedInPartsReadBackAlike) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  expectTotals(yard, planAt(yard, 24));
}

TEST(PlanTotals, OfFortyBedsReadBackAlike) {
  expectTotals(fortyBeds(), planOf(fortyBeds()));
}

TEST(PlanTotals, OfASiteInMetresReadBackAlike) {
  const Yard yard = inMetres(plantedYard());
  expectTotals(yard, planOf(yard, Paper::A4));
}

// Without a plant of it on paper the sums differ: the reading can tell.
TEST(PlanTotals, AMissingLabelIsNoticed) {
  Plan plan = planOf(plantedYard());
  for (Sheet& sheet : plan.sheets) {
    const auto label = std::find_if(
        sheet.items.begin(), sheet.items.end(),
        [](const PaperItem& item) { return std::holds_alternative<PaperLabel>(item); });
    if (label == sheet.items.end()) continue;
    sheet.items.erase(label);
    break;
  }
  EXPECT_LT(readBack(plan).labels, plantsOf(plantedYard()));
}

}  // namespace
}  // namespace tussock
