// SPDX-License-Identifier: MIT
#include "core/sheets/plan.h"

#include "core/catalog/plan_codes.h"
#include "core/sheets/bed_sheets.h"
#include "core/sheets/overview.h"

namespace tussock {

namespace {

void append(Plan& plan, std::vector<Sheet> sheets) {
  for (Sheet& sheet : sheets) plan.sheets.push_back(std::move(sheet));
}

}  // namespace

Plan makePlan(const Yard& yard, const Catalogue& facts, const PlanOptions& options) {
  const Yard coded = withCodes(yard);
  const PlanSource source{coded, facts, options};
  Plan plan;
  plan.yardName = printable(yard.settings.name);
  std::vector<Sheet> beds;
  for (const Bed& bed : coded.beds)
    for (Sheet& sheet : bedSheets(source, bed)) beds.push_back(std::move(sheet));
  for (const Sheet& sheet : beds) {
    plan.totals.drawn += drawnOn(sheet);
    plan.totals.labelled += sheet.plantTotal;
  }
  const PlantSums sums = sumsOf(scheduleOf(coded, facts));
  plan.totals.scheduled = sums.all();
  plan.totals.existing = sums.existing;
  append(plan, overviewSheets(source, agreement(sums, plan.totals.drawn, plan.totals.labelled)));
  append(plan, std::move(beds));
  for (std::size_t i = 0; i < plan.sheets.size(); ++i)
    addTitleStrip(plan.sheets[i], coded.settings, options, static_cast<int>(i) + 1,
                  static_cast<int>(plan.sheets.size()));
  return plan;
}

}  // namespace tussock
