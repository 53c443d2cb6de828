// SPDX-License-Identifier: MIT
#include "core/sheets/tiles.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/sheets/cautions.h"

namespace tussock {

namespace {

constexpr double kSideText = 5.0;    // mm beside a part for the words on a match line
constexpr double kMatchText = 32.0;  // mm of a label row given to them above and below

std::vector<ScheduleRow> rowsOf(const PlanSource& source, const Bed& bed) {
  return scheduleRows(scheduleOf(source.yard, source.facts, bed.id), source.units());
}

std::string partTitle(const std::string& bed, int part, int parts) {
  return fmt::format("{}, part {} of {}", bed, part, parts);
}

PaperBox tileRoom(const PlanSource& source, const std::vector<ScheduleRow>& rows,
                  const DrawingNeed& need, Orientation orientation) {
  Sheet blank = blankPage(source.options.paper, orientation, partTitle(need.title, 99, 99));
  blank.scale = 1.0;  // it carries a scale bar
  HeadText head = need.head;
  head.key = TileKey{};
  PaperBox room =
      bodyOf(blank, head, cautionLines(source.yard, rows, need.key, contentOf(blank).width()));
  return {room.left + kSideText, room.top + kLabelBand, room.right - kSideText,
          room.bottom - kLabelBand};
}

int piecesOf(double whole, double piece) {
  return std::max(1, static_cast<int>(std::ceil(whole / piece - 1e-9)));
}

// The ground of one part, in the turned frame. Its lower and right edges belong to the next part.
struct Part {
  int column = 0, row = 0, number = 0;
  Box ground;
};

int cellOf(double along, double size, int count) {
  return std::clamp(static_cast<int>(std::floor(along / size)), 0, count - 1);
}

class Tiler {
 public:
  Tiler(const PlanSource& source, const Bed& bed, const TileGrid& grid)
      : source_(source), bed_(bed), grid_(grid), rows_(rowsOf(source, bed)) {
    key_.columns = grid.columns, key_.rows = grid.rows;
    for (int row = 0; row < grid.rows; ++row)
      for (int column = 0; column < grid.columns; ++column) addPart(column, row);
  }

  std::vector<Sheet> sheets(const Baseline& baseline) const {
    std::vector<Sheet> result;
    for (const Part& part : parts_) result.push_back(sheetOf(part, baseline));
    return result;
  }

  [[nodiscard]] bool labelsFit() const {
    Sheet sheet = blankPage(source_.options.paper, grid_.orientation, "");
    placeWindow(sheet);
    return std::all_of(parts_.begin(), parts_.end(), [&](const Part& part) {
      const auto drifts = driftsOn(part);
      return drifts.size() <= roomFor(marginOf(sheet), widestLabel(drifts));
    });
  }

 private:
  void addPart(int column, int row) {
    const double wide = grid_.width * grid_.scale / 1000.0;
    const double high = grid_.height * grid_.scale / 1000.0;
    const Point top = grid_.topLeft + Point{wide * column, -high * row};
    Part part{column, row, 0, {{top.x, top.y - high}, {top.x + wide, top.y}}};
    const Polygon ground = rotated(rectangle(part.ground.low, part.ground.high), -grid_.turn, {});
    const bool used = intersects(ground, bed_.outline) || !driftsOn(part).empty();
    if (used) part.number = static_cast<int>(parts_.size()) + 1, parts_.push_back(part);
    key_.parts.push_back(part.number);
  }

  [[nodiscard]] std::vector<ShownDrift> driftsOn(const Part& part) const {
    const double wide = part.ground.width(), high = part.ground.height();
    return shownDrifts(source_, bed_, [&](Point at) {
      const Point step = rotated(at, grid_.turn) - grid_.topLeft;
      return cellOf(step.x, wide, grid_.columns) == part.column &&
             cellOf(-step.y, high, grid_.rows) == part.row;
    });
  }

  // The words on match lines stand where labels would start.
  [[nodiscard]] static LabelMargin marginOf(const Sheet& sheet) {
    const PaperBox& w = sheet.drawing;
    return {
        w,
        {w.left + kMatchText, w.top - kLabelBand, contentOf(sheet).right, w.bottom + kLabelBand},
        Sides::AboveAndBelow,
        {}};
  }

  void placeWindow(Sheet& sheet) const {
    const PaperBox room = tileRoom(source_, rows_, grid_.need, grid_.orientation);
    const double left = (room.left + room.right - grid_.width) / 2.0;
    const double top = (room.top + room.bottom - grid_.height) / 2.0;
    sheet.drawing = {left, top, left + grid_.width, top + grid_.height};
  }

