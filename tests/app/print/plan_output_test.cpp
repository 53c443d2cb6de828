// SPDX-License-Identifier: MIT
// Plans on paper, read back with tools that had no part in writing them: qpdf and poppler-utils.
#include "app/print/plan_output.h"

#include <cmath>
#include <QFile>
#include <QFileInfo>
#include <QPrinter>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "tests/app/print/run_tool.h"
#include "tests/support/planted_yard.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

using test::Answer;
using test::run;

Plan plantedPlanOn(Paper paper, UnitSystem units) {
  Draft draft(test::plantedYard());
  Settings settings = draft.yard().settings;
  settings.units = units;
  draft.put(settings);
  PlanOptions options;
  options.paper = paper;
  options.date = Date{std::chrono::year{2027}, std::chrono::April, std::chrono::day{14}};
  return makePlan(draft.yard(), test::smallCatalogue(), options);
}

class PlanPdf : public testing::Test {
 protected:
  void SetUp() override { writePlanPdf(plan_, path_); }

  test::TemporaryFolder folder_;
  QString path_ = QString::fromStdString(folder_ / "plan.pdf");
  Plan plan_ = plantedPlanOn(Paper::Letter, UnitSystem::FeetInches);
};

TEST_F(PlanPdf, IsSoundByQpdf) {
  const Answer answer = run(QStringLiteral("qpdf"), {QStringLiteral("--check"), path_});
  EXPECT_EQ(answer.exitCode, 0) << answer.output.toStdString();
}

TEST_F(PlanPdf, AsksViewersNotToShrinkIt) {
  const Answer answer = run(QStringLiteral("qpdf"),
                            {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"),
                             path_, QStringLiteral("-")});
  EXPECT_TRUE(answer.output.contains(QStringLiteral("/PrintScaling /None")));
}

TEST_F(PlanPdf, IsTitledAfterItsYard) {
  EXPECT_TRUE(run(QStringLiteral("pdfinfo"), {path_})
                  .output.contains(QStringLiteral("Planting plan: Tannery Lane front yard")));
}

TEST_F(PlanPdf, EmbedsEveryFont) {
  const Answer answer = run(QStringLiteral("pdffonts"), {path_});
  const QStringList lines = answer.output.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  ASSERT_GE(lines.size(), 5);  // two lines of heads, then regular, bold and italic
  for (const QString& line : lines.mid(2)) {
    EXPECT_TRUE(line.contains(QStringLiteral("Lato"))) << line.toStdString();
    EXPECT_TRUE(line.contains(QStringLiteral(" yes "))) << line.toStdString();
  }
}

TEST_F(PlanPdf, HoldsEveryLabelAndBotanicalNameAsText) {
  const Answer answer =
      run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path_, QStringLiteral("-")});
  const QString text = answer.output;
  int labels = 0;
  for (const Sheet& sheet : plan_.sheets) {
    for (const PaperItem& item : sheet.items)
      if (const auto* label = std::get_if<PaperLabel>(&item)) {
        ++labels;
        EXPECT_TRUE(text.contains(QString::fromStdString(label->text.text))) << label->text.text;
      }
    for (const ScheduleRow& row : sheet.schedule) {
      // A cultivar may stand on a line of its own.
      const QStringList parts =
          QString::fromStdString(row.botanicalName).split(QStringLiteral(" '"));
      for (const QString& part : parts) EXPECT_TRUE(text.contains(part)) << part.toStdString();
    }
  }
  EXPECT_EQ(labels, 15);
}

// ANSI/ASME Y14.1 size A: 8.5 x 11 in is 612 x 792 pt.
TEST_F(PlanPdf, LetterPagesAreExactlyLetter) {
  const Answer answer =
      run(QStringLiteral("pdfinfo"), {QStringLiteral("-f"), QStringLiteral("1"),
                                      QStringLiteral("-l"), QStringLiteral("99"), path_});
  const auto pages = static_cast<qsizetype>(plan_.sheets.size());
  EXPECT_EQ(answer.output.count(QStringLiteral("612 x 792 pts (letter)")) +
                answer.output.count(QStringLiteral("792 x 612 pts (letter)")),
            pages)
      << answer.output.toStdString();
}

