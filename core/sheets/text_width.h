// SPDX-License-Identifier: MIT
// How wide and high text stands on paper, so that layout needs no font engine. Set in Lato.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/sheet.h"

namespace tussock {

enum class Face { Regular, Bold, Italic };

inline constexpr double kMillimetresPerPoint = 25.4 / 72.0;

[[nodiscard]] double textWidth(std::string_view utf8, TextSize size, Face face = Face::Regular);
[[nodiscard]] Face faceOf(const PaperText& text);
// From the top of the capitals to the foot of the descenders; turned text gives its bounds.
[[nodiscard]] PaperBox boxOf(const PaperText& text);

// Control characters become spaces and broken UTF-8 question marks, so that any name prints.
[[nodiscard]] std::string printable(std::string_view utf8);
// Cut short with an ellipsis to at most `width` millimetres.
[[nodiscard]] std::string shortened(std::string_view utf8, TextSize size, Face face, double width);
// Broken between words into lines of at most `width`; a longer word is broken where it must.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view utf8, TextSize size, Face face,
                                               double width);

}  // namespace tussock
