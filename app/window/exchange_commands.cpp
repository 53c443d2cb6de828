// SPDX-License-Identifier: MIT
// The commands that bring whole sites in and out, and the example yard.
#include <QFile>
#include <QFileInfo>

#include "app/files/whole_file.h"
#include "app/window/yard_commands.h"
#include "core/exchange/geojson.h"
#include "core/store/example_file.h"

namespace tussock {

void YardCommands::startExample() {
  const QString path =
      prompts_->yardToSave(tr("Where to keep the example yard"), QStringLiteral("example.yard"));
  if (path.isEmpty()) return;
  try {
    writeExample(path.toStdString(), document_.facts());
  } catch (const std::runtime_error& problem) {
    return emit troubled(QString::fromUtf8(problem.what()));
  }
  open(path);
}

void YardCommands::importSite() {
  const QString path = prompts_->siteToImport();
  if (path.isEmpty()) return;
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return emit troubled(tr("%1 cannot be read. Check that it is still there.").arg(path));
  try {
    const GeoJsonImport read =
        importGeoJson(document_.yard(), document_.facts(), file.readAll().toStdString(),
                      QFileInfo(path).fileName().toStdString(), document_.ids());
    document_.commit(read.edit);
    QStringList warnings;
    for (const std::string& warning : read.warnings)
      warnings.append(QString::fromStdString(warning));
    if (!warnings.isEmpty()) emit troubled(warnings.join(QLatin1Char('\n')));
  } catch (const std::exception& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
  }
}

void YardCommands::exportSite() {
  const QString name = QFileInfo(document_.path()).completeBaseName();
  const QString path = prompts_->exportTo(name + QStringLiteral(".geojson"));
  if (path.isEmpty()) return;
  try {
    saveWhole(path, QByteArray::fromStdString(yardToGeoJson(document_.yard())));
  } catch (const std::runtime_error& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
  }
}

}  // namespace tussock
