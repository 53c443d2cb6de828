// SPDX-License-Identifier: MIT
#include <cerrno>
#include <random>

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include "core/store/opening.h"
#include "core/store/rows.h"
#include "core/store/schema.h"
#include "core/store/soundness.h"

namespace tussock {

namespace {

namespace fs = std::filesystem;
using Reason = StoreError::Reason;

StoreError alreadyExists(const fs::path& path) {
  return storeError(Reason::AlreadyExists, path, "is there already. Choose another name.");
}

void requirePlaceFor(const fs::path& path) {
  const fs::path folder = path.parent_path();
  std::error_code error;
  if (fs::exists(fs::symlink_status(path, error))) throw alreadyExists(path);
  if (!fs::is_directory(folder, error))
    throw storeError(Reason::NotFound, folder, "is not a folder. Choose a folder that is there.");
  if (::access(folder.c_str(), W_OK) != 0)
    throw storeError(Reason::ReadOnly, folder,
                     "is a folder that may only be read. Choose one that you may write to.");
}

// A name beside the one wanted, gone again when this goes.
class UnfinishedFile {
 public:
  explicit UnfinishedFile(const fs::path& wanted)
      : path_(wanted.parent_path() /
              fmt::format(".{}.{:08x}", wanted.filename().string(), std::random_device{}())) {}
  ~UnfinishedFile() {
    std::error_code ignored;
    fs::remove(path_, ignored);
    fs::remove(path_.string() + "-journal", ignored);
  }
  UnfinishedFile(const UnfinishedFile&) = delete;
  UnfinishedFile& operator=(const UnfinishedFile&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

// A link, unlike a rename, never puts one file in place of another. Some file systems have none.
void giveName(const fs::path& from, const fs::path& to) {
  if (::link(from.c_str(), to.c_str()) == 0) return;
  if (errno == EEXIST) throw alreadyExists(to);
  std::error_code error;
  if (fs::exists(to, error)) throw alreadyExists(to);
  fs::rename(from, to, error);
  if (error)
    throw storeError(Reason::Other, to, fmt::format("could not be made ({}).", error.message()));
}

// A file is durable once it is synchronised, and a new name once its folder is.
void synchronise(const fs::path& path) {
  const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (handle < 0) return;
  ::fsync(handle);
  ::close(handle);
}

void writeNew(SQLite::Database& database, const Yard& yard) {
  SQLite::Transaction transaction(database);
  database.exec(schemaSql());
  database.exec(fmt::format("PRAGMA application_id = {}", kApplicationId));
  database.exec(fmt::format("PRAGMA user_version = {}", kSchemaVersion));
  database.exec(fmt::format("INSERT INTO yard (id, revision, next_id) VALUES (1, 0, {})",
                            largestId(yard) + 1));
  insertSettings(database, Settings{});
  writeRows(database, difference(Yard{}, yard, {}));
  transaction.commit();
}

}  // namespace

void createDatabase(const fs::path& path, const Yard& yard) {
  requirePlaceFor(path);
  if (!yard.photos.empty())
    throw storeError(Reason::Other, path,
                     "cannot be made with photos in it. Make the yard first, then add its photos.");
  for (const std::string& fault : faultsOf(yard))
    throw storeError(Reason::Other, path, fmt::format("cannot be made. ({})", fault));
  const UnfinishedFile unfinished(path);
  guarded(path, [&] {
    SQLite::Database database =
        connect(unfinished.path(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    writeNew(database, yard);
  });
  giveName(unfinished.path(), path);
  synchronise(path.parent_path());
}

void copyDatabase(SQLite::Database& database, const fs::path& path) {
  requirePlaceFor(path);
  const UnfinishedFile unfinished(path);
  guarded(path, [&] {
    SQLite::Statement copy(database, "VACUUM INTO ?");
    copy.bind(1, unfinished.path().string());
    copy.exec();
  });
  synchronise(unfinished.path());
  giveName(unfinished.path(), path);
  synchronise(path.parent_path());
}

}  // namespace tussock
