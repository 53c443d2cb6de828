// SPDX-License-Identifier: MIT
#include "core/catalog/catalogue.h"

#include <algorithm>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <utility>

#include "core/catalog/search.h"
#include "core/catalog/season_weeks.h"

namespace tussock {

namespace {

// In order of names, so that a name is found by halving.
std::vector<Species> inOrder(std::vector<Species> species) {
  const auto before = [](const Species& a, const Species& b) {
    return a.botanicalName < b.botanicalName;
  };
  if (!std::is_sorted(species.begin(), species.end(), before))
    std::stable_sort(species.begin(), species.end(), before);
  return species;
}

using Words = std::vector<std::string>;
using ByWords = std::map<Words, std::vector<const Species*>>;

// Species come in order, each once under the same words.
void note(ByWords& names, std::string_view name, const Species& species) {
  Words words = searchWords(name);
  if (words.empty()) return;
  auto& known = names[std::move(words)];
  if (known.empty() || known.back() != &species) known.push_back(&species);
}

// "bee balm", which one plant goes by beside its common name, is the common name of several.
bool isButAnotherName(const Species& species, const Words& words) {
  return searchWords(species.commonName) != words && searchWords(species.spanishName) != words;
}

// In order of botanical names, as the species stand in their table; each once.
std::vector<const Species*> together(std::vector<const Species*> a,
                                     const std::vector<const Species*>& b) {
  a.insert(a.end(), b.begin(), b.end());
  std::sort(a.begin(), a.end(), std::less<>());
  a.erase(std::unique(a.begin(), a.end()), a.end());
  return a;
}

std::string asOneWord(std::string_view name) {
  std::string all;
  for (const std::string& word : searchWords(name)) all += word;
  return all;
}

}  // namespace

// Each is made when it is first asked for, by whichever thread: for many thousand plants that takes
// longer than to read them, and most commands ask for neither.
class Catalogue::Index {
 public:
  struct Names {
    explicit Names(const std::vector<Species>& species) {
      for (const Species& one : species) {
        ++commonNames[searchWords(one.commonName)];
        note(botanical, one.botanicalName, one);
        note(genera, one.genus, one);
        note(common, one.commonName, one);
        note(common, one.spanishName, one);
        for (const std::string& name : one.otherNames) note(common, name, one);
        for (const std::string& synonym : one.synonyms) {
          note(botanical, synonym, one);
          if (!bySynonym.try_emplace(synonym, &one).second) bySynonym[synonym] = nullptr;
        }
      }
    }

    std::map<std::string, const Species*, std::less<>> bySynonym;  // null where two claim the name
    ByWords botanical, common;  // a name, synonym or Spanish name, however it is written
    ByWords genera;
    std::map<Words, int> commonNames;  // by their words
  };

  Index(const std::vector<Species>& species, Hemisphere where) : species_(species), where_(where) {}

  [[nodiscard]] const SearchIndex& words() const {
    std::call_once(wordsMade_, [this] { words_.emplace(species_, where_); });
    return *words_;
  }
  [[nodiscard]] const Names& names() const {
    std::call_once(namesMade_, [this] { names_.emplace(species_); });
    return *names_;
  }

 private:
  const std::vector<Species>& species_;
  Hemisphere where_;
  mutable std::once_flag wordsMade_, namesMade_;
  mutable std::optional<SearchIndex> words_;
  mutable std::optional<Names> names_;
};

Catalogue::Catalogue() : Catalogue(std::vector<Species>{}) {}

Catalogue::Catalogue(std::vector<Species> species, Hemisphere where)
    : species_(std::make_shared<const std::vector<Species>>(inOrder(std::move(species)))),
      index_(std::make_shared<const Index>(*species_, where)),
      where_(where) {}

Catalogue Catalogue::in(Hemisphere where) const {
  if (where == where_) return *this;
  std::vector<Species> turned;
  turned.reserve(species_->size());
  for (const Species& one : *species_) turned.push_back(halfAYearOn(one));
  return Catalogue(std::move(turned), where);
}

const Species* Catalogue::find(std::string_view botanicalName) const {
  const auto at = std::lower_bound(
      species_->begin(), species_->end(), botanicalName,
      [](const Species& s, std::string_view name) { return s.botanicalName < name; });
  return at != species_->end() && at->botanicalName == botanicalName ? &*at : nullptr;
}

const Species* Catalogue::resolve(std::string_view name) const {
  if (const Species* species = find(name)) return species;
  const auto& synonyms = index_->names().bySynonym;
  const auto at = synonyms.find(name);
  return at == synonyms.end() ? nullptr : at->second;
}

std::vector<const Species*> Catalogue::named(std::string_view name) const {
  if (const Species* species = resolve(name)) return {species};
  const Words words = searchWords(name);
  const auto& names = index_->names();
  if (const auto at = names.botanical.find(words); at != names.botanical.end()) return at->second;
  const auto at = names.common.find(words);
  // The Spanish name of one species is often the genus of several.
  if (const auto genus = names.genera.find(words); genus != names.genera.end())
    return at == names.common.end() ? genus->second : together(genus->second, at->second);
  if (at == names.common.end()) return {};
  if (at->second.size() == 1 && isButAnotherName(*at->second.front(), words))
    return calledAlike(name);
  return at->second;
}

std::vector<const Species*> Catalogue::calledAlike(std::string_view name) const {
  const std::string asked = asOneWord(name);
  std::vector<const Species*> result;
  const auto holds = [&](const std::string& known) {
    return asOneWord(known).find(asked) != std::string::npos;
  };
  for (const Species& one : *species_)
    if (!asked.empty() && (holds(one.commonName) || holds(one.spanishName) ||
                           std::any_of(one.otherNames.begin(), one.otherNames.end(), holds)))
      result.push_back(&one);
  return result;
}

std::vector<const Species*> Catalogue::search(std::string_view words) const {
  std::vector<const Species*> result;
  for (const std::size_t at : index_->words().find(words)) result.push_back(&(*species_)[at]);
  return result;
}

bool Catalogue::sharesCommonName(const Species& species) const {
  const auto& names = index_->names().commonNames;
  const auto at = names.find(searchWords(species.commonName));
  return at != names.end() && at->second > 1;
}

std::string Catalogue::nameApart(const Species& species) const {
  if (species.commonName.empty()) return species.botanicalName;
  if (!sharesCommonName(species)) return species.commonName;
  return species.commonName + " (" + species.botanicalName + ")";
}

}  // namespace tussock
