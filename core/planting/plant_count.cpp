// SPDX-License-Identifier: MIT
#include "core/planting/plant_count.h"

#include <algorithm>
#include <cmath>

namespace tussock {

int countTaken(int count, CountAs as) {
  return as == CountAs::Asked ? std::max(1, count) : oddCount(count);
}

int oddCount(int count) {
  return std::max(1, count % 2 == 0 ? count - 1 : count);
}

int oddNear(double count) {
  return std::max(1, 2 * static_cast<int>(std::floor(count / 2.0)) + 1);
}

void keepCount(std::vector<Point>& places, int count) {
  if (static_cast<int>(places.size()) == count) return;
  if (!places.empty() && places.size() % 2 == 0) places.pop_back();
}

bool isCounted(const Drift& drift) {
  return drift.layer == Layer::Main && !drift.existing();
}

int nextCount(int count) {
  return count < 1 ? 1 : count + (count % 2 == 0 ? 1 : 2);
}

int previousCount(int count) {
  return oddCount(count % 2 == 0 ? count : count - 2);
}

}  // namespace tussock
