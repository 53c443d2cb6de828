// SPDX-License-Identifier: MIT
// A fresh folder for one test, gone with all that is in it afterwards. In memory where the system
// has such a place, as the tests write many files, each synchronised to disk; on disk where what a
// disk does is what is tested.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <string>

namespace tussock::test {

class TemporaryFolder {
 public:
  enum class Place { Memory, Disk };

  explicit TemporaryFolder(Place place = Place::Memory) {
    const std::filesystem::path memory = "/dev/shm";
    const bool inMemory = place == Place::Memory && std::filesystem::exists(memory);
    const auto base = inMemory ? memory : std::filesystem::temp_directory_path();
    std::string name = (base / "tussock-XXXXXX").string();
    path_ = mkdtemp(name.data());
  }
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  [[nodiscard]] const std::filesystem::path& path() const { return path_; }
  [[nodiscard]] std::filesystem::path operator/(const std::string& name) const {
    return path_ / name;
  }

 private:
  std::filesystem::path path_;
};

}  // namespace tussock::test
