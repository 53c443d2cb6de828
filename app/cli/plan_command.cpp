// SPDX-License-Identifier: MIT
#include <memory>
#include <ostream>

#include "app/cli/commands.h"
#include "app/print/local_date.h"
#include "app/print/plan_output.h"
#include "core/sheets/plan.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

constexpr std::size_t kMostSheets = 300;
constexpr std::size_t kLongestRevision = 12;  // bytes; more would crowd the title strip

struct PlanCommand {
  std::string file, out, paper = "letter", scale, revision = "A";
};

PlanOptions optionsFrom(const PlanCommand& command) {
  PlanOptions options;
  options.date = localToday();
  options.revision = command.revision;
  const auto paper = fromWord<Paper>(command.paper);
  if (!paper) throw UsageError("--paper is '" + command.paper + "'. Choose letter or a4.");
  options.paper = *paper;
  if (options.revision.empty() || options.revision.size() > kLongestRevision)
    throw UsageError("--revision is '" + command.revision +
                     "'. Give a letter or a short mark, at most 12 characters.");
  if (command.scale.empty()) return options;
  options.bedScale = parseScale(command.scale);
  if (!options.bedScale)
    throw UsageError("--scale is '" + command.scale + "'. Give it as 1:24, or as 1/2 in = 1 ft.");
  return options;
}

ExitCode runPlan(const PlanCommand& command, Console& console) {
  const std::string extension = lowerExtension(command.out);
  if (extension != ".pdf" && extension != ".svg")
    throw UsageError("--out is '" + command.out + "'. Name a .pdf or .svg file.");
  const PlanOptions options = optionsFrom(command);
  refuseOutput(command.out);
  const YardFile file = YardFile::open(command.file, YardFile::Access::ReadOnly);
  const Plan plan = makePlan(file.yard(), factsFor(file.yard(), console), options);
  if (plan.sheets.size() > kMostSheets)
    throw UsageError("At that scale the plan has " + counted(plan.sheets.size(), "sheet") +
                     ". Choose a smaller scale, or leave --scale out for the one that fits.");
  ensurePainting();
  const QString out = QString::fromStdString(command.out);
  QStringList written{out};
  if (extension == ".pdf")
    writePlanPdf(plan, out);
  else
    written = writePlanSvg(plan, out);
  console.err << counted(plan.sheets.size(), "sheet") << ", "
              << counted(static_cast<std::size_t>(plan.totals.scheduled), "plant") << ": "
              << written.first().toStdString();
  if (written.size() > 1) console.err << " to " << written.last().toStdString();
  console.err << '\n';
  return ExitCode::Done;
}

}  // namespace

void addPlan(CLI::App& app, Action& chosen) {
  auto* subcommand = app.add_subcommand("plan", "Write the planting plan, ready to print");
  auto command = std::make_shared<PlanCommand>();
  subcommand->add_option("FILE", command->file, "Yard file")->required();
  subcommand->add_option("--out", command->out, "File to write: .pdf, or .svg for one a sheet")
      ->required();
  subcommand->add_option("--paper", command->paper, "letter or a4");
  subcommand->add_option("--scale", command->scale, "Scale of the bed sheets, such as 1:24");
  subcommand->add_option("--revision", command->revision, "Revision letter in the title strip");
  subcommand->callback([command, &chosen] {
    chosen = [command](Console& console) { return runPlan(*command, console); };
  });
}

}  // namespace tussock
