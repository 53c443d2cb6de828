// SPDX-License-Identifier: MIT
#include "app/panels/species_completer.h"

#include <algorithm>
#include <QAbstractItemView>
#include <QLineEdit>
#include <QStringListModel>

#include "app/panels/species_marks.h"

namespace tussock {

namespace {
constexpr int kMostShown = 10;
// Of what a letter or two find; the rest comes up as more is typed.
constexpr std::size_t kMostFound = 100;
}  // namespace

SpeciesCompleter::SpeciesCompleter(const Document& document, QLineEdit& line)
    : QCompleter(&line), lines_(new QStringListModel(this)) {
  setModel(lines_);
  setCompletionMode(UnfilteredPopupCompletion);  // the search has done it
  setMaxVisibleItems(kMostShown);
  popup()->setProperty("look", QStringLiteral("choices"));
  line.setCompleter(this);
  // Told before the line brings the choices up.
  connect(&line, &QLineEdit::textEdited, this, [this, &document](const QString& typed) {
    auto found = typed.trimmed().isEmpty() ? std::vector<const Species*>()
                                           : document.facts().search(typed.toStdString());
    found.resize(std::min(found.size(), kMostFound));
    lay(found);
  });
}

void SpeciesCompleter::lay(const std::vector<const Species*>& species) {
  QStringList lines;
  species_.clear();
  for (const Species* one : species) {
    const QString name = text(one->botanicalName), common = text(one->commonName);
    lines << (common.isEmpty() ? name : tr("%1, %2").arg(name, common));
    species_.insert(lines.back(), one->botanicalName);
  }
  lines_->setStringList(lines);
}

void SpeciesCompleter::offer(const std::vector<const Species*>& species) {
  lay(species);
  setCompletionPrefix({});
  complete();
}

std::string SpeciesCompleter::speciesOf(const QString& offered) const {
  return species_.value(offered.trimmed());
}

}  // namespace tussock
