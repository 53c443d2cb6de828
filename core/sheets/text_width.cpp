// SPDX-License-Identifier: MIT
#include "core/sheets/text_width.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/sheets/lato_widths.h"

namespace tussock {

namespace {

constexpr char32_t kBroken = 0xFFFD;
constexpr double kUnknownWidth = 1.1;  // of the text size; scripts that Lato lacks run wide
constexpr double kCapHeight = 0.73;
constexpr double kDescent = 0.21;

// Takes one character off the front; kBroken for a byte that starts none.
char32_t takeCharacter(std::string_view& text) {
  const auto first = static_cast<unsigned char>(text.front());
  const std::size_t length = first < 0x80         ? 1
                             : first >> 5 == 0x06 ? 2
                             : first >> 4 == 0x0E ? 3
                             : first >> 3 == 0x1E ? 4
                                                  : 0;
  if (length == 0 || length > text.size()) return text.remove_prefix(1), kBroken;
  char32_t value = length == 1 ? first : first & (0x7Fu >> length);
  for (std::size_t i = 1; i < length; ++i) {
    const auto next = static_cast<unsigned char>(text[i]);
    if (next >> 6 != 2) return text.remove_prefix(1), kBroken;
    value = (value << 6) | (next & 0x3Fu);
  }
  text.remove_prefix(length);
  return value;
}

double characterWidth(char32_t character, Face face) {
  const auto at = std::lower_bound(
      kLatoWidths.begin(), kLatoWidths.end(), character,
      [](const LatoWidth& entry, char32_t wanted) { return entry.character < wanted; });
  if (at == kLatoWidths.end() || at->character != character) return kUnknownWidth;
  return at->widths[static_cast<std::size_t>(face)] / 1000.0;
}

double heightOf(TextSize size) {
  return points(size) * kMillimetresPerPoint;
}

// The longest front of `text` that is at most `width` wide, at least one character.
std::string_view frontWithin(std::string_view text, TextSize size, Face face, double width) {
  std::string_view rest = text;
  double used = 0.0;
  while (!rest.empty()) {
    std::string_view next = rest;
    used += characterWidth(takeCharacter(next), face) * heightOf(size);
    if (used > width && rest.size() < text.size()) break;
    rest = next;
  }
  return text.substr(0, text.size() - rest.size());
}

PaperPoint turnedAbout(PaperPoint p, PaperPoint centre, double degrees) {
  const double turn = -degrees * std::numbers::pi / 180.0;  // y runs downwards
  const double x = p.x - centre.x, y = p.y - centre.y;
  return {centre.x + x * std::cos(turn) - y * std::sin(turn),
          centre.y + x * std::sin(turn) + y * std::cos(turn)};
}

}  // namespace

double textWidth(std::string_view utf8, TextSize size, Face face) {
  double width = 0.0;
  while (!utf8.empty()) width += characterWidth(takeCharacter(utf8), face);
  return width * heightOf(size);
}

Face faceOf(const PaperText& text) {
  if (text.bold) return Face::Bold;
  return text.italic ? Face::Italic : Face::Regular;
}

PaperBox boxOf(const PaperText& text) {
  const double width = textWidth(text.text, text.size, faceOf(text));
  const double left = text.at.x - (text.align == Align::Left     ? 0.0
                                   : text.align == Align::Centre ? width / 2.0
                                                                 : width);
  const double top = text.at.y - kCapHeight * heightOf(text.size);
  const double bottom = text.at.y + kDescent * heightOf(text.size);
  PaperBox box{1e9, 1e9, -1e9, -1e9};
  for (const PaperPoint corner : {PaperPoint{left, top}, PaperPoint{left + width, top},
                                  PaperPoint{left, bottom}, PaperPoint{left + width, bottom}}) {
    const PaperPoint p = turnedAbout(corner, text.at, text.turnDegrees);
    box.left = std::min(box.left, p.x), box.right = std::max(box.right, p.x);
    box.top = std::min(box.top, p.y), box.bottom = std::max(box.bottom, p.y);
  }
  return box;
}

std::string printable(std::string_view utf8) {
  std::string out;
  while (!utf8.empty()) {
    const std::string_view before = utf8;
    const char32_t character = takeCharacter(utf8);
    if (character == kBroken) {
      out += '?';
    } else if (character < 0x20 || (character >= 0x7F && character < 0xA0)) {
      out += ' ';
    } else {
      out += before.substr(0, before.size() - utf8.size());
    }
  }
  return out;
}

std::string shortened(std::string_view utf8, TextSize size, Face face, double width) {
  if (textWidth(utf8, size, face) <= width) return std::string(utf8);
  const double dots = textWidth("…", size, face);
  return std::string(frontWithin(utf8, size, face, width - dots)) + "…";
}

std::vector<std::string> wrapped(std::string_view utf8, TextSize size, Face face, double width) {
  std::vector<std::string> lines(1);
  while (!utf8.empty()) {
    const std::size_t end = std::min(utf8.find(' '), utf8.size());
    std::string_view word = utf8.substr(0, end);
    utf8.remove_prefix(std::min(end + 1, utf8.size()));
    if (word.empty()) continue;
    const std::string longer = lines.back() + (lines.back().empty() ? "" : " ");
    if (textWidth(longer + std::string(word), size, face) <= width) {
      lines.back() = longer + std::string(word);
      continue;
    }
    if (!lines.back().empty()) lines.emplace_back();
    while (textWidth(word, size, face) > width) {
      const std::string_view front = frontWithin(word, size, face, width);
      if (front.size() == word.size()) break;
      lines.back() = front;
      word.remove_prefix(front.size());
      lines.emplace_back();
    }
    lines.back() = word;
  }
  return lines;
}

}  // namespace tussock
