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

}  // namespace tussock
