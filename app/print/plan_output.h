// SPDX-License-Identifier: MIT
// A plan on paper: PDF, SVG, picture and printer. The painters only draw what the sheets say, in
// millimetres; nothing is scaled to fit. Failures are std::runtime_error, in words for people.
#pragma once

#include <QImage>
#include <QPainter>
#include <QString>
#include <QStringList>

#include "core/sheets/plan.h"

class QPrinter;

namespace tussock {

// Draws with one unit of the painter to the millimetre, origin at the page's top left corner.
void paintSheet(QPainter& painter, const Sheet& sheet);

// Every sheet a page of its own size, fonts embedded, and a note to viewers not to shrink it. The
// file appears only when it is whole; one that was there before stays until then.
void writePlanPdf(const Plan& plan, const QString& path);
void writeSheetSvg(const Sheet& sheet, const QString& path);
// One file per sheet: "plan.svg" for a single sheet, else "plan-01.svg", "plan-02.svg", ... Gives
// the paths.
QStringList writePlanSvg(const Plan& plan, const QString& path);
[[nodiscard]] QImage renderSheet(const Sheet& sheet, double dotsPerInch);
void printPlan(const Plan& plan, QPrinter& printer);

}  // namespace tussock
