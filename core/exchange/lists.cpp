// SPDX-License-Identifier: MIT
#include "core/exchange/lists.h"

#include "core/catalog/plan_codes.h"
#include "core/exchange/csv.h"

namespace tussock {

namespace {

std::string spacingOf(const ScheduleLine& line, UnitSystem units) {
  const std::string closest = formatPlantSize(line.closest, units);
  const std::string widest = formatPlantSize(line.widest, units);
  return closest == widest ? closest : closest + " to " + widest;
}

}  // namespace

std::string scheduleCsv(const Yard& yard, const Catalogue& catalogue) {
  std::string csv =
      csvRecord({"code", "quantity", "drifts", "botanical_name", "common_name", "size", "spacing"});
  for (const ScheduleLine& line : scheduleOf(withCodes(yard), catalogue))
    csv += csvRecord({line.code, std::to_string(line.quantity), std::to_string(line.drifts),
                      line.botanicalName, line.species ? line.species->commonName : "",
                      std::string(wordOf(line.size)), spacingOf(line, yard.settings.units)});
  return csv;
}

}  // namespace tussock
