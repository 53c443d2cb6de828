// SPDX-License-Identifier: MIT
// Where a plant stands that keeps exactly its distance from two things at once.
#pragma once

#include <vector>

#include "core/planting/ground.h"

namespace tussock {

struct Circle {
  Point centre;
  double radius = 0.0;  // metres
};

// The points on both circles: none or two.
void addContacts(const Circle& a, const Circle& b, std::vector<Point>& out);
// The points on the circle at the border's distance from it.
void addContacts(const Circle& circle, const Border& border, std::vector<Point>& out);
// The points at both borders' distances, near where they meet.
void addContacts(const Border& a, const Border& b, std::vector<Point>& out);

}  // namespace tussock
