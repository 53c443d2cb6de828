// SPDX-License-Identifier: MIT
#include "tests/core/planting/filled_bed.h"

#include "core/checks/registry.h"
#include "core/edit/draft.h"

namespace tussock::test {

const Catalogue& shippedFacts() {
  static const Catalogue catalogue = readShippedCatalogue().catalogue;
  return catalogue;
}

int Filled::broken() const {
  const CheckInput input{after, facts, nullptr};
  std::size_t count = 0;
  for (const CheckId rule :
       {CheckId::Spacing, CheckId::SetBack, CheckId::OddCount, CheckId::Obstructed})
    count += runCheck(rule, input).size();
  return static_cast<int>(count);
}

Filled filled(const Yard& yard, FillRequest request, const Catalogue& facts) {
  IdSource ids(largestId(yard) + 1);
  request.bed = yard.beds.begin()->id;
  FillResult result = fillChecked(yard, facts, nullptr, request, ids).value_or(FillResult());
  return {yard, apply(yard, result.edit), result, facts};
}

Filled filledBed(std::string_view outline, std::vector<ListedSpecies> plants) {
  YardBuilder builder;
  builder.bed("Bed", outline).viewing("S");
  FillRequest request;
  request.plants = std::move(plants);
  return filled(builder.build(), request);
}

}  // namespace tussock::test
