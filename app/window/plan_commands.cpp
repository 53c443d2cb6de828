// SPDX-License-Identifier: MIT
#include "app/window/plan_commands.h"

#include <QFileInfo>
#include <QPageSize>
#include <QPrinter>

#include "app/print/local_date.h"
#include "app/print/plan_output.h"

namespace tussock {

namespace {

std::optional<Paper> paperOf(const QPrinter& printer) {
  switch (printer.pageLayout().pageSize().id()) {
    case QPageSize::A4:
      return Paper::A4;
    case QPageSize::Letter:
      return Paper::Letter;
    default:
      return std::nullopt;
  }
}

}  // namespace

PlanOptions PlanCommands::options() const {
  const bool metric = document_.yard().settings.units == UnitSystem::Metres;
  PlanOptions options;
  options.date = localToday();
  options.paper = paper_.value_or(metric ? Paper::A4 : Paper::Letter);
  options.bedScale = bedScale_;
  return options;
}

void PlanCommands::writePlan() {
  const QString name = QFileInfo(document_.path()).completeBaseName();
  const QString path = prompts_->planTo(name + QStringLiteral(".pdf"));
  if (path.isEmpty()) return;
  try {
    const Plan plan = makePlan(document_.yard(), document_.facts(), options());
    QStringList paths{path};
    if (path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive))
      paths = writePlanSvg(plan, path);
    else
      writePlanPdf(plan, path);
    emit written(paths.size() == 1 ? tr("Plan written: %1").arg(paths.first())
                                   : tr("Plan written: %1 to %2").arg(paths.first(), paths.last()));
  } catch (const std::exception& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
  }
}

void PlanCommands::print() {
  QPrinter printer(QPrinter::HighResolution);
  if (!prompts_->choosePrinter(printer)) return;
  const auto paper = paperOf(printer);
  if (!paper)
    return emit troubled(
        tr("The printer is set to %1. The plan is laid out on letter or A4: choose "
           "one of them in the printer's settings.")
            .arg(printer.pageLayout().pageSize().name()));
  PlanOptions chosen = options();
  chosen.paper = *paper;
  try {
    printPlan(makePlan(document_.yard(), document_.facts(), chosen), printer);
  } catch (const std::exception& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
  }
}

}  // namespace tussock
