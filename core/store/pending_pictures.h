// SPDX-License-Identifier: MIT
// Pictures given to a yard file, held back until an edit names them.
#pragma once

#include <map>
#include <optional>
#include <string>

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/edit/change.h"

namespace tussock {

class PendingPictures {
 public:
  // Gives the picture's hash.
  std::string add(const std::string& bytes);
  [[nodiscard]] const std::string* find(const std::string& hash) const;
  // Writes those that photos of the edit name and the file has not. Throws EditConflict when a
  // photo names a picture that is neither here nor in the file.
  void write(SQLite::Database& database, const ChangeSet& edit) const;
  void forget(const ChangeSet& edit);  // those the edit names, now that they are in the file

 private:
  std::map<std::string, std::string> bytesByHash_;
};

}  // namespace tussock
