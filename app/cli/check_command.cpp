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

FindingText textOf(const Finding& finding, const CheckInput& input) {
  return describe(finding, input.yard, input.facts, input.sun);
}

Json toJson(const Finding& finding, const CheckInput& input) {
  const FindingText text = textOf(finding, input);
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
          {"accepted", acceptanceOf(input.yard, finding) != nullptr}};
}

void printJson(const std::vector<Finding>& findings, const CheckInput& input, std::ostream& out) {
  Json list = Json::array();
  for (const Finding& finding : findings) list.push_back(toJson(finding, input));
  out << Json{{"findings", list}}.dump(2) << '\n';
}

void printText(const std::vector<Finding>& findings, const CheckInput& input, std::ostream& out) {
  std::size_t accepted = 0;
  for (const Finding& finding : findings) {
    const FindingText text = textOf(finding, input);
    out << wordOf(finding.severity) << ": " << text.title << '\n'
        << "  " << text.text << '\n'
        << "  " << text.limit << '\n';
    if (const Acceptance* acceptance = acceptanceOf(input.yard, finding)) {
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
  const CheckInput input{yard, facts, sun ? &*sun : nullptr};
  const auto findings = runChecks(input).value();
  if (options.json) {
    printJson(findings, input, console.out);
  } else {
    printText(findings, input, console.out);
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
