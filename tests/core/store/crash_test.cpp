// SPDX-License-Identifier: MIT
// A program killed at any moment loses no edit it had reported as done, and leaves no half edit.
#include <csignal>
#include <random>

#include <gmock/gmock.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/store/yard_file.h"
#include "tests/support/small_yards.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;

// The yard's name, a bed's and every plant say which edit it was, so that half of one shows.
ChangeSet numbered(const Yard& yard, std::int64_t number) {
  Draft draft(yard);
  Settings settings = yard.settings;
  settings.name = std::to_string(number);
  draft.put(settings);
  for (Drift drift : yard.drifts) {
    for (Plant& plant : drift.plants) plant.at.x = static_cast<double>(number);
    draft.put(drift);
  }
  return draft.finish("Edit " + std::to_string(number));
}

void expectWholly(const Yard& yard, std::int64_t number) {
  EXPECT_EQ(yard.settings.name, std::to_string(number));
  for (const Drift& drift : yard.drifts)
    for (const Plant& plant : drift.plants) EXPECT_EQ(plant.at.x, static_cast<double>(number));
}

// Edits, taking one back now and then, and tells each revision once it has been reported as done.
[[noreturn]] void editForEver(const fs::path& path, int report) {
  YardFile file = YardFile::open(path);
  for (std::int64_t number = std::stoll(file.yard().settings.name) + 1;; ++number) {
    if (number % 5 == 0) {
      file.undo();
      file.redo();
    }
    file.commit(numbered(file.yard(), number));
    if (::write(report, &number, sizeof number) != sizeof number) ::_exit(1);
  }
}

// Lets a writer do one edit and go on for a while. The last number told before it was killed.
std::int64_t killAfter(const fs::path& path, std::chrono::microseconds delay, std::int64_t last) {
  int ends[2];
  EXPECT_EQ(::pipe(ends), 0);
  const pid_t child = ::fork();
  if (child == 0) editForEver(path, ends[1]);
  ::close(ends[1]);
  EXPECT_EQ(::read(ends[0], &last, sizeof last), static_cast<ssize_t>(sizeof last));
  ::usleep(static_cast<useconds_t>(delay.count()));
  ::kill(child, SIGKILL);
  ::waitpid(child, nullptr, 0);
  while (::read(ends[0], &last, sizeof last) == sizeof last) {
  }
  ::close(ends[0]);
  return last;
}

TEST(Crash, AKilledWriterLeavesAWholeEditAndLosesNone) {
  const int rounds = std::getenv("TUSSOCK_LONG") != nullptr ? 2000 : 20;
  const test::TemporaryFolder folder(test::TemporaryFolder::Place::Disk);
  const fs::path path = folder / "a.yard";
  {
    YardFile file = YardFile::create(path, test::twoDrifts());
    file.commit(numbered(file.yard(), 1));
  }
  std::mt19937 random(20261125);
  std::uniform_int_distribution<int> microseconds(0, 15000);
  std::int64_t last = 1;
  for (int round = 0; round < rounds; ++round) {
    SCOPED_TRACE(round);
    last = killAfter(path, std::chrono::microseconds(microseconds(random)), last);
    YardFile file = YardFile::open(path);
    // Killed between undo and redo: the edit before is what the file holds, and redo brings it
    // back.
    if (file.redoLabel()) file.redo();
    const std::int64_t found = std::stoll(file.yard().settings.name);
    EXPECT_TRUE(found == last || found == last + 1) << found << " after " << last;
    expectWholly(file.yard(), found);
    if (round % 10 == 0) {
      EXPECT_THAT(file.verify(), testing::IsEmpty());
      file.forgetHistory();  // so that a long run does not slow down
    }
    last = found;
  }
  EXPECT_GT(last, rounds);
}

}  // namespace
}  // namespace tussock
