// SPDX-License-Identifier: MIT
// The plant facts: read once, then only asked.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species.h"
#include "core/model/settings.h"

namespace tussock {

// One thing wrong with a plant table: where, what was found, what was expected.
struct CatalogueError {
  std::string file;
  std::size_t line = 0;  // 0 when it is not from a line of a file
  std::string column;
  std::string value;
  std::string expected;
  std::string told = {};  // in place of the last two where these do not say it; ends in a full stop

  [[nodiscard]] std::string text() const;  // "plants.csv, line 12, spacing_cm: '-3' is not ..."
};

// Cheap to copy: the species are shared. It may be asked from several threads at once.
class Catalogue {
 public:
  Catalogue();
  // With weeks and months as they are in that half of the earth.
  explicit Catalogue(std::vector<Species> species, Hemisphere where = Hemisphere::North);

  [[nodiscard]] const std::vector<Species>& species() const { return *species_; }
  [[nodiscard]] Hemisphere hemisphere() const { return where_; }
  // The same facts with weeks and months as they are there.
  [[nodiscard]] Catalogue in(Hemisphere where) const;
  [[nodiscard]] const Species* find(std::string_view botanicalName) const;
  // By botanical name or by a synonym that one species alone has.
  [[nodiscard]] const Species* resolve(std::string_view name) const;
  // Every species that goes by this name, in whatever case: one botanical name or synonym; else, of
  // a genus, all its species and those it is a common name of; else all with that common, other or
  // Spanish name. What is but another name of one is also theirs in whose it occurs: calledAlike.
  [[nodiscard]] std::vector<const Species*> named(std::string_view name) const;
  // Every species with a common name, of whatever language, in which this one occurs, written as
  // one word or as several: "bee balm" in "scarlet beebalm". In order of botanical names.
  [[nodiscard]] std::vector<const Species*> calledAlike(std::string_view name) const;
  // Answers as one types: every word must occur in a botanical or common name, synonym, family,
  // colour, habit, or be tall/low, dry/moist/wet, sun/part/shade, spring/summer/fall. Best first.
  [[nodiscard]] std::vector<const Species*> search(std::string_view words) const;

  [[nodiscard]] bool sharesCommonName(const Species& species) const;
  // The common name, with the botanical one in brackets where another species has the same.
  [[nodiscard]] std::string nameApart(const Species& species) const;

 private:
  class Index;

  std::shared_ptr<const std::vector<Species>> species_;
  std::shared_ptr<const Index> index_;
  Hemisphere where_ = Hemisphere::North;
};

struct CatalogueReading {
  Catalogue catalogue;
  std::vector<CatalogueError> errors;  // rows with errors are left out; the rest is kept
};
// `csv` is the text of the table (RFC 4180, UTF-8); `fileName` is for messages.
[[nodiscard]] CatalogueReading readCatalogue(std::string_view csv, std::string_view fileName);
// The catalogue that comes with the program, read from the resources folder.
[[nodiscard]] CatalogueReading readShippedCatalogue();

}  // namespace tussock
