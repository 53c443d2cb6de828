// SPDX-License-Identifier: MIT
#include "core/sheets/overview.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/sheets/cautions.h"
#include "core/sheets/drawing.h"
#include "core/sheets/overview_names.h"
#include "core/sheets/planting_drawing.h"
#include "core/sheets/scale.h"

namespace tussock {

namespace {

constexpr double kAround = 5.2;         // mm of paper around all that is drawn; a name fits in
constexpr double kLeastSymbol = 1.5;    // mm of radius
constexpr double kSmallestSite = 1.0;   // metres; a single point still gets a sheet
constexpr int kOverviewRounds = 3;      // of making room for the list of numbered names
constexpr double kLongestList = 900.0;  // mm of it in one line, some five lines of notes
constexpr std::string_view kSeeNext = "Names of the numbers are on the next sheet.";
constexpr std::string_view kKey =
    "Dash-dot: lot line. Dashed: crowns, fences, height limits and the strips along buried lines "
    "to "
    "dig by hand. "
    "The figure after a bed's name is its plants.";

// Smaller than that, plants are a smudge and only the drifts are drawn.
bool symbolsTell(const Yard& yard, double scale) {
  return std::all_of(yard.drifts.begin(), yard.drifts.end(), [&](const Drift& drift) {
    return symbolRadius(drift, scale) >= kLeastSymbol;
  });
}

std::vector<PaperPoint> marksOn(const Sheet& sheet, const Yard& yard) {
  std::vector<PaperPoint> marks;
  if (symbolsTell(yard, sheet.scale))
    for (const Drift& drift : yard.drifts)
      for (const Plant& plant : drift.plants) marks.push_back(toPaper(sheet, plant.at));
  for (const Tree& tree : yard.trees) marks.push_back(toPaper(sheet, tree.at));
  return marks;
}

void drawSite(Sheet& sheet, const PlanSource& source) {
  for (const Bed& bed : source.yard.beds) addBedGround(sheet, bed);
  addSite(sheet, source.yard);
  for (const Bed& bed : source.yard.beds) addBedEdge(sheet, bed, Weight::Bold);
  const bool symbols = symbolsTell(source.yard, sheet.scale);
  std::vector<DrawnDrift> planting;
  for (const Drift& drift : source.yard.drifts) {
    planting.push_back({&drift, source.facts.find(drift.species), {}});
    if (!symbols) continue;
    for (const Plant& plant : drift.plants)
      if (insideWindow(sheet, toPaper(sheet, plant.at))) planting.back().plants.push_back(plant.at);
  }
  if (symbols)
    addPlanting(sheet, planting);
  else
    addPlanting(sheet, planting, Weight::Hair);
  addTrees(sheet, source.yard);
}

Box siteOf(const Yard& yard) {
  Box box = boundsOf(yard);
  if (!box.empty() && box.width() < kSmallestSite && box.height() < kSmallestSite)
    box = box.grown(kSmallestSite);
  return box;
}

HeadText headFor(const PlanSource& source, PlantSums plants) {
  const std::size_t beds = source.yard.beds.size();
  HeadText head;
  if (!source.yard.settings.name.empty()) head.lines.push_back(source.yard.settings.name);
  head.lines.push_back(fmt::format("{} in {} {}. North is up.", countText(plants), beds,
                                   beds == 1 ? "bed" : "beds"));
  return head;
}

std::vector<Sheet> emptyOverview(const PlanSource& source) {
  Sheet sheet = blankPage(source.options.paper, Orientation::Portrait, "Overview");
  addHead(sheet, {{"Nothing is drawn yet. Draw a bed and set drifts in it, then print again."}, {}},
          source.units());
  addCautions(sheet, cautionLines(source.yard, {}, "", contentOf(sheet).width()));
  return {std::move(sheet)};
}

class Overview {
 public:
  explicit Overview(const PlanSource& source)
      : source_(source),
        site_(siteOf(source.yard)),
        rows_(scheduleRows(scheduleOf(source.yard, source.facts), source.units())),
        head_(headFor(source, sumsOf(rows_))) {}

