// SPDX-License-Identifier: MIT
// Editing one plant of the user's own: a plant that there is, or one that is being written down.
// What cannot be used changes nothing and is said column by column.
#pragma once

#include <optional>

#include "app/document/personal_catalogue.h"

namespace tussock {

// Where what is typed holds.
enum class OwnScope { ThisYard, AllYards };

class PlantDesk {
 public:
  PlantDesk(Document& document, PersonalCatalogue& personal)
      : document_(document), personal_(personal) {}

  void lay(const std::string& name);  // a plant that there is
  void begin(PlantCells cells);       // a new one with these values; it is not kept yet
  [[nodiscard]] bool writing() const { return draft_.has_value(); }
  [[nodiscard]] const std::string& name() const { return name_; }
  // The values of a new plant, to be begun anew under another name.
  [[nodiscard]] PlantCells copied() const;

  void setScope(OwnScope scope) { scope_ = scope; }
  [[nodiscard]] OwnScope scope() const { return scope_; }

  [[nodiscard]] PlantValue value(const std::string& column) const;
  // A value of the table in words, sizes in the units of the yard, months and weeks as they are in
  // its half of the earth.
  [[nodiscard]] QString shown(const std::string& column, const std::string& value) const;
  // Whether it is shown half a year after the table.
  [[nodiscard]] bool isMoved(const std::string& column) const;
  // What a blank value comes to from others: a week of bloom from the month. Empty for most.
  [[nodiscard]] QString impliedBy(const std::string& column) const;
  // What to know of the family: that nothing published could be held against it. Empty for most.
  [[nodiscard]] QString familyNote() const;
  // Takes those words, or the table's own. What is wrong with them; empty when it is kept.
  [[nodiscard]] QString set(const std::string& column, const QString& typed);
  // Keeps the new plant, unless something stands against it.
  struct Kept {
    std::vector<CatalogueError> errors;  // by column
    QString trouble;                     // with the file
    [[nodiscard]] bool done() const { return errors.empty() && trouble.isEmpty(); }
  };
  [[nodiscard]] Kept keep();
  // Takes the user's own values away in the scope chosen.
  [[nodiscard]] QString clear();
  [[nodiscard]] bool hasOwn() const;  // in the scope chosen
  // "Write a whole number from 1 to 13.", or the whole sentence when it is of another column; what
  // it says of other fields as they are shown.
  [[nodiscard]] QString faultWords(const CatalogueError& error, const std::string& column) const;

 private:
  [[nodiscard]] QString wordsOf(const std::vector<CatalogueError>& errors,
                                const std::string& column) const;
  [[nodiscard]] QString asShown(QString words) const;
  [[nodiscard]] std::string moved(const std::string& column, const std::string& value) const;
  [[nodiscard]] QString setInYard(const std::string& column, const std::string& value);
  [[nodiscard]] QString setPersonal(const std::string& column, const std::string& value);
  [[nodiscard]] QString makePersonal(const PersonalEdit& edit, const QString& label);
  [[nodiscard]] QString clearPersonal();
  [[nodiscard]] bool isCarried(const std::string& column) const;
  [[nodiscard]] bool hasOwnFamily() const;
  [[nodiscard]] Kept keepInYard();
  [[nodiscard]] Kept keepPersonal();

  Document& document_;
  PersonalCatalogue& personal_;
  OwnScope scope_ = OwnScope::ThisYard;
  std::string name_;
  std::optional<PlantCells> draft_;
};

}  // namespace tussock
