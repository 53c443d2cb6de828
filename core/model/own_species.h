// SPDX-License-Identifier: MIT
// Plants that the user describes, kept in the yard so that it opens anywhere.
#pragma once

#include <string>
#include <vector>

#include "core/model/id.h"

namespace tussock {

// One value of a species, under the column name of the plant table.
struct OwnFact {
  std::string column;
  std::string value;

  bool operator==(const OwnFact&) const = default;
};

// A species of the user's own, or values that go before the published ones of the same name.
struct OwnSpecies {
  Id<OwnSpecies> id;
  std::string botanicalName;
  std::vector<OwnFact> facts;

  bool operator==(const OwnSpecies&) const = default;
};

}  // namespace tussock