  // The list of numbered names stands under the drawing, which it may make smaller, where that
  // settles on a short one; else on the next sheet.
  std::vector<Sheet> sheets(const std::string& totalText) const {
    Drawn drawn = drawnWith("");
    for (int round = 0; round < kOverviewRounds && !drawn.isTold(); ++round) {
      const std::string list = listOf(drawn);
      if (textWidth(list, TextSize::Note) > kLongestList) break;
      drawn = drawnWith(list);
    }
    std::vector<Sheet> further;
    if (!drawn.isTold()) {
      drawn = drawnWith(std::string(kSeeNext));
      further = listPages(source_, "Overview: names", drawn.numbered, drawn.fit.orientation);
    }
    std::vector<Sheet> result{finished(drawn, totalText)};
    for (Sheet& page : further) result.push_back(std::move(page));
    if (drawn.fit.schedule == SchedulePlace::NextPage)
      for (Sheet& page :
           schedulePages(source_, "Whole plant schedule", rows_, drawn.fit.orientation, totalText))
        result.push_back(std::move(page));
    return result;
  }

 private:
  struct Drawn {
    std::string list;  // that the fit left room for
    PageFit fit;
    Sheet sheet;
    std::vector<std::string> numbered;
    [[nodiscard]] bool isTold() const { return list == listOf(*this); }
  };
  static std::string listOf(const Drawn& drawn) {
    return drawn.numbered.empty() ? "" : "Numbers: " + listInLine(drawn.numbered) + ".";
  }

  // Names stand on and beside things, and in what room the largest scale leaves around them.
  [[nodiscard]] DrawingNeed needAt(int scale, const std::string& list) const {
    const double mm = 1000.0 / scale;
    DrawingNeed need;
    need.title = "Overview", need.head = head_;
    need.width = site_.width() * mm + 2.0 * kAround;
    need.height = site_.height() * mm + 2.0 * kAround;
    need.key = std::string(kKey) + (list.empty() ? "" : " ") + list;
    return need;
  }

  [[nodiscard]] PageFit fitWith(const std::string& list) const {
    std::vector<int> scales = siteScales(source_.units());
    while (true) {
      const auto need = [&](int scale) { return needAt(scale, list); };
      if (auto fit = fitOnPage(source_, scales, need, rows_)) return *fit;
      scales = {scales.back() * 2};  // larger than any garden; still exact
    }
  }

  [[nodiscard]] Drawn drawnWith(const std::string& list) const {
    Drawn drawn{list, fitWith(list), {}, {}};
    Sheet& sheet = drawn.sheet;
    sheet = blankPage(source_.options.paper, drawn.fit.orientation, "Overview");
    sheet.scale = drawn.fit.scale, sheet.drawing = drawn.fit.margin.window;
    const double around = kAround * sheet.scale / 1000.0;
    sheet.siteAtTopLeft = {site_.low.x - around, site_.high.y + around};
    addHead(sheet, head_, source_.units());
    drawSite(sheet, source_);
    drawn.numbered = addNames(sheet, source_.yard, marksOn(sheet, source_.yard), drawn.fit.margin);
    return drawn;
  }

  [[nodiscard]] Sheet finished(const Drawn& drawn, const std::string& totalText) const {
    Sheet sheet = drawn.sheet;
    addCautions(sheet, drawn.fit.cautions);
    if (drawn.fit.schedule == SchedulePlace::Here && !rows_.empty())
      ScheduleTable(rows_, contentOf(sheet).width())
          .draw(sheet, drawn.fit.scheduleAt, 0, rows_.size(), totalText);
    return sheet;
  }

  const PlanSource& source_;
  Box site_;
  std::vector<ScheduleRow> rows_;
  HeadText head_;
};

}  // namespace

std::vector<Sheet> overviewSheets(const PlanSource& source, const std::string& totalText) {
  if (siteOf(source.yard).empty()) return emptyOverview(source);
  return Overview(source).sheets(totalText);
}

}  // namespace tussock
