// SPDX-License-Identifier: MIT
#include "core/checks/share_excess.h"

#include <map>
#include <string_view>

namespace tussock {

ShareExcess shareExcess(const Yard& yard, const Catalogue& facts, Rank rank, double limit) {
  struct Group {
    double plants = 0.0;
    std::set<Id<Drift>> drifts;
  };
  std::map<std::string_view, Group> groups;
  double all = 0.0;
  for (const Drift& drift : yard.drifts) {
    if (drift.layer != Layer::Main || drift.plants.empty()) continue;
    const auto count = static_cast<double>(drift.plants.size());
    all += count;
    Group& group = groups[nameAt({&drift, facts.find(drift.species), {}}, rank)];
    group.plants += count;
    group.drifts.insert(drift.id);
  }
  ShareExcess excess;
  for (const auto& [name, group] : groups) {
    const double over = group.plants / all - limit;
    if (name.empty() || over <= 0.0) continue;
    excess.over += over / limit;
    excess.drifts.insert(group.drifts.begin(), group.drifts.end());
  }
  return excess;
}

}  // namespace tussock
