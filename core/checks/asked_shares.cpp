// SPDX-License-Identifier: MIT
#include "core/checks/asked_shares.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/checks/wording.h"
#include "core/planting/whole_shares.h"

namespace tussock {

bool AskedShare::kept() const {
  constexpr double kNear = 0.03;
  return std::abs(planted - asked) <= kNear + 1e-9;
}

std::string AskedShare::text() const {
  return fmt::format("asked {}, planted {}", percent(asked), percent(planted));
}

AskedShares::AskedShares(const std::vector<ListedSpecies>& list, const Yard& planted,
                         const Catalogue& facts, Id<Bed> bed,
                         const std::function<bool(const Drift&)>& counts) {
  for (const ListedSpecies& listed : list) {
    const double share = std::isfinite(listed.share) ? std::max(0.0, listed.share) : 0.0;
    const auto same = std::find_if(entries_.begin(), entries_.end(), [&](const Entry& entry) {
      return entry.species == listed.species;
    });
    if (same == entries_.end())
      entries_.push_back({listed.species, share, 0.0, listed.matrix});
    else
      same->asked += share, same->main = same->main || listed.matrix;
    any_ = any_ || share > 0.0;
  }
  std::vector<const Drift*> drifts = driftsIn(planted, bed);
  std::erase_if(drifts, [&](const Drift* drift) { return !counts(*drift); });
  const auto entryOf = [&](const Drift& drift) {
    return std::find_if(entries_.begin(), entries_.end(),
                        [&](const Entry& entry) { return entry.species == drift.species; });
  };
  // A ground cover that is the main layer, for want of another, counts as that.
  for (const Drift* drift : drifts)
    if (const auto at = entryOf(*drift); at != entries_.end() && drift->layer == Layer::Main)
      at->main = true;
  takeWhole(facts);
  for (const Drift* drift : drifts) {
    const auto at = entryOf(*drift);
    if (at == entries_.end() || (drift->layer != Layer::Main && at->asked <= 0.0)) continue;
    at->plants += static_cast<double>(drift->plants.size());
    plants_ += static_cast<double>(drift->plants.size());
  }
}

void AskedShares::takeWhole(const Catalogue& facts) {
  std::vector<WrittenShare> written;
  for (const Entry& entry : entries_) {
    const Species* known = facts.find(entry.species);
    const bool main = entry.main || known == nullptr || known->usualLayer() == Layer::Main;
    written.push_back({entry.asked, !main});
  }
  const WholeShares whole = wholeShares(written);
  for (std::size_t i = 0; i < entries_.size(); ++i) entries_[i].asked = whole.shares[i];
}

const AskedShares::Entry* AskedShares::find(const std::string& species) const {
  const auto at = std::find_if(entries_.begin(), entries_.end(),
                               [&](const Entry& entry) { return entry.species == species; });
  return at == entries_.end() ? nullptr : &*at;
}

std::optional<AskedShare> AskedShares::of(const std::set<std::string>& species) const {
  AskedShare share;
  for (const std::string& name : species) {
    const Entry* entry = find(name);
    if (entry == nullptr || entry->asked <= 0.0) return std::nullopt;
    share.asked += entry->asked;
    share.planted += entry->plants / std::max(1.0, plants_);
  }
  if (share.asked <= 0.0) return std::nullopt;
  return share;
}

double AskedShares::leftToEach() const {
  double left = 1.0, open = 0.0;
  for (const Entry& entry : entries_) left -= entry.asked, open += entry.asked > 0.0 ? 0.0 : 1.0;
  return open > 0.0 ? std::max(0.0, left) / open : 0.0;
}

std::string AskedShares::others(const std::set<std::string>& told,
                                const std::function<std::string(std::string_view)>& nameOf) const {
  constexpr std::size_t kNamed = 6;
  std::vector<std::string> parts;
  std::size_t more = 0;
  for (const Entry& entry : entries_) {
    const auto share = of({entry.species});
    // What came to nothing was left out, which is told with its reason.
    if (!share || share->kept() || entry.plants <= 0.0 || told.contains(entry.species)) continue;
    if (parts.size() == kNamed)
      ++more;
    else
      parts.push_back(fmt::format("{}: {}", nameOf(entry.species), share->text()));
  }
  if (parts.empty()) return {};
  std::string text = "Shares come otherwise than the plant list asks: ";
  for (std::size_t i = 0; i < parts.size(); ++i) text += (i == 0 ? "" : "; ") + parts[i];
  return text + (more > 0 ? fmt::format("; and {} more.", more) : ".");
}

}  // namespace tussock
