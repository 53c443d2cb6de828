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

void append(std::vector<Finding>& all, std::vector<Finding> more) {
  std::move(more.begin(), more.end(), std::back_inserter(all));
}

bool goesBefore(const Finding* a, const Finding* b) {
  if (a->severity != b->severity) return a->severity > b->severity;
  if (a->check != b->check) return a->check < b->check;
  if (a->subjects != b->subjects) return a->subjects < b->subjects;
  return a->about < b->about;
}

std::vector<Finding> inOrder(std::vector<const Finding*> findings) {
  std::sort(findings.begin(), findings.end(), goesBefore);
  std::vector<Finding> result;
  result.reserve(findings.size());
  for (const Finding* finding : findings) result.push_back(*finding);
  return result;
}

std::optional<std::vector<Finding>> checkYard(const Survey& survey, const std::stop_token& stop) {
  std::vector<Finding> findings;
  for (const CheckEntry& check : allChecks()) {
    if (stop.stop_requested()) return std::nullopt;
    if (check.ofYard != nullptr) append(findings, check.ofYard(survey));
  }
  return findings;
}

}  // namespace

// What a bed's findings depend on besides the bed and its drifts.
bool KeptFindings::sameSurroundings(const CheckInput& input) const {
  if (!yard_ || sun_.get() != input.sun || &facts_.species() != &input.facts.species())
    return false;
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

std::optional<KeptFindings::OfBeds> KeptFindings::checkBeds(const Survey& survey,
                                                            const std::stop_token& stop) const {
  const bool mayKeep = sameSurroundings({survey.yard, survey.facts, survey.sun});
  OfBeds ofBeds;
  for (const SurveyedBed& bed : survey.beds) {
    const auto kept = ofBeds_.find(bed.bed->id);
    const bool same = mayKeep && kept != ofBeds_.end() && kept->second->objects == objectsOf(bed);
    auto ofBed = same ? kept->second : checkBed(survey, bed, stop);
    if (ofBed == nullptr) return std::nullopt;
    ofBeds.emplace_hint(ofBeds.end(), bed.bed->id, std::move(ofBed));
  }
  return ofBeds;
}

std::optional<std::vector<Finding>> KeptFindings::run(const Yard& yard, const Catalogue& facts,
                                                      std::shared_ptr<const SunMap> sun,
                                                      std::stop_token stop) {
  const Survey survey = surveyOf({yard, facts, sun.get()});
  auto ofBeds = checkBeds(survey, stop);
  if (!ofBeds) return std::nullopt;
  const auto ofYard = checkYard(survey, stop);
  if (!ofYard) return std::nullopt;
  std::vector<const Finding*> all;
  for (const Finding& finding : *ofYard) all.push_back(&finding);
  for (const auto& [id, ofBed] : *ofBeds)
    for (const Finding& finding : ofBed->findings) all.push_back(&finding);
  yard_ = yard;
  facts_ = facts;
  sun_ = std::move(sun);
  ofBeds_ = std::move(*ofBeds);
  return inOrder(std::move(all));
}

}  // namespace tussock
