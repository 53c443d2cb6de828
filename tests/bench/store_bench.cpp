// SPDX-License-Identifier: MIT
// The yard file against SQLite with nothing on top. Files lie where the build is, on a real disk,
// because the cost of an edit is that of getting it there.
#include <filesystem>
#include <memory>
#include <utility>

#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include "core/edit/draft.h"
#include "core/store/yard_file.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;

constexpr int kBeds = 40;
constexpr int kPlantsPerDrift = 10;  // 25 drifts a bed: 10,000 plants

Yard largeYard() {
  IdSource ids(2);
  std::vector<Bed> beds;
  std::vector<Drift> drifts;
  for (int b = 0; b < kBeds; ++b) {
    Bed& bed = beds.emplace_back();
    bed.id = ids.take<Bed>();
    bed.outline = rectangle({10.0 * b, 0}, {10.0 * b + 9, 9});
    for (int d = 0; d < 25; ++d) {
      Drift& drift = drifts.emplace_back();
      drift.id = ids.take<Drift>();
      drift.bed = bed.id;
      drift.species = "Echinacea purpurea";
      drift.spacing = Length::metres(0.4);
      for (int p = 0; p < kPlantsPerDrift; ++p)
        drift.plants.push_back({ids.take<Plant>(), {10.0 * b + 0.31 * p, 0.347 * d}});
    }
  }
  Yard yard;
  yard.beds = Collection<Bed>(std::move(beds));
  yard.drifts = Collection<Drift>(std::move(drifts));
  return yard;
}

// A fresh file of the large yard, removed at the end.
class LargeFile {
 public:
  LargeFile() : path_(fs::current_path() / "store_bench.yard") {
    remove();
    (void)YardFile::create(path_, largeYard());
  }
  ~LargeFile() { remove(); }
  LargeFile(const LargeFile&) = delete;
  LargeFile& operator=(const LargeFile&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  void remove() const { fs::remove(path_); }
  fs::path path_;
};

struct Close {
  void operator()(sqlite3* database) const { sqlite3_close(database); }
  void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};
using BareDatabase = std::unique_ptr<sqlite3, Close>;
using BareStatement = std::unique_ptr<sqlite3_stmt, Close>;

BareDatabase openBare(const fs::path& path) {
  sqlite3* database = nullptr;
  sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READWRITE, nullptr);
  sqlite3_exec(database, "PRAGMA foreign_keys = ON; PRAGMA synchronous = EXTRA", nullptr, nullptr,
               nullptr);
  return BareDatabase(database);
}
BareStatement prepare(const BareDatabase& database, const char* sql) {
  sqlite3_stmt* statement = nullptr;
  sqlite3_prepare_v2(database.get(), sql, -1, &statement, nullptr);
  return BareStatement(statement);
}

// Fetches every value in its own type, as any reader must.
void readEveryColumn(sqlite3_stmt* row) {
  for (int i = 0; i < sqlite3_column_count(row); ++i) switch (sqlite3_column_type(row, i)) {
      case SQLITE_INTEGER:
        benchmark::DoNotOptimize(sqlite3_column_int64(row, i));
        break;
      case SQLITE_FLOAT:
        benchmark::DoNotOptimize(sqlite3_column_double(row, i));
        break;
      case SQLITE_TEXT:
        benchmark::DoNotOptimize(
            std::string(reinterpret_cast<const char*>(sqlite3_column_text(row, i)),
                        static_cast<std::size_t>(sqlite3_column_bytes(row, i))));
        break;
      default:
        break;
    }
}

// Baseline of LoadTenThousandPlants: open the same file and read the same rows, keeping nothing.
void BareReadTenThousandPlants(benchmark::State& state) {
  const LargeFile file;
  for (auto _ : state) {
    const BareDatabase database = openBare(file.path());
    for (const char* sql : {"SELECT * FROM settings", "SELECT * FROM bed", "SELECT * FROM drift",
                            "SELECT * FROM plant"}) {
      const BareStatement rows = prepare(database, sql);
      while (sqlite3_step(rows.get()) == SQLITE_ROW) readEveryColumn(rows.get());
    }
  }
}
BENCHMARK(BareReadTenThousandPlants)->Unit(benchmark::kMillisecond);

// At most 3 times BareReadTenThousandPlants.
void LoadTenThousandPlants(benchmark::State& state) {
  const LargeFile file;
  for (auto _ : state) {
    const YardFile yard = YardFile::open(file.path());
    benchmark::DoNotOptimize(yard.yard().drifts.size());
  }
}
BENCHMARK(LoadTenThousandPlants)->Unit(benchmark::kMillisecond);

void run(const BareDatabase& database, const char* sql) {
  if (sqlite3_exec(database.get(), sql, nullptr, nullptr, nullptr) != SQLITE_OK)
    throw std::runtime_error(sqlite3_errmsg(database.get()));
}

// Baseline of EditDurable: one drift and its ten plants moved, with the history row and the
// revision, in one transaction with the same settings; statements prepared beforehand.
void BareTransaction(benchmark::State& state) {
  const LargeFile file;
  const BareDatabase database = openBare(file.path());
  const BareStatement drift = prepare(database, "UPDATE drift SET axis_rad = ? WHERE id = 3");
  const BareStatement plant =
      prepare(database, "UPDATE plant SET at_x_m = at_x_m + ?, at_y_m = at_y_m + ? WHERE id = ?");
  const BareStatement history =
      prepare(database,
              "INSERT INTO history (label, time_utc, state, change_json)"
              " VALUES ('Move drift', '2027-04-14T10:00:00Z', 'done', ?)");
  const BareStatement revision =
      prepare(database, "UPDATE yard SET revision = revision + 1, next_id = next_id");
  const std::string json(1300, 'x');  // as long as that of the edit below
  auto step = [&](const BareStatement& statement) {
    if (sqlite3_step(statement.get()) != SQLITE_DONE)
      throw std::runtime_error(sqlite3_errmsg(database.get()));
    sqlite3_reset(statement.get());
  };
  double axis = 0.0;
  for (auto _ : state) {
    run(database, "BEGIN IMMEDIATE");
    sqlite3_bind_double(drift.get(), 1, axis += 0.001);
    step(drift);
    for (int i = 0; i < kPlantsPerDrift; ++i) {
      sqlite3_bind_double(plant.get(), 1, 0.001);
      sqlite3_bind_double(plant.get(), 2, 0.001);
      sqlite3_bind_int64(plant.get(), 3, 4 + i);
      step(plant);
    }
    sqlite3_bind_text(history.get(), 1, json.data(), static_cast<int>(json.size()), SQLITE_STATIC);
    step(history);
    step(revision);
    run(database, "COMMIT");
  }
}
BENCHMARK(BareTransaction)->Unit(benchmark::kMillisecond)->UseRealTime();

// At most 2 times BareTransaction.
void EditDurable(benchmark::State& state) {
  const LargeFile large;
  YardFile file = YardFile::open(large.path());
  for (auto _ : state) {
    Drift drift = *file.yard().drifts.find(Id<Drift>(3));
    drift.axis = drift.axis + Angle::radians(0.001);
    for (Plant& plant : drift.plants) plant.at += {0.001, 0.001};
    Draft draft(file.yard());
    draft.put(std::move(drift));
    file.commit(draft.finish("Move drift"));
  }
}
BENCHMARK(EditDurable)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace tussock
