// SPDX-License-Identifier: MIT
#include "tests/support/insolation_scene.h"

#include <cstdio>
#include <fstream>

namespace tussock::test {

Yard insolationYard(const std::string& folder, double drawnIn) {
  Yard yard;
  yard.settings.latitude = Angle::degrees(40);
  yard.settings.longitude = Angle::degrees(3);
  std::ifstream file(folder + "/scene.csv");
  const Point margin{drawnIn, drawnIn};
  IdSource ids(2);
  for (std::string line; std::getline(file, line);) {
    const std::size_t comma = line.find(',');
    Point low, high;
    double height = 0.0;
    if (comma == std::string::npos || std::sscanf(line.c_str() + comma, ",%lf,%lf,%lf,%lf,%lf",
                                                  &low.x, &low.y, &high.x, &high.y, &height) != 5)
      continue;  // the header
    Building block;
    block.id = ids.take<Building>();
    block.footprint = rectangle(low + margin, high - margin);
    block.eave = block.ridge = Length::metres(height);
    yard.buildings = yard.buildings.with(block);
  }
  return yard;
}

}  // namespace tussock::test
