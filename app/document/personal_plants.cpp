// SPDX-License-Identifier: MIT
#include "app/document/personal_plants.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <stdexcept>

#include "app/files/whole_file.h"

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

}  // namespace

QString personalPlantsPath() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
         QStringLiteral("/tussock/plants.csv");
}

OwnPlantsReading readPersonalPlants(const Catalogue& published) {
  const QString path = personalPlantsPath();
  QFile file(path);
  if (!file.exists()) return {};
  if (!file.open(QIODevice::ReadOnly))
    return {{}, {}, {{path.toStdString(), 0, "", "", "leave to read the file"}}};
  return readOwnPlants(file.readAll().toStdString(), path.toStdString(), published);
}

QString keepPersonalPlants() {
  return keepBeside(personalPlantsPath());
}

void savePersonalPlants(const std::vector<OwnSpecies>& plants, const Catalogue& published) {
  const QString path = personalPlantsPath();
  QDir().mkpath(QFileInfo(path).path());
  if (!readPersonalPlants(published).errors.empty()) keepBeside(path);
  saveWhole(path, QByteArray::fromStdString(ownPlantsCsv(plants)));
}

}  // namespace tussock
