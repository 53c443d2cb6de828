// SPDX-License-Identifier: MIT
#include "core/checks/wording.h"

#include <cctype>
#include <cmath>

#include <fmt/format.h>

namespace tussock {

namespace {

std::string withName(std::string_view what, std::string_view name) {
  return name.empty() ? std::string(what) : fmt::format("{} {}", what, quoted(name));
}

struct ObstacleWords {
  std::string operator()(const Paving& o) const { return withName("the paving", o.name); }
  std::string operator()(const Building& o) const { return withName("the building", o.name); }
  std::string operator()(const Barrier& o) const {
    return withName(fmt::format("the {}", wordOf(o.kind)), o.name);
  }
  std::string operator()(const Tree& o) const {
    return o.name.empty() ? "a tree's trunk" : fmt::format("the trunk of {}", quoted(o.name));
  }
  std::string operator()(const SteppingPlace&) const { return "a stepping place"; }
  std::string operator()(const auto&) const { return "something solid"; }
};

}  // namespace

const Drift* Wording::drift(ObjectRef ref) const {
  const auto id = idIf<Drift>(ref);
  return id ? yard_.drifts.find(*id) : nullptr;
}

std::string Wording::species(std::string_view botanicalName) const {
  const Species* known = facts_.find(botanicalName);
  return known != nullptr ? facts_.nameApart(*known) : std::string(botanicalName);
}

std::string Wording::plant(ObjectRef ref) const {
  const Drift* found = drift(ref);
  return found != nullptr ? species(found->species) : "a drift";
}

std::string Wording::inBed(ObjectRef ref) const {
  const Drift* found = drift(ref);
  const Bed* bed = found != nullptr ? yard_.beds.find(found->bed) : nullptr;
  return bed != nullptr && !bed->name.empty() ? " in " + quoted(bed->name) : "";
}

std::string Wording::bedName(ObjectRef ref) const {
  const auto id = idIf<Bed>(ref);
  const Bed* bed = id ? yard_.beds.find(*id) : nullptr;
  return bed != nullptr && !bed->name.empty() ? quoted(bed->name) : "the bed";
}

std::string Wording::obstacle(ObjectRef ref) const {
  const auto object = objectAt(yard_, ref);
  return object ? std::visit(ObstacleWords{}, *object) : "something solid";
}

std::string Wording::length(double metres) const {
  return unbroken(formatLength(Length::metres(metres), yard_.settings.units));
}

std::string Wording::measure(double value, Quantity unit) const {
  switch (unit) {
    case Quantity::Metres:
      return length(value);
    case Quantity::Hours:
      return hours(value);
    case Quantity::Share:
      return percent(value);
    case Quantity::Count:
      return fmt::format("{:.0f}", value);
    case Quantity::Weeks:
      return fmt::format("{:g} {}", std::round(value * 10.0) / 10.0,
                         value == 1.0 ? "week" : "weeks");
  }
  return {};
}

std::string unbroken(std::string measure) {
  for (std::size_t at; (at = measure.find(' ')) != std::string::npos;)
    measure.replace(at, 1, "\u00a0");
  return measure;
}

std::string quoted(std::string_view name) {
  return fmt::format("“{}”", name);
}

std::string sentence(std::string text) {
  if (!text.empty()) text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  return text;
}

std::string percent(double share) {
  return unbroken(fmt::format("{:.0f} %", share * 100.0));
}

std::string hours(double value) {
  return unbroken(fmt::format("{:.1f} hours", value));
}

std::string plants(std::size_t count) {
  return fmt::format("{} {}", count, count == 1 ? "plant" : "plants");
}

std::string firstOf(std::vector<std::string> parts, std::size_t most) {
  if (parts.size() > most) {
    const std::size_t others = parts.size() - most;
    parts.resize(most);
    parts.push_back(fmt::format("{} more", others));
  }
  return joined(parts, "and");
}

std::string joined(const std::vector<std::string>& parts, std::string_view last) {
  std::string out;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) out += i + 1 == parts.size() ? fmt::format(" {} ", last) : ", ";
    out += parts[i];
  }
  return out;
}

}  // namespace tussock
