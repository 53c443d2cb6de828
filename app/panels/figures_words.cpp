// SPDX-License-Identifier: MIT
#include "app/panels/figures_words.h"

#include <algorithm>
#include <bit>
#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "app/panels/species_marks.h"

namespace tussock {

namespace {

QString figureTr(const char* source) {
  return QCoreApplication::translate("Figures", source);
}

QString figure(double value) {
  return QLocale().toString(value, 'f', 2);
}

// The first `most`, and how many more there are.
QString listed(QStringList all, std::size_t most, const QString& between) {
  const qsizetype more = all.size() - qsizetype(most);
  if (more <= 0) return all.join(between);
  return (all.mid(0, qsizetype(most)) << figureTr("%1 more").arg(more)).join(between);
}

}  // namespace

QString percentWords(double share) {
  return figureTr("%1\u00A0%").arg(qRound(share * 100.0));
}

QString sharesWords(const std::vector<NamedShare>& shares, std::size_t most) {
  QStringList words;
  for (const NamedShare& one : shares)
    words << text(one.name) + QChar(0x00A0) + percentWords(one.share);
  return listed(words, most, QStringLiteral(", "));
}

QString diversityWords(const Diversity& d) {
  return figureTr("%1 species; Shannon %2, Simpson %3, evenness %4")
      .arg(d.richness)
      .arg(figure(d.shannon), figure(d.simpson), figure(d.evenness));
}

QString bandsWords(const PlantFigures& figures) {
  QStringList words;
  for (std::size_t band = 0; band < figures.heightBands.size(); ++band)
    if (figures.heightBands[band] > 0.0)
      words << text(wordOf(HeightBand(int(band)))) + QChar(0x00A0) +
                   percentWords(figures.heightBands[band]);
  return words.join(QStringLiteral(", "));
}

QString hostWords(const PlantFigures& figures, const Catalogue& facts) {
  if (figures.hostPlants.empty()) return figureTr("none recorded");
  QStringList words;
  for (const Species* species : figures.hostPlants) words << text(facts.nameApart(*species));
  return listed(words, 4, QStringLiteral(", "));
}

QString nectarWords(const PlantFigures& figures, WeekSet season) {
  return figureTr("%1 of %2 weeks of the season")
      .arg(std::popcount(figures.nectarWeeks & season))
      .arg(std::popcount(season));
}

QString colourWords(const std::vector<ColourPair>& pairs, const Catalogue& facts,
                    std::size_t most) {
  QStringList words;
  for (const ColourPair& pair : pairs) {
    const QString names = figureTr("%1, %2").arg(text(facts.nameApart(*pair.one)),
                                                 text(facts.nameApart(*pair.other)));
    const QString weeks =
        pair.weeks == 1 ? figureTr("1 week") : figureTr("%1 weeks").arg(pair.weeks);
    words << (pair.relation == ColourRelation::Complementary
                  ? figureTr("Complementary for %1: %2").arg(weeks, names)
                  : figureTr("Analogous for %1: %2").arg(weeks, names));
  }
  return words.isEmpty() ? figureTr("No complementary or analogous pair flowers together")
                         : listed(words, most, QStringLiteral("\n"));
}

}  // namespace tussock
