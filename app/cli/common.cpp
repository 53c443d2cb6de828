// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cctype>
#include <ostream>
#include <QGuiApplication>
#include <QTemporaryDir>

#include "app/cli/commands.h"
#include "app/files/whole_file.h"
#include "core/catalog/own_plants.h"

namespace tussock {

Catalogue shippedFacts(Console& console) {
  const CatalogueReading reading = readShippedCatalogue();
  for (const CatalogueError& error : reading.errors) console.err << error.text() << '\n';
  return reading.catalogue;
}

Catalogue factsFor(const Yard& yard, Console& console) {
  MergedPlants merged = mergePlants({shippedFacts(console), {}, yard});
  for (const CatalogueError& error : merged.errors) console.err << error.text() << '\n';
  return std::move(merged.catalogue);
}

void writeWhole(const std::filesystem::path& path, const std::string& bytes) {
  saveWhole(QString::fromStdString(path.string()), QByteArray::fromStdString(bytes));
}

void refuseOwnFile(const std::string& out, const std::string& yard) {
  if (isSameFile(QString::fromStdString(out), QString::fromStdString(yard)))
    throw UsageError("'" + out + "' is the yard itself. Name another file to write.");
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