// ISO 216: A4 is 210 x 297 mm, 595.276 x 841.890 pt.
TEST_F(PlanPdf, A4PagesAreExactlyA4) {
  const Plan plan = plantedPlanOn(Paper::A4, UnitSystem::Metres);
  writePlanPdf(plan, path_);
  const Answer answer =
      run(QStringLiteral("pdfinfo"), {QStringLiteral("-f"), QStringLiteral("1"),
                                      QStringLiteral("-l"), QStringLiteral("99"), path_});
  EXPECT_EQ(answer.output.count(QStringLiteral("595.276 x 841.89 pts (A4)")) +
                answer.output.count(QStringLiteral("841.89 x 595.276 pts (A4)")),
            static_cast<qsizetype>(plan.sheets.size()))
      << answer.output.toStdString();
}

// Columns of the picture's row at `y` that are dark, first and last.
std::pair<int, int> darkSpan(const QImage& image, int y, int from, int to) {
  int first = -1, last = -1;
  for (int x = from; x < to; ++x)
    if (qGray(image.pixel(x, y)) < 128) {
      if (first < 0) first = x;
      last = x;
    }
  return {first, last};
}

PaperBox scaleBarOf(const Sheet& sheet) {
  PaperBox bar{1e9, 0, -1e9, 0};
  for (const PaperItem& item : sheet.items) {
    const auto* path = std::get_if<PaperPath>(&item);
    if (!path || !path->closed || path->rings.size() != 1 || path->rings[0].size() != 4) continue;
    const auto& corners = path->rings[0];
    if (path->weight != Weight::Hair || corners[0].y > 18.0) continue;
    bar.left = std::min(bar.left, corners[0].x), bar.right = std::max(bar.right, corners[1].x);
    bar.top = corners[0].y, bar.bottom = corners[2].y;
  }
  return bar;
}

// What the page's own text says the bar measures on paper, in millimetres, one a page in order.
std::vector<double> barLengthsSaid(const QString& pdf) {
  const QString text =
      run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")})
          .output;
  static const QRegularExpression said(
      QStringLiteral("Measure this bar: .+ is ([0-9.]+) (in|cm|mm) on paper"));
  std::vector<double> lengths;
  for (auto found = said.globalMatch(text); found.hasNext();) {
    const auto match = found.next();
    const double inUnit = match.captured(1).toDouble();
    const QString unit = match.captured(2);
    lengths.push_back(inUnit * (unit == QLatin1String("in")   ? 25.4
                                : unit == QLatin1String("cm") ? 10.0
                                                              : 1.0));
  }
  return lengths;
}

class MeasuredPdf : public testing::TestWithParam<std::pair<Paper, UnitSystem>> {};

// Printed and measured against its own words: poppler's picture at 400 dots an inch, the bar's ends
// found in its pixels. The lines at the ends add half a hair each side, and the words round.
TEST_P(MeasuredPdf, TheScaleBarMeasuresWhatThePageSays) {
  constexpr double kDots = 400.0 / 25.4, kHair = 0.18;
  const test::TemporaryFolder folder;
  const QString pdf = QString::fromStdString(folder / "plan.pdf");
  const QString stem = QString::fromStdString(folder / "page");
  const Plan plan = plantedPlanOn(GetParam().first, GetParam().second);
  writePlanPdf(plan, pdf);
  ASSERT_EQ(run(QStringLiteral("pdftoppm"),
                {QStringLiteral("-r"), QStringLiteral("400"), QStringLiteral("-gray"), pdf, stem})
                .exitCode,
            0);
  const std::vector<double> said = barLengthsSaid(pdf);
  std::size_t drawn = 0;
  for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
    const Sheet& sheet = plan.sheets[i];
    if (sheet.scale == 0.0) continue;
    ASSERT_LT(drawn, said.size());
    const double real = said[drawn++];
    const QImage image(QStringLiteral("%1-%2.pgm").arg(stem).arg(i + 1));
    ASSERT_FALSE(image.isNull());
    const PaperBox bar = scaleBarOf(sheet);
    const int y = static_cast<int>(std::lround((bar.top + bar.bottom) / 2.0 * kDots));
    const auto [first, last] = darkSpan(image, y, static_cast<int>((bar.left - 2.0) * kDots),
                                        static_cast<int>((bar.right + 2.0) * kDots));
    const double measured = (last - first + 1) / kDots - kHair;
    EXPECT_NEAR(measured, real, 0.002 * real) << sheet.title;
  }
  EXPECT_EQ(drawn, said.size());
  EXPECT_GE(drawn, 2u);
}

