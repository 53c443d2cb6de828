// SPDX-License-Identifier: MIT
// Names and measures as the sentences about findings use them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/checks/finding.h"

namespace tussock {

class Wording {
 public:
  Wording(const Yard& yard, const Catalogue& facts) : yard_(yard), facts_(facts) {}

  [[nodiscard]] const Yard& yard() const { return yard_; }
  [[nodiscard]] const Catalogue& facts() const { return facts_; }
  [[nodiscard]] const Drift* drift(ObjectRef ref) const;  // null when it is none, or has left

  [[nodiscard]] std::string species(std::string_view botanicalName) const;  // see nameApart
  [[nodiscard]] std::string plant(ObjectRef drift) const;                   // "wild bergamot"
  [[nodiscard]] std::string inBed(ObjectRef drift) const;   // " in “Walk”", or nothing
  [[nodiscard]] std::string bedName(ObjectRef bed) const;   // "“Walk”" or "the bed"
  [[nodiscard]] std::string obstacle(ObjectRef ref) const;  // "the paving “Front walk”"

  [[nodiscard]] std::string length(double metres) const;
  [[nodiscard]] std::string measure(double value, Quantity unit) const;

 private:
  const Yard& yard_;
  const Catalogue& facts_;
};

[[nodiscard]] std::string quoted(std::string_view name);  // “name”
// With no-break spaces, so that a number never parts from its unit at the end of a line.
[[nodiscard]] std::string unbroken(std::string measure);
[[nodiscard]] std::string sentence(std::string text);  // first letter large
[[nodiscard]] std::string percent(double share);       // "24 %"
[[nodiscard]] std::string hours(double value);         // "3.2 hours"
[[nodiscard]] std::string plants(std::size_t count);   // "1 plant", "3 plants"
[[nodiscard]] std::string joined(const std::vector<std::string>& parts, std::string_view last);
// The first `most` of them: "a, b and 3 more".
[[nodiscard]] std::string firstOf(std::vector<std::string> parts, std::size_t most);

}  // namespace tussock
