// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cctype>
#include <charconv>
#include <cstdint>
#include <ostream>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <fmt/format.h>

#include "app/cli/commands.h"
#include "app/document/personal_plants.h"
#include "app/files/whole_file.h"

namespace tussock {

Catalogue shippedFacts(Console& console) {
  const CatalogueReading reading = readShippedCatalogue();
  for (const CatalogueError& error : reading.errors) console.err << error.text() << '\n';
  return reading.catalogue;
}

PlantFacts plantsFor(const Yard& yard, Console& console) {
  const Catalogue published = shippedFacts(console);
  OwnPlantsReading personal = readPersonalPlants(published);
  for (const CatalogueError& error : personal.errors) console.err << error.text() << '\n';
  PlantFacts plants(published);
  plants.setPersonal(std::move(personal.plants), std::move(personal.species));
  plants.follow(yard);
  for (const CatalogueError& error : plants.faults()) console.err << error.text() << '\n';
  return plants;
}

Catalogue factsFor(const Yard& yard, Console& console) {
  return plantsFor(yard, console).catalogue();
}

ExitCode afterImport(const GeoJsonImport& import) {
  return import.leftOut > 0 ? ExitCode::Findings : ExitCode::Done;
}

void writeWhole(const std::filesystem::path& path, const std::string& bytes) {
  saveWhole(QString::fromStdString(path.string()), QByteArray::fromStdString(bytes));
}

void refuseOutput(const std::string& out) {
  if (out.empty()) return;
  const QString why = whyNotOver(QString::fromStdString(out));
  if (!why.isEmpty()) throw UsageError(why.toStdString());
  if (isPersonalPlants(QString::fromStdString(out)))
    throw UsageError(out + " is the table that your own plants are kept in. Name another file.");
}

std::string lowerExtension(const std::filesystem::path& path) {
  std::string extension = path.extension().string();
  std::transform(extension.begin(), extension.end(), extension.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return extension;
}

std::string counted(std::size_t count, const std::string& one) {
  return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

CLI::Validator wholeFromOne() {
  const std::string range = "a whole number from 1";
  const auto check = [range](const std::string& text) {
    std::uint32_t value = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    const bool fits = read.ec == std::errc() && read.ptr == end && value >= 1;
    return fits ? std::string() : "'" + text + "' is not " + range;
  };
  return CLI::Validator(check, range);
}

CLI::Validator between(double least, double most) {
  const std::string range = fmt::format("from {} to {}", least, most);
  const auto check = [least, most, range](const std::string& text) {
    double value = 0.0;
    const bool fits = CLI::detail::lexical_cast(text, value) && value >= least && value <= most;
    return fits ? std::string() : "'" + text + "' is not a number " + range;
  };
  return CLI::Validator(check, range);
}

// Where a job without a login session paints, Qt looks for the folder of the session (XDG Base
// Directory Specification) and complains of its absence. A private one, gone at the end, is what
// the specification asks programs to fall back to.
static void giveRuntimeFolder() {
  if (qEnvironmentVariableIsSet("XDG_RUNTIME_DIR")) return;
  static const QTemporaryDir folder;
  if (folder.isValid()) qputenv("XDG_RUNTIME_DIR", folder.path().toLocal8Bit());
}

void ensurePainting() {
  if (QCoreApplication::instance() != nullptr) return;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  giveRuntimeFolder();
  static int count = 1;
  static char name[] = "tussock";
  static char* arguments[] = {name, nullptr};
  static QGuiApplication application(count, arguments);
}

}  // namespace tussock
