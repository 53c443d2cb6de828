// SPDX-License-Identifier: MIT
// Draws what lies in a yard on a sheet to scale, cut off at the drawing's window.
#pragma once

#include <optional>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"
#include "core/sheets/sheet.h"

namespace tussock {

// On paper, cut off at the window, as polygons in millimetres.
[[nodiscard]] std::vector<Polygon> onPaper(const Sheet& sheet, const Polygon& site);
void addPolygon(Sheet& sheet, const Polygon& site, const PaperPath& look);
void addPolyline(Sheet& sheet, const Polyline& site, Weight weight, Dash dash);
[[nodiscard]] bool insideWindow(const Sheet& sheet, PaperPoint p);

// Lot lines, buildings, paving, walls, water and buried lines: all that is not planting.
void addSite(Sheet& sheet, const Yard& yard);
// Crowns and trunks, which stand above the beds.
void addTrees(Sheet& sheet, const Yard& yard);
// Soil first and the edge last: what is laid on a bed lies between.
void addBedGround(Sheet& sheet, const Bed& bed);
void addBedEdge(Sheet& sheet, const Bed& bed, Weight outline);

[[nodiscard]] Weight weightFor(const Species* species);  // taller plants heavier
void addDriftGround(Sheet& sheet, const Drift& drift, const Species* species, Weight outline);
[[nodiscard]] double symbolRadius(const Drift& drift, double scale);  // mm
void addPlant(Sheet& sheet, const Drift& drift, const Species* species, Point at,
              PlantMark mark = PlantMark::Symbol);

}  // namespace tussock
