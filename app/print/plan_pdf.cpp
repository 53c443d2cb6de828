// SPDX-License-Identifier: MIT
#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>
#include <stdexcept>

#include "app/files/whole_file.h"
#include "app/print/pages.h"
#include "app/print/pdf_properties.h"
#include "app/print/plan_output.h"

namespace tussock {

namespace {

constexpr int kDotsPerInch = 1200;

QString titleOf(const Plan& plan) {
  return PrintWords::tr("Planting plan: %1").arg(QString::fromStdString(plan.yardName));
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
        throw std::runtime_error(PrintWords::tr("The PDF cannot be started.").toStdString());
    } else if (!writer.newPage()) {
      throw std::runtime_error(PrintWords::tr("A page of the PDF cannot be added.").toStdString());
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
    throw std::runtime_error(PrintWords::tr("The plan has no sheets to write.").toStdString());
  std::vector<QSizeF> sizes;
  for (const Sheet& sheet : plan.sheets) sizes.emplace_back(sheet.widthMm, sheet.heightMm);
  const QByteArray pdf = withPrintSettings(drawn(plan), sizes);
  saveWhole(path, pdf);
}

}  // namespace tussock
