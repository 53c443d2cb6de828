// SPDX-License-Identifier: MIT
// Files with bytes changed at random: each opens, or is refused with a reason; nothing else.
#include <random>

#include <gtest/gtest.h>

#include "core/store/yard_file.h"
#include "tests/support/random_yard.h"
#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;

std::string fileWithHistory(const fs::path& path) {
  test::Random random(7);
  YardFile file = YardFile::create(path, Yard{});
  for (int i = 0; i <= 5; ++i) file.putBlob(test::randomPicture(i));
  file.commit(difference(file.yard(), test::randomYard(random), "Draw"));
  file.commit(test::renameTo(file.yard(), "Hill"));
  file.undo();
  return test::bytesOf(path);
}

std::string spoilt(std::string bytes, std::mt19937& random) {
  auto upTo = [&](std::size_t most) {
    return std::uniform_int_distribution<std::size_t>(0, most)(random);
  };
  for (std::size_t flips = 1 + upTo(15); flips > 0; --flips) {
    // Half of them in the header and the table of contents, which much depends on.
    const std::size_t range = upTo(1) == 0 ? 4096 : bytes.size();
    bytes[16 + upTo(range - 17)] = static_cast<char>(upTo(255));
  }
  if (upTo(9) == 0) bytes.resize(16 + upTo(bytes.size() - 16));
  return bytes;
}

// Everything a program may do with what it has opened.
void use(const fs::path& path) {
  YardFile file = YardFile::open(path);
  (void)file.verify();
  (void)file.changedOutside();
  (void)file.history();
  file.undo();
  file.redo();
  file.commit(test::renameTo(file.yard(), "Dale"));
  for (const Photo& photo : file.yard().photos) (void)file.blob(photo.contentHash);
}

TEST(Damage, RandomBytesAreRefusedOrReadButNeverMore) {
  const int rounds = std::getenv("TUSSOCK_LONG") != nullptr ? 20000 : 200;
  const test::TemporaryFolder folder;
  const std::string whole = fileWithHistory(folder / "whole.yard");
  const fs::path path = folder / "spoilt.yard";
  std::mt19937 random(11);
  int refused = 0;
  for (int round = 0; round < rounds; ++round) {
    SCOPED_TRACE(round);
    fs::remove(path.string() + "-journal");
    test::writeBytes(path, spoilt(whole, random));
    try {
      use(path);
    } catch (const StoreError& error) {
      ++refused;
      EXPECT_NE(std::string(error.what()).find("spoilt.yard"), std::string::npos) << error.what();
    }
  }
  EXPECT_GT(refused, rounds / 4);
  EXPECT_LT(refused, rounds);
}

}  // namespace
}  // namespace tussock
