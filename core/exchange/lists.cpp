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

std::string sumRecord(int plants, const char* words) {
  return csvRecord({"", std::to_string(plants), "", words, "", "", ""});
}

}  // namespace

std::string scheduleCsv(const Yard& yard, const Catalogue& catalogue) {
  std::string csv =
      csvRecord({"code", "quantity", "drifts", "botanical_name", "common_name", "size", "spacing"});
  const std::vector<ScheduleLine> lines = scheduleOf(withCodes(yard), catalogue);
  for (const ScheduleLine& line : lines)
    csv += csvRecord({line.code, std::to_string(line.quantity), std::to_string(line.drifts),
                      line.botanicalName, line.species ? line.species->commonName : "",
                      std::string(wordOf(line.size)), spacingOf(line, yard.settings.units)});
  const PlantSums sums = sumsOf(lines);
  csv += sumRecord(sums.toPlant, "Total to plant");
  csv += sumRecord(sums.existing, "Total existing");
  return csv;
}

}  // namespace tussock
