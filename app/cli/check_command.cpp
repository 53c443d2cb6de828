// SPDX-License-Identifier: MIT
#include <algorithm>
#include <memory>
#include <ostream>

#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "core/checks/describe.h"
#include "core/checks/registry.h"
#include "core/checks/thresholds.h"
#include "core/geometry/wkt.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

using Json = nlohmann::json;

struct CheckOptions {
  std::string file;
  bool json = false;
};

Json subjectsOf(const Finding& finding) {
  Json subjects = Json::array();
  for (const ObjectRef ref : finding.subjects)
    subjects.push_back({{"kind", kindOf(ref)}, {"id", ref.id}});
  for (const Id<Plant> plant : finding.plants)
    subjects.push_back({{"kind", "plant"}, {"id", plant.value()}});
  return subjects;
}

Json toJson(const Finding& finding, const Yard& yard, const Catalogue& facts) {
  const FindingText text = describe(finding, yard, facts);
  const Threshold* threshold = findThreshold(finding.thresholdId);
  Json place = Json::array();
  for (const Polygon& polygon : finding.place) place.push_back(toWkt(polygon));
  return {{"check", wordOf(finding.check)},
          {"severity", wordOf(finding.severity)},
          {"subjects", subjectsOf(finding)},
          {"place", place},
          {"measured", finding.measured},
          {"required", finding.required},
          {"unit", wordOf(finding.unit)},
          {"source", threshold != nullptr ? threshold->source : ""},
          {"text", text.title + ". " + text.text},
          {"accepted", acceptanceOf(yard, finding) != nullptr}};
}

void printJson(const std::vector<Finding>& findings, const Yard& yard, const Catalogue& facts,
               std::ostream& out) {
  Json list = Json::array();
  for (const Finding& finding : findings) list.push_back(toJson(finding, yard, facts));
  out << Json{{"findings", list}}.dump(2) << '\n';
}

void printText(const std::vector<Finding>& findings, const Yard& yard, const Catalogue& facts,
               std::ostream& out) {
  std::size_t accepted = 0;
  for (const Finding& finding : findings) {
    const FindingText text = describe(finding, yard, facts);
    out << wordOf(finding.severity) << ": " << text.title << '\n'
        << "  " << text.text << '\n'
        << "  " << text.limit << '\n';
    if (const Acceptance* acceptance = acceptanceOf(yard, finding)) {
      ++accepted;
      out << "  Accepted: " << acceptance->reason << '\n';
    }
  }
  out << findings.size() - accepted << " open, " << accepted << " accepted\n";
}

ExitCode runCheck(const CheckOptions& options, Console& console) {
  const YardFile file = YardFile::open(options.file, YardFile::Access::ReadOnly);
  const Yard& yard = file.yard();
  const Catalogue facts = factsFor(file.yard(), console);
  const auto sun = computeSunMap(yard, seasonRequest(yard));
  const auto findings = runChecks({yard, facts, sun ? &*sun : nullptr}).value();
  if (options.json) {
    printJson(findings, yard, facts, console.out);
  } else {
    printText(findings, yard, facts, console.out);
  }
  const bool open = std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
    return acceptanceOf(yard, finding) == nullptr;
  });
  return open ? ExitCode::Findings : ExitCode::Done;
}

}  // namespace

void addCheck(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand("check", "Say what does not hold; exit code 1 if anything");
  auto options = std::make_shared<CheckOptions>();
  command->add_option("FILE", options->file, "Yard file")->required();
  command->add_flag("--json", options->json, "One JSON document");
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runCheck(*options, console); };
  });
}

}  // namespace tussock
