// SPDX-License-Identifier: MIT
// Boxes and segments on paper: what holds, touches or crosses what. Millimetres.
#pragma once

#include <vector>

#include "core/sheets/sheet.h"

namespace tussock {

[[nodiscard]] std::vector<PaperPoint> circleAround(PaperPoint centre, double radius);
[[nodiscard]] PaperBox grown(PaperBox box, double by);
[[nodiscard]] bool inside(const PaperBox& inner, const PaperBox& outer);
[[nodiscard]] bool overlap(const PaperBox& a, const PaperBox& b);
[[nodiscard]] bool crosses(PaperPoint from, PaperPoint to, const PaperBox& box);
// Whether the segments a-b and c-d touch or cross.
[[nodiscard]] bool meet(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d);
[[nodiscard]] double distanceToSegment(PaperPoint p, PaperPoint a, PaperPoint b);

}  // namespace tussock
