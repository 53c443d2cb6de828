// SPDX-License-Identifier: MIT
#include "core/sheets/overview_names.h"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/sheets/cautions.h"
#include "core/sheets/drawing.h"

namespace tussock {

namespace {

constexpr double kWidest = 45.0;     // mm of a name on the drawing
constexpr double kNameRing = 2.1;    // mm of radius around a number
constexpr double kListLine = 4.6;    // mm from one line of the list to the next
constexpr double kListNumber = 9.0;  // mm for a number and its gap

// A name and the ground it belongs to; the more important first.
struct Named {
  std::string name;
  Polygon ground;
  Face face = Face::Regular;
};

std::vector<Named> namedThings(const Yard& yard) {
  std::vector<Named> things;
  const auto add = [&](const std::string& name, const Polygon& ground) {
    if (!name.empty() && !ground.empty())
      things.push_back({printable(name), ground, Face::Regular});
  };
  for (const Bed& bed : yard.beds) {
    int plants = 0;
    for (const Drift* drift : driftsIn(yard, bed.id))
      plants += static_cast<int>(drift->plants.size());
    const std::string name = bed.name.empty() ? "Bed" : printable(bed.name);
    things.push_back({fmt::format("{} ({})", name, plants), bed.outline, Face::Bold});
  }
  for (const Building& building : yard.buildings) add(building.name, building.footprint);
  for (const Tree& tree : yard.trees) add(tree.name, disc(tree.at, tree.crownRadius));
  for (const Paving& paving : yard.pavings) add(paving.name, paving.outline);
  for (const WaterPoint& water : yard.waterPoints)
    add(water.name, disc(water.at, Length::centimetres(10), 8));
  for (const BuriedLine& buried : yard.buriedLines)
    if (!buried.line.empty())
      add(buried.name.empty() ? buried.kind : buried.name,
          disc((buried.line[0] + buried.line[buried.line.size() / 2]) * 0.5, Length::centimetres(5),
               8));
  for (const HeightLimit& limit : yard.heightLimits)
    add(fmt::format("{} (no plant, fence or building over {})",
                    limit.name.empty() ? "Height limit" : limit.name,
                    formatPlantSize(limit.height, yard.settings.units)),
        limit.outline);
  return things;
}

// Above, below, right and left of a thing, in the middle and at its corners.
std::vector<PaperPoint> placesBeside(const LabelWish& wish) {
  Box box;
  for (const Polygon& part : wish.region) box.include(boundsOf(part));
  if (box.empty()) return {};
  const double half = textWidth(wish.text, TextSize::Note, Face::Bold) / 2.0 + 2.0;
  const double above = box.low.y - 1.8, below = box.high.y + 3.8;
  const double middle = box.centre().y + 1.0;
  std::vector<PaperPoint> places;
  for (const double y : {above, below})
    for (const double x : {box.centre().x, box.high.x, box.low.x}) places.push_back({x, y});
  for (const double y : {middle, box.high.y, box.low.y})
    for (const double x : {box.high.x + half, box.low.x - half}) places.push_back({x, y});
  return places;
}

std::vector<Polygon> obstaclesOn(const Sheet& sheet, const Yard& yard) {
  std::vector<Polygon> obstacles;
  const auto add = [&](const Polygon& site) {
    for (Polygon& part : onPaper(sheet, site)) obstacles.push_back(std::move(part));
  };
  const double lineMetres = sheet.scale / 1000.0;  // a millimetre on paper
  for (const Bed& bed : yard.beds) add(bed.outline);
  for (const Building& building : yard.buildings) add(building.footprint);
  for (const Paving& paving : yard.pavings) add(paving.outline);
  for (const Barrier& barrier : yard.barriers) {
    add(barrier.footprint);
    for (const Polygon& part : strip(barrier.line, barrier.thickness)) add(part);
  }
  for (const BuriedLine& buried : yard.buriedLines)
    for (const Polygon& part : strip(buried.line, Length::metres(lineMetres))) add(part);
  for (const LotLine& lot : yard.lotLines)
    for (std::size_t i = 0; i < lot.outline.outer.size(); ++i)
      for (const Polygon& part :
           strip({lot.outline.outer[i], lot.outline.outer[(i + 1) % lot.outline.outer.size()]},
                 Length::metres(lineMetres)))
        add(part);
  for (const WaterPoint& water : yard.waterPoints)
    add(disc(water.at, Length::metres(1.3 * lineMetres), 12));
  for (const Tree& tree : yard.trees)
    add(disc(tree.at, std::max(tree.trunkDiameter * 0.5, Length::metres(lineMetres)), 12));
  return obstacles;
}

// Wide enough for the largest number and its ring.
std::string numberStandIn(std::size_t names) {
  return "  " + std::string(std::max<std::size_t>(1, std::to_string(names).size()), '0') + "  ";
}

std::vector<LabelWish> wishesFor(const Sheet& sheet, const std::vector<Named>& things,
                                 const std::vector<PaperPoint>& marks) {
  std::vector<LabelWish> wishes;
  for (const Named& thing : things) {
    const bool fits = textWidth(thing.name, TextSize::Note, thing.face) <= kWidest;
    LabelWish wish{fits ? thing.name : "", {}, {}, {}};
    wish.effort = Effort::Beside, wish.face = thing.face;
    wish.instead = numberStandIn(things.size());
    const PaperPoint at = toPaper(sheet, labelPoint(thing.ground));
    wish.anchor = {std::clamp(at.x, sheet.drawing.left, sheet.drawing.right),
                   std::clamp(at.y, sheet.drawing.top, sheet.drawing.bottom)};
    wish.region = onPaper(sheet, thing.ground);
    wish.avoid = marks;
    wish.beside = placesBeside(wish);
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

void addNumber(Sheet& sheet, PaperText text, std::size_t number) {
  text.text = std::to_string(number);
  text.bold = true, text.halo = false;
  const PaperBox box = boxOf(text);
  const PaperPoint centre{text.at.x, (box.top + text.at.y) / 2.0};
  const double radius = std::max(kNameRing, box.width() / 2.0 + 0.7);
  PaperPath ring;
  ring.weight = Weight::Fine, ring.wash = Wash::Paper;
  ring.rings = {circleAround(centre, radius)};
  sheet.items.emplace_back(std::move(ring));
  sheet.items.emplace_back(std::move(text));
}

}  // namespace

std::vector<std::string> addNames(Sheet& sheet, const Yard& yard,
                                  const std::vector<PaperPoint>& marks, LabelMargin margin) {
  margin.keepOff = obstaclesOn(sheet, yard);
  const std::vector<Named> things = namedThings(yard);
  const auto placed = placeLabels(wishesFor(sheet, things, marks), margin);
  struct Numbered {
    std::optional<PaperText> text;  // nothing where not even a number finds a place
    std::string name;
  };
  std::vector<Numbered> numbered;
  for (std::size_t i = 0; i < things.size(); ++i) {
    if (placed[i] && !placed[i]->instead)
      sheet.items.emplace_back(placed[i]->text);
    else
      numbered.push_back(
          {placed[i] ? std::optional(placed[i]->text) : std::nullopt, things[i].name});
  }
  // From left to right, so that a number is found from the list.
  std::stable_sort(numbered.begin(), numbered.end(), [](const Numbered& a, const Numbered& b) {
    return a.text && (!b.text || a.text->at.x < b.text->at.x);
  });
  std::vector<std::string> names;
  for (const Numbered& entry : numbered) {
    names.push_back(entry.name);
    if (entry.text) addNumber(sheet, *entry.text, names.size());
  }
  return names;
}

std::string listInLine(const std::vector<std::string>& names) {
  std::string list;
  for (std::size_t i = 0; i < names.size(); ++i)
    list += fmt::format("{}{} {}", i == 0 ? "" : " · ", i + 1, names[i]);
  return list;
}

std::vector<Sheet> listPages(const PlanSource& source, const std::string& title,
                             const std::vector<std::string>& names, Orientation orientation) {
  std::vector<Sheet> pages;
  for (std::size_t next = 0; next < names.size();) {
    Sheet sheet = blankPage(source.options.paper, orientation, title);
    const auto cautions = cautionLines(source.yard, {}, "", contentOf(sheet).width());
    const PaperBox room = bodyOf(sheet, {}, cautions);
    addHead(sheet, {}, source.units());
    double y = room.top + kListLine;
    while (next < names.size()) {
      const auto lines =
          wrapped(names[next], TextSize::Body, Face::Regular, room.width() - kListNumber);
      const double after = y + kListLine * static_cast<double>(lines.size());
      if (after - kListLine > room.bottom && y > room.top + kListLine) break;
      PaperText number{{room.left, y}, std::to_string(next + 1), TextSize::Body};
      number.bold = true;
      sheet.items.emplace_back(std::move(number));
      for (const std::string& line : lines) {
        sheet.items.emplace_back(PaperText{{room.left + kListNumber, y}, line, TextSize::Body});
        y += kListLine;
      }
      ++next;
    }
    addCautions(sheet, cautions);
    pages.push_back(std::move(sheet));
  }
  return pages;
}

}  // namespace tussock