INSTANTIATE_TEST_SUITE_P(Papers, MeasuredPdf,
                         testing::Values(std::pair(Paper::Letter, UnitSystem::FeetInches),
                                         std::pair(Paper::A4, UnitSystem::Metres)));

TEST_F(PlanPdf, AFailedWriteSaysWhereAndLeavesTheOldFile) {
  const QString nowhere = QString::fromStdString(folder_ / "no such folder/plan.pdf");
  try {
    writePlanPdf(plan_, nowhere);
    FAIL() << "nothing was thrown";
  } catch (const std::runtime_error& error) {
    EXPECT_NE(std::string(error.what()).find("no such folder/plan.pdf"), std::string::npos)
        << error.what();
  }
  EXPECT_TRUE(QFileInfo::exists(path_));
}

TEST(PlanSvg, HasOneWellFormedFilePerSheetWithItsSizeInMillimetres) {
  const test::TemporaryFolder folder;
  const Plan plan = plantedPlanOn(Paper::Letter, UnitSystem::FeetInches);
  const QStringList paths = writePlanSvg(plan, QString::fromStdString(folder / "plan.svg"));
  ASSERT_EQ(paths.size(), static_cast<qsizetype>(plan.sheets.size()));
  for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
    QFile file(paths[static_cast<qsizetype>(i)]);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    ASSERT_TRUE(xml.readNextStartElement());
    EXPECT_EQ(xml.name(), QLatin1String("svg"));
    const QString width = xml.attributes().value(QLatin1String("width")).toString();
    const QString height = xml.attributes().value(QLatin1String("height")).toString();
    EXPECT_TRUE(width.endsWith(QLatin1String("mm")));
    EXPECT_DOUBLE_EQ(width.chopped(2).toDouble(), plan.sheets[i].widthMm);
    EXPECT_DOUBLE_EQ(height.chopped(2).toDouble(), plan.sheets[i].heightMm);
    while (!xml.atEnd()) xml.readNext();
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  }
}

// On a machine without the font the page still looks and measures the same.
TEST(PlanSvg, NamesNoFontAndKeepsTheWordsInItsDescription) {
  const test::TemporaryFolder folder;
  const Plan plan = plantedPlanOn(Paper::Letter, UnitSystem::FeetInches);
  const QString path = QString::fromStdString(folder / "sheet.svg");
  writeSheetSvg(plan.sheets[1], path);
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  QString words;
  int letters = 0;
  while (!xml.atEnd()) {
    xml.readNext();
    if (!xml.isStartElement()) continue;
    EXPECT_NE(xml.name(), QLatin1String("text"));
    letters += xml.name() == QLatin1String("path");
    if (xml.name() == QLatin1String("desc")) words = xml.readElementText();
  }
  ASSERT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  EXPECT_GT(letters, 100);
  int labels = 0;
  for (const PaperItem& item : plan.sheets[1].items)
    if (const auto* label = std::get_if<PaperLabel>(&item)) {
      ++labels;
      EXPECT_TRUE(words.contains(QString::fromStdString(label->text.text))) << label->text.text;
    }
  EXPECT_GT(labels, 0);
}

TEST(PlanPicture, HasThePixelsOfItsPaperAndInkOnIt) {
  const Plan plan = plantedPlanOn(Paper::Letter, UnitSystem::FeetInches);
  const QImage image = renderSheet(plan.sheets[1], 100.0);
  EXPECT_EQ(image.size(), QSize(1100, 850));
  int ink = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) ink += qGray(image.pixel(x, y)) < 100;
  EXPECT_GT(ink, 5000);
  EXPECT_EQ(image.pixel(5, 5), qRgb(255, 255, 255));
}

TEST(PlanPrinter, PrintsEverySheetOnItsOwnPage) {
  const test::TemporaryFolder folder;
  const Plan plan = plantedPlanOn(Paper::Letter, UnitSystem::FeetInches);
  QPrinter printer(QPrinter::HighResolution);
  const QString path = QString::fromStdString(folder / "printed.pdf");
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(path);
  printPlan(plan, printer);
  const Answer answer = run(QStringLiteral("pdfinfo"), {path});
  EXPECT_TRUE(
      answer.output.simplified().contains(QStringLiteral("Pages: %1 ").arg(plan.sheets.size())))
      << answer.output.toStdString();
}

}  // namespace
}  // namespace tussock
