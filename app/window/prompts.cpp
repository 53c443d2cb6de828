// SPDX-License-Identifier: MIT
#include "app/window/prompts.h"

#include <QFileDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>

namespace tussock {

QString QtPrompts::yardToOpen() {
  return QFileDialog::getOpenFileName(window_, QObject::tr("Open a yard"), {},
                                      QObject::tr("Yards (*.yard);;All files (*)"));
}

QString QtPrompts::yardToSave(const QString& title, const QString& suggested) {
  QString path =
      QFileDialog::getSaveFileName(window_, title, suggested, QObject::tr("Yards (*.yard)"),
                                   nullptr, QFileDialog::DontConfirmOverwrite);
  if (!path.isEmpty() && !path.endsWith(QLatin1String(".yard"))) path += QLatin1String(".yard");
  return path;
}

QString QtPrompts::pictureToBringIn() {
  return QFileDialog::getOpenFileName(window_, QObject::tr("Bring in a photo"), {},
                                      QObject::tr("Pictures (*.png *.jpg *.jpeg)"));
}

QString QtPrompts::siteToImport() {
  return QFileDialog::getOpenFileName(window_, QObject::tr("Import a site"), {},
                                      QObject::tr("GeoJSON (*.geojson *.json)"));
}

QString QtPrompts::exportTo(const QString& suggested) {
  return QFileDialog::getSaveFileName(window_, QObject::tr("Export"), suggested,
                                      QObject::tr("GeoJSON (*.geojson)"));
}

QString QtPrompts::planTo(const QString& suggested) {
  return QFileDialog::getSaveFileName(window_, QObject::tr("Planting plan"), suggested,
                                      QObject::tr("PDF (*.pdf);;SVG (*.svg)"));
}

QString QtPrompts::plantsToBringIn() {
  return QFileDialog::getOpenFileName(window_, QObject::tr("Bring in plants"), {},
                                      QObject::tr("Comma-separated values (*.csv)"));
}

QString QtPrompts::plantsTo(const QString& suggested) {
  return QFileDialog::getSaveFileName(window_, QObject::tr("Write out plants"), suggested,
                                      QObject::tr("Comma-separated values (*.csv)"));
}

bool QtPrompts::choosePrinter(QPrinter& printer) {
  return QPrintDialog(&printer, window_).exec() == QDialog::Accepted;
}

void QtPrompts::tellAbout() {
  QMessageBox::about(
      window_, QObject::tr("About Tussock"),
      QObject::tr(
          "<h3>Tussock</h3><p>Planting plans for beds of native plants.</p>"
          "<p>Plant facts come from the sources named beside them; where plants are "
          "recorded is mostly from USDA PLANTS. Sizes, spacings and limits are guidance: local "
          "codes, site conditions and licensed practice come first. Before digging, have "
          "buried lines marked.</p><p>MIT licence.</p>"));
}

}  // namespace tussock
