// SPDX-License-Identifier: MIT
#include <cmath>
#include <QBuffer>
#include <QFileInfo>
#include <QPrinter>
#include <QSvgGenerator>
#include <stdexcept>

#include "app/files/whole_file.h"
#include "app/print/pages.h"
#include "app/print/plan_output.h"

namespace tussock {

namespace {

constexpr double kMillimetresPerInch = 25.4;
constexpr int kSvgUnits = 10;  // to the millimetre, so that page sizes are whole numbers

// Letters are shapes in the file; here are the words, for searching and for reading aloud.
QString wordsOn(const Sheet& sheet) {
  QStringList words;
  for (const PaperItem& item : sheet.items) {
    if (const auto* text = std::get_if<PaperText>(&item))
      words << QString::fromStdString(text->text);
    if (const auto* label = std::get_if<PaperLabel>(&item))
      words << QString::fromStdString(label->text.text);
  }
  return words.join(QLatin1Char('\n'));
}

}  // namespace

void writeSheetSvg(const Sheet& sheet, const QString& path) {
  QBuffer buffer;
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  const QSize size(static_cast<int>(std::lround(sheet.widthMm * kSvgUnits)),
                   static_cast<int>(std::lround(sheet.heightMm * kSvgUnits)));
  generator.setResolution(static_cast<int>(kMillimetresPerInch * kSvgUnits));
  generator.setSize(size);
  generator.setViewBox(QRect(QPoint(0, 0), size));
  generator.setTitle(QString::fromStdString(sheet.title));
  generator.setDescription(wordsOn(sheet));
  QPainter painter(&generator);
  painter.scale(kSvgUnits, kSvgUnits);
  paintSheet(painter, sheet);
  painter.end();
  saveWhole(path, buffer.data());
}

QStringList writePlanSvg(const Plan& plan, const QString& path) {
  QStringList paths;
  if (plan.sheets.size() == 1) {
    paths << path;
  } else {
    const QFileInfo file(path);
    const QString stem = file.path() + QLatin1Char('/') + file.completeBaseName();
    for (std::size_t i = 0; i < plan.sheets.size(); ++i)
      paths << QStringLiteral("%1-%2.svg").arg(stem).arg(i + 1, 2, 10, QLatin1Char('0'));
  }
  for (std::size_t i = 0; i < plan.sheets.size(); ++i)
    writeSheetSvg(plan.sheets[i], paths[static_cast<qsizetype>(i)]);
  return paths;
}

QImage renderSheet(const Sheet& sheet, double dotsPerInch) {
  const double dots = dotsPerInch / kMillimetresPerInch;
  QImage image(static_cast<int>(std::lround(sheet.widthMm * dots)),
               static_cast<int>(std::lround(sheet.heightMm * dots)), QImage::Format_RGB32);
  if (image.isNull())
    throw std::runtime_error(
        PrintWords::tr("There is not enough memory for a picture at %1 dots an inch. "
                       "Choose fewer.")
            .arg(dotsPerInch)
            .toStdString());
  image.setDotsPerMeterX(static_cast<int>(std::lround(dots * 1000.0)));
  image.setDotsPerMeterY(static_cast<int>(std::lround(dots * 1000.0)));
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(dots, dots);
  paintSheet(painter, sheet);
  return image;
}

void printPlan(const Plan& plan, QPrinter& printer) {
  printer.setFullPage(true);  // measured from the paper's corner, not the printable area's
  QPainter painter;
  for (const Sheet& sheet : plan.sheets) {
    printer.setPageLayout(pageLayoutOf(sheet));
    printer.setFullPage(true);
    const bool ready = painter.isActive() ? printer.newPage() : painter.begin(&printer);
    if (!ready)
      throw std::runtime_error(
          PrintWords::tr("The printer does not take the page. See that it is on and "
                         "has paper, then print again.")
              .toStdString());
    painter.resetTransform();
    painter.scale(printer.logicalDpiX() / kMillimetresPerInch,
                  printer.logicalDpiY() / kMillimetresPerInch);
    paintSheet(painter, sheet);
  }
}

}  // namespace tussock
