// SPDX-License-Identifier: MIT
#include "app/window/plant_commands.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <stdexcept>

#include "app/document/personal_plants.h"
#include "app/files/whole_file.h"
#include "app/window/busy_pointer.h"
#include "core/exchange/fault_csv.h"
#include "core/exchange/plant_csv.h"

namespace tussock {

namespace {

constexpr qsizetype kManyRows = 1000;  // fewer are read before words of it could be read

QString namesWords(const std::vector<std::string>& names) {
  constexpr std::size_t kNamed = 3;
  QStringList words;
  for (const std::string& name : names) {
    if (std::size_t(words.size()) == kNamed) break;
    words << QString::fromStdString(name);
  }
  const QString all = words.join(QStringLiteral(", "));
  return names.size() > kNamed
             ? PlantCommands::tr("%1 and %2 more").arg(all).arg(names.size() - kNamed)
             : all;
}

// The first of each kind, and where the others are.
QString notesWords(const std::vector<RowNote>& notes) {
  constexpr std::size_t kMostLines = 5;
  QStringList words;
  for (const std::string& one : toldTogether(notes, kMostLines))
    words << QString::fromStdString(one);
  return words.join(QLatin1Char(' '));
}

}  // namespace

void PlantCommands::load() {
  const std::vector<CatalogueError> errors = personal_.load();
  if (errors.empty()) return;
  emit faultsFound(tr("Your own plants"), errors);
  emit told(tr("Some of your own plants cannot be used; the margin says why. The rest is in use."));
}

void PlantCommands::bringIn() {
  const QString path = prompts_->plantsToBringIn();
  if (path.isEmpty()) return;
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return emit told(tr("%1 cannot be read. Check that it is still there.").arg(path));
  const QByteArray table = file.readAll();
  const BusyPointer busy;
  tellOfReading(table);
  takeIn(QFileInfo(path).fileName(), table.toStdString());
}

// A long table takes seconds: the words are on the screen before it is read.
void PlantCommands::tellOfReading(const QByteArray& table) {
  const qsizetype rows = table.count('\n') - (table.endsWith('\n') ? 1 : 0);
  if (rows < kManyRows) return;
  emit told(tr("Reading %1 rows…").arg(QLocale().toString(rows)));
  QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
}

void PlantCommands::takeIn(const QString& name, const std::string& table) {
  const BroughtIn read = bringInPlants(table, name.toStdString(), document_.plantLayers().published,
                                       personal_.plants());
  QString kept;
  try {
    if (!read.taken.empty()) kept = personal_.take(read.taken, tr("Bring in plants"));
  } catch (const std::runtime_error& problem) {
    return emit told(QString::fromUtf8(problem.what()));
  }
  if (!read.errors.empty()) emit faultsFound(name, read.errors);
  QString taken = tr("Plants brought in for all your yards: %1.").arg(read.taken.size());
  if (read.rowsWithoutNews > 0)
    taken += tr(" Rows that say nothing new: %1.").arg(read.rowsWithoutNews);
  if (!read.gaveWay.empty())
    taken += tr(" Values of yours gave way for %1; undo brings them back.")
                 .arg(namesWords(read.gaveWay));
  if (!kept.isEmpty())
    taken += tr(" Rows of your table that could not be used gave way to them; it is kept as it was "
                "in %1.")
                 .arg(kept);
  if (!read.notes.empty()) taken += QLatin1Char(' ') + notesWords(read.notes);
  if (const std::string many = manyPlantsWords(personal_.plants().size()); !many.empty())
    taken += QLatin1Char(' ') + QString::fromStdString(many);
  emit told(read.errors.empty() ? taken
                                : tr("%1 What could not be used is left out and listed in the "
                                     "margin; the file stays as it is.")
                                      .arg(taken));
}

void PlantCommands::writeOwn() {
  const auto& ofYard = document_.yard().ownSpecies;
  const auto own = withTaken(personal_.plants(), {ofYard.begin(), ofYard.end()});
  if (own.empty())
    return emit told(
        tr("There are no plants of your own yet. Change a value of a plant, or add "
           "one, in the Plants menu."));
  write(QStringLiteral("own-plants.csv"), ownPlantsCsv(own));
}

void PlantCommands::writeAll() {
  write(QStringLiteral("plants.csv"), plantsCsv(document_.facts()));
}

void PlantCommands::writeFaults(const std::vector<CatalogueError>& faults) {
  write(QStringLiteral("left-out.csv"), faultsCsv(faults));
}

void PlantCommands::write(const QString& suggested, const std::string& csv) {
  const QString path = prompts_->plantsTo(suggested);
  if (path.isEmpty()) return;
  if (isPersonalPlants(path))
    return emit told(
        tr("%1 is the table that your own plants are kept in. Name another file.").arg(path));
  try {
    saveWhole(path, QByteArray::fromStdString(csv));
  } catch (const std::runtime_error& problem) {
    emit told(QString::fromUtf8(problem.what()));
  }
}

}  // namespace tussock
