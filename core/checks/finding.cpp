// SPDX-License-Identifier: MIT
#include "core/checks/finding.h"

#include <algorithm>

namespace tussock {

std::string keyOf(const Finding& finding) {
  std::vector<ObjectRef> subjects = finding.subjects;
  std::sort(subjects.begin(), subjects.end());
  std::string key(wordOf(finding.check));
  for (const ObjectRef subject : subjects)
    key.append(" ").append(kindOf(subject)).append(":").append(std::to_string(subject.id));
  if (!finding.about.empty()) key.append(" ").append(finding.about);
  return key;
}

bool isAbout(const Finding& finding, const Yard& yard, Id<Bed> bed) {
  return std::any_of(finding.subjects.begin(), finding.subjects.end(), [&](ObjectRef ref) {
    if (ref == refTo(bed)) return true;
    const auto id = idIf<Drift>(ref);
    const Drift* drift = id ? yard.drifts.find(*id) : nullptr;
    return drift != nullptr && drift->bed == bed;
  });
}

}  // namespace tussock
