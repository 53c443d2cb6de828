// SPDX-License-Identifier: MIT
#include "app/window/yard_commands.h"

#include <QFile>
#include <QFileInfo>

#include "app/document/picture_end.h"
#include "app/document/pictures.h"
#include "app/document/time_zones.h"
#include "core/edit/draft.h"

namespace tussock {

YardCommands::YardCommands(Document& document, RecentFiles& recent, QObject* parent)
    : QObject(parent), document_(document), recent_(recent) {}

bool YardCommands::open(const QString& path) {
  try {
    document_.open(path);
  } catch (const StoreError& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
    return false;
  }
  recent_.add(document_.path());
  if (document_.isReadOnly())
    emit troubled(
        tr("This yard cannot be written to, so it can only be looked at. Save a copy to "
           "work on it."));
  return true;
}

void YardCommands::openAsked() {
  const QString path = prompts_->yardToOpen();
  if (!path.isEmpty()) open(path);
}

void YardCommands::startNew(const Settings& settings) {
  const QString path =
      prompts_->yardToSave(tr("Where to keep the yard"),
                           QString::fromStdString(settings.name) + QStringLiteral(".yard"));
  if (path.isEmpty()) return;
  Yard yard;
  yard.settings = settings;
  yard.settings.timeZone = ownZoneFor(settings.longitude);
  create(path, yard);
}

bool YardCommands::create(const QString& path, const Yard& yard) {
  try {
    document_.create(path, yard);
  } catch (const StoreError& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
    return false;
  }
  recent_.add(document_.path());
  return true;
}

void YardCommands::saveCopy() {
  const QString path = prompts_->yardToSave(tr("Save a copy"), document_.path());
  if (path.isEmpty()) return;
  try {
    document_.copyTo(path);
  } catch (const StoreError& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
  }
}

void YardCommands::bringInAsked(Point middle, double across) {
  const QString path = prompts_->pictureToBringIn();
  if (!path.isEmpty()) bringIn(path, middle, across);
}

void YardCommands::bringIn(const QString& path, Point middle, double across) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return emit troubled(tr("%1 cannot be read. Check that it is still there.").arg(path));
  const QString name = QFileInfo(path).fileName();
  const QByteArray bytes = file.readAll();
  if (isCutShort(bytes))
    return emit troubled(
        tr("%1 is cut short: part of the picture is missing. Copy or save it again.").arg(name));
  Photo photo;
  photo.contentHash = document_.keepPicture(bytes);
  if (photo.contentHash.empty())
    return emit troubled(name + QLatin1Char(' ') + troubleWithPicture(bytes));
  const QImage picture = document_.picture(photo.contentHash);
  photo.id = document_.ids().take<Photo>();
  photo.name = QFileInfo(path).completeBaseName().toStdString();
  photo.widthPixels = picture.width();
  photo.heightPixels = picture.height();
  photo.metresPerPixel = across / picture.width();
  const double down = photo.metresPerPixel * picture.height();
  photo.corner = {middle.x - across / 2.0, middle.y + down / 2.0};
  const ObjectRef ref = refTo(photo.id);
  Draft draft(document_.yard());
  draft.put(std::move(photo));
  if (!document_.commit(draft.finish(tr("Bring in photo").toStdString()))) return;
  document_.select({ref});
  emit pictureLaid();
}

void YardCommands::setUnits(UnitSystem units) {
  Settings settings = document_.yard().settings;
  if (settings.units == units) return;
  settings.units = units;
  Draft draft(document_.yard());
  draft.put(settings);
  document_.commit(draft.finish(tr("Change units").toStdString()));
}

}  // namespace tussock
