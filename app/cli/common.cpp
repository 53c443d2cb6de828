// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cctype>
#include <ostream>
#include <QGuiApplication>

#include "app/cli/commands.h"
#include "app/files/whole_file.h"

namespace tussock {

Catalogue shippedFacts(Console& console) {
  const CatalogueReading reading = readShippedCatalogue();
  for (const CatalogueError& error : reading.errors) console.err << error.text() << '\n';
  return reading.catalogue;
}

void writeWhole(const std::filesystem::path& path, const std::string& bytes) {
  saveWhole(QString::fromStdString(path.string()), QByteArray::fromStdString(bytes));
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

void ensurePainting() {
  if (QCoreApplication::instance() != nullptr) return;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  static int count = 1;
  static char name[] = "tussock";
  static char* arguments[] = {name, nullptr};
  static QGuiApplication application(count, arguments);
}

}  // namespace tussock
