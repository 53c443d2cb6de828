// SPDX-License-Identifier: MIT
#include "app/cli/commands.h"

namespace tussock {

namespace {

std::string bedNames(const Yard& yard) {
  std::string names;
  for (const Bed& bed : yard.beds)
    if (!bed.name.empty()) names += (names.empty() ? "" : ", ") + ("'" + bed.name + "'");
  return names;
}

const Bed& onlyBed(const Yard& yard) {
  if (yard.beds.size() == 1) return *yard.beds.begin();
  throw UsageError("Say which bed with --bed: " + bedNames(yard) + ".");
}

}  // namespace

const Bed& bedNamed(const std::string& name, const Yard& yard) {
  if (yard.beds.empty())
    throw UsageError(
        "This yard has no bed. Draw one in the window, or import a site that has one.");
  if (name.empty()) return onlyBed(yard);
  const Bed* found = nullptr;
  for (const Bed& bed : yard.beds) {
    if (bed.name != name) continue;
    if (found != nullptr)
      throw UsageError("Two beds are named '" + name +
                       "'. Give one of them another name in the window.");
    found = &bed;
  }
  if (found == nullptr)
    throw UsageError(
        "No bed is named '" + name + "'. The yard has " +
        (bedNames(yard).empty() ? "beds without names; name them in the window" : bedNames(yard)) +
        ".");
  return *found;
}

}  // namespace tussock
