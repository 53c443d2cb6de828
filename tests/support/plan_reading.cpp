// SPDX-License-Identifier: MIT
#include "tests/support/plan_reading.h"

#include <string>

#include <gtest/gtest.h>

#include "core/sheets/paper_geometry.h"
#include "core/sheets/text_width.h"
#include "tests/support/planted_yard.h"

namespace tussock::test {

namespace {

int plantsIn(const Yard& yard) {
  int count = 0;
  for (const Drift& drift : yard.drifts) count += static_cast<int>(drift.plants.size());
  return count;
}

struct Sums {
  int drawn = 0, labelled = 0, scheduled = 0;
};
// Counted from what is on the pages, bed sheets and overview apart.
Sums sumsOf(const Plan& plan) {
  Sums sums;
  bool overview = true;
  for (const Sheet& sheet : plan.sheets) {
    if (!sheet.title.starts_with("Overview") && sheet.title != "Whole plant schedule")
      overview = false;
    if (overview)
      for (const ScheduleRow& row : sheet.schedule) sums.scheduled += row.quantity;
    for (const PaperLabel& label : itemsOf<PaperLabel>(sheet)) {
      sums.labelled += label.count;
      EXPECT_EQ(std::stoi(label.text.text), label.count) << label.text.text;
    }
    if (!overview) sums.drawn += static_cast<int>(itemsOf<PaperPlant>(sheet).size());
  }
  return sums;
}

double turnOf(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool segmentsCross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
  return turnOf(a, b, c) * turnOf(a, b, d) < -1e-12 && turnOf(c, d, a) * turnOf(c, d, b) < -1e-12;
}

void expectInsideMargins(const Sheet& sheet) {
  constexpr double kSlack = 0.01;
  const auto inside = [&](PaperPoint p) {
    return p.x >= kPageEdge - kSlack && p.y >= kPageEdge - kSlack &&
           p.x <= sheet.widthMm - kPageEdge + kSlack && p.y <= sheet.heightMm - kPageEdge + kSlack;
  };
  for (const PaperPath& path : itemsOf<PaperPath>(sheet))
    for (const auto& ring : path.rings)
      for (const PaperPoint p : ring)
        EXPECT_TRUE(inside(p)) << sheet.title << " " << p.x << " " << p.y;
  for (const PaperText& text : textsOf(sheet)) {
    const PaperBox box = boxOf(text);
    EXPECT_TRUE(inside({box.left, box.top}) && inside({box.right, box.bottom}))
        << sheet.title << ": " << text.text;
  }
}

}  // namespace

PlanOptions optionsFor(Paper paper) {
  PlanOptions options;
  options.paper = paper;
  options.date = Date{std::chrono::year{2027}, std::chrono::April, std::chrono::day{14}};
  return options;
}

Plan planOf(const Yard& yard, Paper paper) {
  return makePlan(yard, smallCatalogue(), optionsFor(paper));
}

Plan planAt(const Yard& yard, int bedScale) {
  PlanOptions options = optionsFor(Paper::Letter);
  options.bedScale = bedScale;
  return makePlan(yard, smallCatalogue(), options);
}

std::vector<PaperText> textsOf(const Sheet& sheet) {
  auto texts = itemsOf<PaperText>(sheet);
  for (const PaperLabel& label : itemsOf<PaperLabel>(sheet)) texts.push_back(label.text);
  return texts;
}

bool hasText(const Sheet& sheet, std::string_view part) {
  for (const PaperText& text : textsOf(sheet))
    if (text.text.find(part) != std::string::npos) return true;
  return false;
}

void expectAllAgree(const Yard& yard, const Plan& plan) {
  const Sums sums = sumsOf(plan);
  const int plants = plantsIn(yard);
  EXPECT_EQ(sums.drawn, plants);
  EXPECT_EQ(sums.labelled, plants);
  EXPECT_EQ(sums.scheduled, plants);
  EXPECT_EQ(plan.totals.drawn, plants);
  EXPECT_EQ(plan.totals.labelled, plants);
  EXPECT_EQ(plan.totals.scheduled, plants);
}

int crossings(const Sheet& sheet) {
  const auto labels = itemsOf<PaperLabel>(sheet);
  int count = 0;
  for (std::size_t i = 0; i < labels.size(); ++i)
    for (std::size_t j = i + 1; j < labels.size(); ++j)
      for (std::size_t a = 1; a < labels[i].leader.size(); ++a)
        for (std::size_t b = 1; b < labels[j].leader.size(); ++b)
          count += segmentsCross(labels[i].leader[a - 1], labels[i].leader[a],
                                 labels[j].leader[b - 1], labels[j].leader[b]);
  return count;
}

void expectTextsApart(const Sheet& sheet) {
  const auto texts = textsOf(sheet);
  for (std::size_t i = 0; i < texts.size(); ++i)
    for (std::size_t j = i + 1; j < texts.size(); ++j)
      EXPECT_FALSE(overlap(boxOf(texts[i]), boxOf(texts[j])))
          << sheet.title << ": " << texts[i].text << " | " << texts[j].text;
}

void expectSoundPages(const Plan& plan) {
  for (const Sheet& sheet : plan.sheets) {
    expectInsideMargins(sheet);
    expectTextsApart(sheet);
    EXPECT_EQ(crossings(sheet), 0) << sheet.title;
  }
}

}  // namespace tussock::test
