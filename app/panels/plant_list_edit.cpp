// SPDX-License-Identifier: MIT
#include "app/panels/plant_list_edit.h"

#include <algorithm>
#include <QCoreApplication>

#include "app/panels/object_form.h"
#include "app/panels/species_marks.h"
#include "core/planting/planted_list.h"

namespace tussock {

bool writePlantList(Document& document, Id<Bed> bed, std::vector<ListedSpecies> list,
                    const QString& label) {
  return editObject(document, bed, label,
                    [&](Bed& changed) { changed.plantList = std::move(list); });
}

void addToPlantList(Document& document, Id<Bed> bed, const std::string& species) {
  const Bed* found = document.yard().beds.find(bed);
  if (!found) return;
  std::vector<ListedSpecies> list = found->plantList;
  const auto listed = [&](const ListedSpecies& entry) { return entry.species == species; };
  if (std::any_of(list.begin(), list.end(), listed)) return;
  list.push_back({species, 0.0});
  const Species* facts = document.facts().find(species);
  const QString name = text(facts ? document.facts().nameApart(*facts) : species);
  writePlantList(document, bed, std::move(list),
                 QCoreApplication::translate("PlantList", "Add %1 to the plant list").arg(name));
}

void listPlanted(Document& document, Id<Bed> bed) {
  const auto toPlant = [](const Drift& drift) { return !drift.existing(); };
  writePlantList(document, bed, plantedShares(document.yard(), bed, toPlant),
                 QCoreApplication::translate("PlantList", "List what is planted"));
}

}  // namespace tussock
