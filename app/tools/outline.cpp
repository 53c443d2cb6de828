// SPDX-License-Identifier: MIT
#include "app/tools/outline.h"

namespace tussock {

namespace {

Outline fromPolygon(const Polygon& polygon) {
  Outline outline{{polygon.outer}, true};
  outline.rings.insert(outline.rings.end(), polygon.holes.begin(), polygon.holes.end());
  return outline;
}

Polygon toPolygon(const Outline& outline) {
  if (outline.rings.empty()) return {};
  return {outline.rings.front(), {outline.rings.begin() + 1, outline.rings.end()}};
}

// The one field of an object that holds its shape; null when it has none.
template <class T>
auto polygonIn(T& o) {
  if constexpr (requires { o.outline; })
    return &o.outline;
  else if constexpr (requires { o.handDigWidth; })
    return &o.line;
  else if constexpr (requires { o.eave; })
    return &o.footprint;
  else
    return nullptr;
}

std::size_t leastCorners(const Outline& outline) {
  return outline.closed ? 3 : 2;
}

}  // namespace

std::optional<Outline> outlineOf(const Object& object) {
  return std::visit(
      [](const auto& o) -> std::optional<Outline> {
        using T = std::decay_t<decltype(o)>;
        if constexpr (std::is_same_v<T, Barrier>) {
          if (!o.footprint.empty()) return fromPolygon(o.footprint);
          return Outline{{o.line}, false};
        } else if constexpr (std::is_null_pointer_v<decltype(polygonIn(o))>) {
          return std::nullopt;
        } else if constexpr (std::is_same_v<T, BuriedLine>) {
          return Outline{{o.line}, false};
        } else {
          return fromPolygon(*polygonIn(o));
        }
      },
      object);
}

Object withOutline(Object object, const Outline& outline) {
  std::visit(
      [&](auto& o) {
        using T = std::decay_t<decltype(o)>;
        if constexpr (std::is_same_v<T, Barrier>) {
          if (outline.closed)
            o.footprint = normalised(toPolygon(outline));
          else
            o.line = outline.rings.front();
        } else if constexpr (std::is_same_v<T, BuriedLine>) {
          o.line = outline.rings.front();
        } else if constexpr (!std::is_null_pointer_v<decltype(polygonIn(o))>) {
          *polygonIn(o) = normalised(toPolygon(outline));
        }
      },
      object);
  return object;
}

Outline withCornerAt(Outline outline, CornerAt at, Point to) {
  outline.rings[at.ring][at.corner] = to;
  return outline;
}

Outline withCornerAfter(Outline outline, CornerAt at, Point to) {
  Ring& ring = outline.rings[at.ring];
  ring.insert(ring.begin() + static_cast<std::ptrdiff_t>(at.corner) + 1, to);
  return outline;
}

std::optional<Outline> withoutCorner(Outline outline, CornerAt at) {
  Ring& ring = outline.rings[at.ring];
  if (ring.size() > leastCorners(outline)) {
    ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(at.corner));
    return outline;
  }
  if (at.ring == 0) return std::nullopt;
  outline.rings.erase(outline.rings.begin() + static_cast<std::ptrdiff_t>(at.ring));
  return outline;
}

std::string refusalOf(Invalidity reason) {
  switch (reason) {
    case Invalidity::CrossesItself:
      return "The outline would cross or touch itself. Put the corner where no sides meet.";
    case Invalidity::HoleOutside:
    case Invalidity::HoleInHole:
      return "A hole would lie across the edge. Keep holes inside, clear of it and of each other.";
    case Invalidity::NoArea:
    case Invalidity::RepeatedPoint:
      return "The outline would enclose no ground. Set its corners further apart.";
    case Invalidity::TooFewPoints:
      return "An outline needs at least three corners. Set one more.";
    case Invalidity::NotFinite:
      return "That corner would lie beyond all ground. Zoom in and set it nearer.";
  }
  return {};
}

std::string troubleWith(const Outline& outline) {
  if (outline.rings.empty() || outline.rings.front().size() < leastCorners(outline))
    return refusalOf(Invalidity::TooFewPoints);
  if (!outline.closed) return {};
  const auto reason = invalidityOf(toPolygon(outline));
  return reason ? refusalOf(*reason) : std::string();
}

}  // namespace tussock
