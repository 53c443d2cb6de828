// SPDX-License-Identifier: MIT
#include "core/checks/kept_findings.h"

#include <algorithm>

#include "core/checks/survey.h"

namespace tussock {

namespace {

std::vector<const void*> objectsOf(const SurveyedBed& bed) {
  std::vector<const void*> objects{bed.bed};
  for (const SurveyedDrift& drift : bed.drifts) objects.push_back(drift.drift);
  return objects;
}

template <class Keyed>
void append(std::vector<Keyed>& all, std::vector<Finding> findings) {
  for (Finding& finding : findings) {
    std::string key = keyOf(finding);
    all.push_back({std::move(key), std::move(finding)});
  }
}

}  // namespace

// What a bed's findings depend on besides the bed and its drifts.
bool KeptFindings::sameSurroundings(const CheckInput& input) const {
  if (!yard_ || &facts_.species() != &input.facts.species()) return false;
  const Yard& now = input.yard;
  return yard_->settings == now.settings && yard_->buildings.shares(now.buildings) &&
         yard_->barriers.shares(now.barriers) && yard_->trees.shares(now.trees) &&
         yard_->pavings.shares(now.pavings) && yard_->steppingPlaces.shares(now.steppingPlaces);
}

// Null when stopped.
std::shared_ptr<const KeptFindings::OfBed> KeptFindings::checkBed(const Survey& survey,
                                                                  const SurveyedBed& bed,
                                                                  const std::stop_token& stop) {
  auto result = std::make_shared<OfBed>();
  result->objects = objectsOf(bed);
  for (const CheckEntry& check : allChecks()) {
    if (stop.stop_requested()) return nullptr;
    if (check.ofBed != nullptr) append(result->findings, check.ofBed(survey, bed));
  }
  return result;
}

std::vector<Finding> KeptFindings::sorted(const OfBeds& ofBeds, const std::vector<Keyed>& ofYard) {
  std::vector<const Keyed*> order;
  for (const Keyed& keyed : ofYard) order.push_back(&keyed);
  for (const auto& [id, ofBed] : ofBeds)
    for (const Keyed& keyed : ofBed->findings) order.push_back(&keyed);
  std::sort(order.begin(), order.end(), [](const Keyed* a, const Keyed* b) {
    if (a->finding.severity != b->finding.severity)
      return a->finding.severity > b->finding.severity;
    return a->key < b->key;
  });
  std::vector<Finding> findings;
  findings.reserve(order.size());
  for (const Keyed* keyed : order) findings.push_back(keyed->finding);
  return findings;
}

std::optional<std::vector<Finding>> KeptFindings::run(const CheckInput& input,
                                                      std::stop_token stop) {
  const Survey survey = surveyOf(input);
  if (!sameSurroundings(input)) ofBeds_.clear();
  OfBeds ofBeds;
  for (const SurveyedBed& bed : survey.beds) {
    const auto kept = ofBeds_.find(bed.bed->id);
    if (kept != ofBeds_.end() && kept->second->objects == objectsOf(bed)) {
      ofBeds.emplace(bed.bed->id, kept->second);
    } else if (auto fresh = checkBed(survey, bed, stop)) {
      ofBeds.emplace(bed.bed->id, std::move(fresh));
    } else {
      return std::nullopt;
    }
  }
  std::vector<Keyed> ofYard;
  for (const CheckEntry& check : allChecks()) {
    if (stop.stop_requested()) return std::nullopt;
    if (check.ofYard != nullptr) append(ofYard, check.ofYard(survey));
  }
  yard_ = input.yard;
  facts_ = input.facts;
  ofBeds_ = std::move(ofBeds);
  return sorted(ofBeds_, ofYard);
}

}  // namespace tussock
