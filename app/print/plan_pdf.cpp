// SPDX-License-Identifier: MIT
#include <QBuffer>
#include <QCoreApplication>
#include <QPageLayout>
#include <QPdfWriter>
#include <stdexcept>

#include "app/print/pages.h"
#include "app/print/pdf_properties.h"
#include "app/print/plan_output.h"

namespace tussock {

namespace {

constexpr int kDotsPerInch = 1200;

QString explain(const char* text) {
  return QCoreApplication::translate("PlanOutput", text);
}

QString titleOf(const Plan& plan) {
  return plan.sheets.empty()
             ? explain("Planting plan")
             : explain("Planting plan: %1").arg(QString::fromStdString(plan.sheets.front().title));
}

QByteArray drawn(const Plan& plan) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kDotsPerInch);
  writer.setTitle(titleOf(plan));
  writer.setCreator(QStringLiteral("Tussock"));
  QPainter painter;
  for (const Sheet& sheet : plan.sheets) {
    writer.setPageLayout(pageLayoutOf(sheet));
    if (!painter.isActive()) {
      if (!painter.begin(&writer))
        throw std::runtime_error(explain("The PDF cannot be started.").toStdString());
    } else if (!writer.newPage()) {
      throw std::runtime_error(explain("A page of the PDF cannot be added.").toStdString());
    }
    painter.resetTransform();
    painter.scale(kDotsPerInch / 25.4, kDotsPerInch / 25.4);
    paintSheet(painter, sheet);
  }
  painter.end();
  return buffer.data();
}

}  // namespace

void writePlanPdf(const Plan& plan, const QString& path) {
  if (plan.sheets.empty())
    throw std::runtime_error(explain("The plan has no sheets to write.").toStdString());
  std::vector<QSizeF> sizes;
  for (const Sheet& sheet : plan.sheets) sizes.emplace_back(sheet.widthMm, sheet.heightMm);
  const QByteArray pdf = withPrintSettings(drawn(plan), sizes);
  saveWhole(path, pdf);
}

}  // namespace tussock
