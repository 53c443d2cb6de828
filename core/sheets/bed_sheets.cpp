// SPDX-License-Identifier: MIT
#include "core/sheets/bed_sheets.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/sheets/bed_drawing.h"
#include "core/sheets/scale.h"
#include "core/sheets/set_out_table.h"
#include "core/sheets/tiles.h"

namespace tussock {

namespace {

constexpr double kLongBed = 1.15;  // length over width from which the bed's own axis is taken

// Millimetres of paper around the bed: rulers at the left and below.
constexpr double kLeft = 7.5, kRight = 5.0, kTop = 4.0, kBottom = 5.5;

Angle folded(double radians) {
  return Angle::radians(std::remainder(radians, 2.0 * std::numbers::pi));
}

double offNorth(Angle turn) {
  return std::abs(folded(turn.radians()).radians());
}

Box turnedBox(const PlanSource& source, const Bed& bed, Angle turn) {
  Box box = boundsOf(rotated(bed.outline, turn, {}));
  for (const Drift* drift : driftsIn(source.yard, bed.id))
    for (const Plant& plant : drift->plants) {
      const Point at = rotated(plant.at, turn);
      box.include(Box{at, at}.grown(drift->spacing.metres() / 2.0));
    }
  return box;
}

struct BedWork {
  const PlanSource& source;
  const Bed& bed;
  std::string name;
  Angle turn;
  Box box;  // of bed and plants, in the turned frame
  std::vector<ShownDrift> drifts;
  std::vector<ScheduleRow> rows;