  [[nodiscard]] Sheet sheetOf(const Part& part, const Baseline& baseline) const {
    Sheet sheet =
        blankPage(source_.options.paper, grid_.orientation,
                  partTitle(grid_.need.title, part.number, static_cast<int>(parts_.size())));
    placeWindow(sheet);
    sheet.scale = grid_.scale, sheet.turn = grid_.turn;
    sheet.siteAtTopLeft = {part.ground.low.x, part.ground.high.y};
    HeadText head = grid_.need.head;
    head.key = key_;
    head.key->column = part.column, head.key->row = part.row;
    addHead(sheet, head, source_.units());
    const PaperBox page = contentOf(sheet);
    LabelMargin margin = marginOf(sheet);
    margin.rulers = rulersOn(sheet, baseline);
    addMatchWords(sheet, part);  // first, so that other texts keep clear of them
    drawBed(sheet, source_, bed_, driftsOn(part), margin, baseline);
    addMatchLines(sheet, part);
    addCautions(sheet, cautionLines(source_.yard, rows_, grid_.need.key, page.width()));
    return sheet;
  }

  [[nodiscard]] int numberAt(int column, int row) const {
    if (column < 0 || row < 0 || column >= grid_.columns || row >= grid_.rows) return 0;
    return key_.partAt(column, row);
  }

  // The neighbour at each side that has one.
  struct Match {
    PaperPoint from, to;
    int neighbour = 0;
    PaperText words;
  };
  [[nodiscard]] std::vector<Match> matchesOf(const Sheet& sheet, const Part& part) const {
    const PaperBox& w = sheet.drawing;
    const double middle = (w.top + w.bottom) / 2.0;
    std::vector<Match> matches{
        {{w.left, w.bottom}, {w.left, w.top}, numberAt(part.column - 1, part.row), {}},
        {{w.right, w.bottom}, {w.right, w.top}, numberAt(part.column + 1, part.row), {}},
        {{w.left, w.top}, {w.right, w.top}, numberAt(part.column, part.row - 1), {}},
        {{w.left, w.bottom}, {w.right, w.bottom}, numberAt(part.column, part.row + 1), {}}};
    const std::array<PaperPoint, 4> places{{{w.left - 1.6, middle},
                                            {w.right + 3.4, middle},
                                            {w.left, w.top - 1.8},
                                            {w.left, w.bottom + 3.8}}};
    for (std::size_t i = 0; i < matches.size(); ++i) {
      PaperText& words = matches[i].words;
      words = {places[i], fmt::format("match line, part {}", matches[i].neighbour), TextSize::Note};
      if (i < 2) words.align = Align::Centre, words.turnDegrees = 90.0;
    }
    std::erase_if(matches, [](const Match& match) { return match.neighbour == 0; });
    return matches;
  }

  void addMatchWords(Sheet& sheet, const Part& part) const {
    for (const Match& match : matchesOf(sheet, part)) sheet.items.emplace_back(match.words);
  }

  void addMatchLines(Sheet& sheet, const Part& part) const {
    for (const Match& match : matchesOf(sheet, part))
      addLine(sheet, match.from, match.to, Weight::Bold, Dash::DashDot);
  }

  const PlanSource& source_;
  const Bed& bed_;
  const TileGrid& grid_;
  std::vector<ScheduleRow> rows_;
  std::vector<Part> parts_;
  TileKey key_;
};

}  // namespace

TileGrid tileGrid(const PlanSource& source, const std::vector<ScheduleRow>& rows,
                  const DrawingNeed& need) {
  TileGrid best;
  for (const Orientation orientation : {Orientation::Landscape, Orientation::Portrait}) {
    const PaperBox room = tileRoom(source, rows, need, orientation);
    TileGrid grid;
    grid.orientation = orientation, grid.need = need;
    grid.columns = piecesOf(need.width, room.width()),
    grid.rows = piecesOf(need.height, room.height());
    grid.width = need.width / grid.columns, grid.height = need.height / grid.rows;
    if (best.width == 0.0 || grid.columns * grid.rows < best.columns * best.rows) best = grid;
  }
  return best;
}

TileGrid finer(TileGrid grid) {
  grid.width >= grid.height ? ++grid.columns : ++grid.rows;
  grid.width = grid.need.width / grid.columns, grid.height = grid.need.height / grid.rows;
  return grid;
}

bool labelsFit(const PlanSource& source, const Bed& bed, const TileGrid& grid) {
  return Tiler(source, bed, grid).labelsFit();
}

std::vector<Sheet> tileSheets(const PlanSource& source, const Bed& bed, const TileGrid& grid,
                              const Baseline& baseline) {
  return Tiler(source, bed, grid).sheets(baseline);
}

}  // namespace tussock
