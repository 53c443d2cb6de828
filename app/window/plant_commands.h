// SPDX-License-Identifier: MIT
// What the Plants menu does with files: the user's own plants in and out as comma-separated values.
#pragma once

#include <QObject>

#include "app/document/personal_catalogue.h"
#include "app/window/prompts.h"

namespace tussock {

class PlantCommands : public QObject {
  Q_OBJECT

 public:
  PlantCommands(Document& document, PersonalCatalogue& personal, QObject* parent = nullptr)
      : QObject(parent), document_(document), personal_(personal) {}
  void setPrompts(Prompts* prompts) { prompts_ = prompts; }  // not owned

  // Reads the personal plants; what is wrong with them is told.
  void load();
  void bringIn();   // into the plants that hold in all yards
  void writeOwn();  // the user's own, those of the yard before the personal ones
  void writeAll();  // every plant, every column
  void writeFaults(const std::vector<CatalogueError>& faults);

 signals:
  void told(const QString& words);
  // Everything that could not be used of the file of that name.
  void faultsFound(const QString& title, const std::vector<tussock::CatalogueError>& faults);

 private:
  void tellOfReading(const QByteArray& table);
  void takeIn(const QString& name, const std::string& table);
  void write(const QString& suggested, const std::string& csv);

  Document& document_;
  PersonalCatalogue& personal_;
  Prompts* prompts_ = nullptr;
};

}  // namespace tussock
