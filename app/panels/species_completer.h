// SPDX-License-Identifier: MIT
// Species that come up as one types into a line: what the search of the plant facts finds, in its
// order, the botanical name with the common one beside it.
#pragma once

#include <QCompleter>
#include <QHash>
#include <string>
#include <vector>

#include "app/document/document.h"

class QLineEdit;
class QStringListModel;

namespace tussock {

class SpeciesCompleter : public QCompleter {
  Q_OBJECT

 public:
  SpeciesCompleter(const Document& document, QLineEdit& line);

  // These, at once, in place of what was offered.
  void offer(const std::vector<const Species*>& species);
  // The botanical name of a line that was offered last; empty when it was not.
  [[nodiscard]] std::string speciesOf(const QString& offered) const;

 private:
  void lay(const std::vector<const Species*>& species);

  QStringListModel* lines_;
  QHash<QString, std::string> species_;
};

}  // namespace tussock
