// SPDX-License-Identifier: MIT
// A printed page as data: everything on it, in millimetres from the top left corner, y downwards.
#pragma once

#include <array>
#include <string>
#include <variant>
#include <vector>

#include "core/catalog/species.h"
#include "core/geometry/point.h"

namespace tussock {

// Millimetres on paper. A type of its own so that it is never taken for site metres.
struct PaperPoint {
  double x = 0.0, y = 0.0;
  bool operator==(const PaperPoint&) const = default;
};
struct PaperBox {
  double left = 0.0, top = 0.0, right = 0.0, bottom = 0.0;
  [[nodiscard]] double width() const { return right - left; }
  [[nodiscard]] double height() const { return bottom - top; }
};

enum class Weight { Hair, Fine, Medium, Bold };  // 0.18, 0.25, 0.35, 0.50 mm
[[nodiscard]] double millimetres(Weight weight);
enum class TextSize { Note, Body, Title };  // 8, 10, 14 pt
[[nodiscard]] double points(TextSize size);
enum class Align { Left, Centre, Right };
enum class Dash { Solid, Dashed, DashDot };
// What a fill is, so that the painter picks a wash that survives black and white.
enum class Wash { None, Soil, Paving, Building, Crown, Hedge, Drift, Paper, Ink };

struct PaperPath {
  std::vector<std::vector<PaperPoint>> rings;
  bool closed = true;
  Weight weight = Weight::Fine;
  Dash dash = Dash::Solid;
  bool stroked = true;
  Wash wash = Wash::None;
  Rgb colour;  // for Wash::Drift
};
struct PaperText {
  PaperPoint at;  // baseline
  std::string text;
  TextSize size = TextSize::Body;
  Align align = Align::Left;
  bool bold = false, italic = false, halo = false;
  double turnDegrees = 0.0;  // anticlockwise
};
// A plant symbol at its size to scale.
enum class PlantMark { Symbol, CentreOnly };
struct PaperPlant {
  PaperPoint at;
  double radius = 0.0;  // mm
  Habit habit = Habit::Forb;
  FlowerForm form = FlowerForm::None;
  Rgb colour;
  Weight weight = Weight::Hair;
  bool existing = false;
  PlantMark mark = PlantMark::Symbol;
};
// A count label with a leader that ends inside its drift; kept apart so that totals can be tested.
struct PaperLabel {
  PaperText text;  // "7 × ECHPUR"
  std::vector<PaperPoint> leader;
  Id<Drift> drift;
  int count = 0;
  std::string code;
};
using PaperItem = std::variant<PaperPath, PaperText, PaperPlant, PaperLabel>;

struct ScheduleRow {
  std::string code, botanicalName, commonName, size, spacing, height;
  int quantity = 0, drifts = 0;
  StockSize stock = StockSize::Plug;
  std::array<bool, 12> bloom{};
  std::string caution;   // if eaten, and sap
  std::string handling;  // thorns, edges, and other things to mind
  std::string regulated;
};

struct Sheet {
  std::string title;  // "Walk bed", "Overview"
  double widthMm = 0.0, heightMm = 0.0;
  double scale = 0.0;   // 24 for 1:24; 0 when nothing is to scale
  PaperBox drawing;     // the drawing's window on the page
  Angle turn;           // of the site on paper, anticlockwise: true north points up when 0
  Point siteAtTopLeft;  // site point at the drawing's top left, turned about the site's origin
  std::vector<PaperItem> items;
  std::vector<ScheduleRow> schedule;
  int plantTotal = 0;  // of labels on this sheet
};
// Where a site point lies on the page of a sheet to scale.
[[nodiscard]] PaperPoint toPaper(const Sheet& sheet, Point site);

}  // namespace tussock
