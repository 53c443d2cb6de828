// SPDX-License-Identifier: MIT
#include "core/store/plant_rows.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace tussock {

namespace {

struct PlacedPlant {
  std::int64_t place = 0;
  Plant plant;
};

double finiteNumber(const SQLite::Column& column) {
  if (!column.isFloat()) throw FormatError("a plant's position is not a number");
  return column.getDouble();
}

PlacedPlant placedPlant(SQLite::Statement& row) {
  return {row.getColumn(2).getInt64(),
          {Id<Plant>(row.getColumn(0).getInt64()),
           {finiteNumber(row.getColumn(3)), finiteNumber(row.getColumn(4))}}};
}

void take(Drift& drift, std::vector<PlacedPlant>& plants) {
  auto byPlace = [](const PlacedPlant& a, const PlacedPlant& b) { return a.place < b.place; };
  if (!std::is_sorted(plants.begin(), plants.end(), byPlace))
    std::sort(plants.begin(), plants.end(), byPlace);
  drift.plants.reserve(plants.size());
  for (const PlacedPlant& placed : plants) drift.plants.push_back(placed.plant);
}

void bindPlant(SQLite::Statement& statement, Id<Drift> drift, std::size_t place,
               const Plant& plant) {
  statement.bind(1, plant.id.value());
  statement.bind(2, drift.value());
  statement.bind(3, static_cast<std::int64_t>(place));
  statement.bind(4, plant.at.x);
  statement.bind(5, plant.at.y);
}

}  // namespace

void readPlants(SQLite::Database& database, std::vector<Drift>& drifts) {
  std::unordered_map<std::int64_t, std::vector<PlacedPlant>> byDrift;
  SQLite::Statement rows(database, "SELECT id, drift_id, place, at_x_m, at_y_m FROM plant");
  std::int64_t current = 0;
  std::vector<PlacedPlant>* plants = nullptr;  // plants of a drift mostly come together
  while (rows.executeStep()) {
    const std::int64_t drift = rows.getColumn(1).getInt64();
    if (plants == nullptr || drift != current) plants = &byDrift[drift];
    current = drift;
    plants->push_back(placedPlant(rows));
  }
  for (Drift& drift : drifts)
    if (auto found = byDrift.extract(drift.id.value())) take(drift, found.mapped());
  if (!byDrift.empty())
    throw FormatError(
        fmt::format("plant {} is in no drift", byDrift.begin()->second.front().plant.id.value()));
}

void removePlants(Statements& statements, const std::vector<Plant>& before,
                  const std::vector<Plant>& after) {
  std::unordered_set<Id<Plant>> staying;
  for (const Plant& plant : after) staying.insert(plant.id);
  for (const Plant& plant : before) {
    if (staying.contains(plant.id)) continue;
    SQLite::Statement& remove = statements["DELETE FROM plant WHERE id = ?"];
    remove.bind(1, plant.id.value());
    changeOneRow(remove);
  }
}

void writePlants(Statements& statements, Id<Drift> drift, const std::vector<Plant>& before,
                 const std::vector<Plant>& after) {
  std::unordered_map<Id<Plant>, std::size_t> places;
  for (std::size_t place = 0; place < before.size(); ++place)
    places.emplace(before[place].id, place);
  for (std::size_t place = 0; place < after.size(); ++place) {
    const auto was = places.find(after[place].id);
    if (was != places.end() && was->second == place && before[place] == after[place]) continue;
    SQLite::Statement& statement =
        was == places.end()
            ? statements
                  ["INSERT INTO plant (id, drift_id, place, at_x_m, at_y_m)"
                   " VALUES (?1, ?2, ?3, ?4, ?5)"]
            : statements
                  ["UPDATE plant SET drift_id = ?2, place = ?3, at_x_m = ?4, at_y_m = ?5"
                   " WHERE id = ?1"];
    bindPlant(statement, drift, place, after[place]);
    changeOneRow(statement);
  }
}

}  // namespace tussock