  [[nodiscard]] PlantSums plants() const { return sumsOf(rows); }
  [[nodiscard]] Box bedBox() const { return boundsOf(rotated(bed.outline, turn, {})); }
};

std::string keyFor(const Baseline& baseline) {
  return "Cross: to plant. Dot: there already. Ring: the plant that is staked out. Heavier "
         "outline: taller plant. " +
         baseline.text();
}

HeadText headFor(const BedWork& work) {
  const std::string viewing = describeViewing(work.bed.viewing);
  std::string first = viewing.empty() ? "" : fmt::format("Seen from {} · ", viewing);
  first += fmt::format("{} in {} {} · {}", countText(work.plants()), work.drifts.size(),
                       work.drifts.size() == 1 ? "drift" : "drifts",
                       formatArea(areaOf(work.bed.outline), work.source.units()));
  return {{first}, {}};
}

SetOutTable setOutTable(const BedWork& work, const Baseline& baseline) {
  return {setOut(work.source.yard, work.bed, work.turn, baseline), work.source.units()};
}

DrawingNeed needAt(const BedWork& work, int scale) {
  const double mm = 1000.0 / scale;
  const Baseline baseline = baselineFor(work.box, work.bedBox(), scale, work.source.units());
  const double offset = baseline.offset.metres() * mm;
  return {work.name,
          headFor(work),
          work.box.width() * mm + 2.0 * offset + kLeft + kRight,
          work.box.height() * mm + offset + kTop + kBottom,
          work.drifts.size(),
          widestLabel(work.drifts),
          {kLeft, 0.0, 0.0, kBottom},
          keyFor(baseline),
          [&work, baseline](double width) { return setOutTable(work, baseline).height(width); }};
}

// The window's top left corner in the turned frame.
Point cornerAt(const BedWork& work, const Baseline& baseline, int scale) {
  return {baseline.a.x - kLeft * scale / 1000.0, work.box.high.y + kTop * scale / 1000.0};
}

std::vector<Sheet> onOnePage(const BedWork& work, int scale, const PageFit& fit) {
  Sheet sheet = blankPage(work.source.options.paper, fit.orientation, work.name);
  const Baseline baseline = baselineFor(work.box, work.bedBox(), scale, work.source.units());
  sheet.scale = scale, sheet.turn = work.turn, sheet.drawing = fit.margin.window;
  sheet.siteAtTopLeft = cornerAt(work, baseline, scale);
  addHead(sheet, headFor(work), work.source.units());
  drawBed(sheet, work.source, work.bed, work.drifts, fit.margin, baseline);
  addCautions(sheet, fit.cautions);
  const std::string total = agreement(work.plants(), drawnOn(sheet), sheet.plantTotal);
  if (fit.schedule == SchedulePlace::Here && !work.rows.empty())
    ScheduleTable(work.rows, contentOf(sheet).width())
        .draw(sheet, fit.scheduleAt, 0, work.rows.size(), total);
  const SetOutTable stakes = setOutTable(work, baseline);
  if (fit.below && stakes.size() > 0) {
    PaperBox room = *fit.below;
    room.top += SetOutTable::kGap;
    stakes.draw(sheet, room, 0);
  }
  std::vector<Sheet> sheets{std::move(sheet)};
  if (fit.schedule == SchedulePlace::NextPage)
    for (Sheet& page : schedulePages(work.source, work.name + ": plant schedule", work.rows,
                                     fit.orientation, total))
      sheets.push_back(std::move(page));
  if (!fit.below) stakes.add(sheets, work.source, work.name, work.rows);
  return sheets;
}

constexpr int kMostParts = 40;  // of one bed, unless the scale asked for takes more

std::vector<int> scalesFor(const PlanSource& source) {
  if (source.options.bedScale) return {*source.options.bedScale};
  return bedScales(source.units());
}

std::vector<Sheet> onTiles(const BedWork& work, int scale) {
  const Baseline baseline = baselineFor(work.box, work.bedBox(), scale, work.source.units());
  const DrawingNeed need = needAt(work, scale);
  TileGrid grid = tileGrid(work.source, work.rows, need);
  grid.topLeft = cornerAt(work, baseline, scale);
  grid.scale = scale, grid.turn = work.turn;
  while (grid.columns * grid.rows < kMostParts && !labelsFit(work.source, work.bed, grid))
    grid = finer(grid);
  std::vector<Sheet> sheets = tileSheets(work.source, work.bed, grid, baseline);
  int drawn = 0, labelled = 0;
  for (const Sheet& sheet : sheets) drawn += drawnOn(sheet), labelled += sheet.plantTotal;
  for (Sheet& page : schedulePages(work.source, work.name + ": plant schedule", work.rows,
                                   grid.orientation, agreement(work.plants(), drawn, labelled)))
    sheets.push_back(std::move(page));
  setOutTable(work, baseline).add(sheets, work.source, work.name, work.rows);
  return sheets;
}

// The usual scale for parts, or a smaller one when even that would take a ream of paper.
int scaleForTiles(const BedWork& work) {
  const int usual = scalesFor(work.source).back();
  if (work.source.options.bedScale) return usual;
  for (const int scale : siteScales(work.source.units())) {
    if (scale < usual) continue;
    const DrawingNeed need = needAt(work, scale);
    const TileGrid grid = tileGrid(work.source, work.rows, need);
    if (grid.columns * grid.rows <= kMostParts) return scale;
  }
  return siteScales(work.source.units()).back();
}

}  // namespace

Angle turnFor(const Bed& bed) {
  const OrientedRectangle rectangle = smallestRectangle(bed.outline.outer, Length());
  const bool isLong = rectangle.length > kLongBed * rectangle.width;
  const Angle across = isLong ? -rectangle.axis : Angle();
  const bool seen = !bed.viewing.allRound && !bed.viewing.from.empty();
  Angle best;
  double least = 1e9;
  for (int quarter = 0; quarter < 4; ++quarter) {
    const Angle turn = folded(across.radians() + quarter * std::numbers::pi / 2.0);
    // Azimuths run clockwise: turned anticlockwise, a side at azimuth v comes to lie at v - turn.
    const double off = seen ? offNorth(Angle::radians(bed.viewing.from.front().radians() -
                                                      turn.radians() - std::numbers::pi))
                            : offNorth(turn);
    if (off < least - 1e-9) least = off, best = turn;
  }
  return best;
}

std::vector<Sheet> bedSheets(const PlanSource& source, const Bed& bed) {
  BedWork work{source, bed, bed.name.empty() ? "Bed" : printable(bed.name), turnFor(bed), {},
               {},     {}};
  work.box = turnedBox(source, bed, work.turn);
  work.drifts = shownDrifts(source, bed, [](Point) { return true; });
  work.rows = scheduleRows(scheduleOf(source.yard, source.facts, bed.id), source.units());
  const auto need = [&](int scale) { return needAt(work, scale); };
  if (const auto fit = fitOnPage(source, scalesFor(source), need, work.rows))
    return onOnePage(work, fit->scale, *fit);
  return onTiles(work, scaleForTiles(work));
}

}  // namespace tussock
