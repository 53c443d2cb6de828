// SPDX-License-Identifier: MIT
#include "app/window/plan_commands.h"

#include <QDate>
#include <QFileInfo>
#include <QLocale>
#include <QPageSize>
#include <QPrinter>

#include "app/print/plan_output.h"

namespace tussock {

namespace {

Date today() {
  const QDate day = QDate::currentDate();
  return Date(std::chrono::year(day.year()), std::chrono::month(unsigned(day.month())),
              std::chrono::day(unsigned(day.day())));
}

// Letter where inches are used, A4 elsewhere.
PlanOptions usualOptions() {
  PlanOptions options;
  options.date = today();
  options.paper =
      QLocale().measurementSystem() == QLocale::MetricSystem ? Paper::A4 : Paper::Letter;
  return options;
}

}  // namespace

void PlanCommands::writePlan() {
  const QString name = QFileInfo(document_.path()).completeBaseName();
  const QString path = prompts_->planTo(name + QStringLiteral(".pdf"));
  if (path.isEmpty()) return;
  try {
    const Plan plan = makePlan(document_.yard(), document_.facts(), usualOptions());
    if (path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive)) {
      (void)writePlanSvg(plan, path);
    } else {
      writePlanPdf(plan, path);
    }
  } catch (const std::exception& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
  }
}

void PlanCommands::print() {
  PlanOptions options = usualOptions();
  QPrinter printer(QPrinter::HighResolution);
  if (!prompts_->choosePrinter(printer)) return;
  options.paper = printer.pageLayout().pageSize().id() == QPageSize::A4 ? Paper::A4 : Paper::Letter;
  try {
    printPlan(makePlan(document_.yard(), document_.facts(), options), printer);
  } catch (const std::exception& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
  }
}

}  // namespace tussock
