// SPDX-License-Identifier: MIT
// Names that come up as one types: botanical ones with the common name beside, and synonyms.
#pragma once

#include <QCompleter>
#include <QHash>
#include <string>

#include "core/catalog/catalogue.h"

namespace tussock {

class SpeciesCompleter : public QCompleter {
  Q_OBJECT

 public:
  SpeciesCompleter(const Catalogue& facts, QObject* parent);

  // The botanical name of a line that was offered; empty when it was not.
  [[nodiscard]] std::string speciesOf(const QString& offered) const;

 private:
  QHash<QString, std::string> species_;
};

}  // namespace tussock
