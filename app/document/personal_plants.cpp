// SPDX-License-Identifier: MIT
#include "app/document/personal_plants.h"

#include <algorithm>
#include <filesystem>
#include <optional>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <stdexcept>
#include <string>
#include <system_error>

#include "app/files/whole_file.h"
#include "core/exchange/rewritten_table.h"

namespace tussock {

namespace {

QString keepBeside(const QString& path) {
  QString kept = path + QStringLiteral(".kept");
  for (int number = 2; QFile::exists(kept); ++number)
    kept = QStringLiteral("%1.kept%2").arg(path).arg(number);
  if (!QFile::copy(path, kept))
    throw std::runtime_error("Cannot keep a copy of " + path.toStdString() +
                             " beside it. Make room there, or move the file away, then try "
                             "again.");
  return kept;
}

// Nothing when there is no such file, or it may not be read.
std::optional<std::string> personalText() {
  QFile file(personalPlantsPath());
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  std::string text(static_cast<std::size_t>(file.size()), '\0');
  const qint64 read = file.read(text.data(), file.size());
  text.resize(static_cast<std::size_t>(std::max<qint64>(read, 0)));
  return text;
}

}  // namespace

QString personalPlantsPath() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
         QStringLiteral("/tussock/plants.csv");
}

bool isPersonalPlants(const QString& path) {
  std::error_code error;
  const std::filesystem::path own = personalPlantsPath().toStdString();
  if (std::filesystem::equivalent(path.toStdString(), own, error)) return true;
  const auto place = std::filesystem::weakly_canonical(path.toStdString(), error);
  return !error && place == std::filesystem::weakly_canonical(own, error);
}

OwnPlantsReading readPersonalPlants(const Catalogue& published) {
  const std::string path = personalPlantsPath().toStdString();
  if (!QFile::exists(personalPlantsPath())) return {};
  const std::optional<std::string> text = personalText();
  if (!text) {
    OwnPlantsReading none;
    none.errors = {{path, 0, "", "", "leave to read the file"}};
    return none;
  }
  return readOwnPlants(*text, path, published);
}

QString keepPersonalPlants() {
  return keepBeside(personalPlantsPath());
}

void expectRewritable(const OwnPlantsReading& reading) {
  if (reading.errors.empty() || reading.canBeRewritten) return;
  std::string text = "Nothing was changed, for the file of your own plants cannot be read:";
  for (const CatalogueError& error : reading.errors)
    if (!reading.rowsLeft.contains(error.line)) text += ' ' + error.text();
  throw std::runtime_error(text + " Mend that in " + personalPlantsPath().toStdString() +
                           ", or move the file away, then try again.");
}

std::set<std::size_t> rowsReplacedBy(const std::vector<OwnSpecies>& taken,
                                     const Catalogue& published) {
  const std::optional<std::string> text = personalText();
  if (!text || taken.empty()) return {};
  const std::string path = personalPlantsPath().toStdString();
  return rowsOf(taken, *text, readOwnPlants(*text, path, published).rowsLeft);
}

void savePersonalPlants(const std::vector<OwnSpecies>& plants, const Catalogue& published,
                        const std::vector<OwnSpecies>& taken) {
  const QString path = personalPlantsPath();
  QDir().mkpath(QFileInfo(path).path());
  const std::optional<std::string> before = personalText();
  OwnPlantsReading read = before ? readOwnPlants(*before, path.toStdString(), published)
                                 : readPersonalPlants(published);
  expectRewritable(read);
  if (before)
    for (const std::size_t line : rowsOf(taken, *before, read.rowsLeft)) read.rowsLeft.erase(line);
  const bool holdsMore = before && !read.errors.empty();
  if (holdsMore && losesOtherCells(plants, *before, read)) keepPersonalPlants();
  const std::string csv = holdsMore ? rewrittenTable(plants, *before, read) : ownPlantsCsv(plants);
  saveWhole(path, QByteArray::fromStdString(csv));
}

}  // namespace tussock
