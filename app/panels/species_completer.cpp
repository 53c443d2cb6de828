// SPDX-License-Identifier: MIT
#include "app/panels/species_completer.h"

#include <QAbstractItemView>
#include <QStringListModel>

#include "app/panels/species_marks.h"

namespace tussock {

namespace {
constexpr int kMostShown = 10;
}

SpeciesCompleter::SpeciesCompleter(const Catalogue& facts, QObject* parent) : QCompleter(parent) {
  QStringList lines;
  const auto offer = [&](const QString& line, const Species& species) {
    lines << line;
    species_.insert(line, species.botanicalName);
  };
  for (const Species& species : facts.species()) {
    const QString name = text(species.botanicalName), common = text(species.commonName);
    offer(common.isEmpty() ? name : tr("%1, %2").arg(name, common), species);
    for (const std::string& synonym : species.synonyms)
      offer(tr("%1, now %2").arg(text(synonym), name), species);
  }
  setModel(new QStringListModel(lines, this));
  setCaseSensitivity(Qt::CaseInsensitive);
  setFilterMode(Qt::MatchContains);
  setMaxVisibleItems(kMostShown);
  popup()->setProperty("look", QStringLiteral("choices"));
}

std::string SpeciesCompleter::speciesOf(const QString& offered) const {
  return species_.value(offered.trimmed());
}

}  // namespace tussock
