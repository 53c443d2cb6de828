// SPDX-License-Identifier: MIT
#include "app/panels/kind_words.h"

#include <array>
#include <QCoreApplication>
#include <utility>

namespace tussock {

namespace {

constexpr std::array kWords{
    std::pair{kKind<Settings>, QT_TRANSLATE_NOOP("Kind", "The yard")},
    std::pair{kKind<LotLine>, QT_TRANSLATE_NOOP("Kind", "Lot line")},
    std::pair{kKind<Building>, QT_TRANSLATE_NOOP("Kind", "Building")},
    std::pair{kKind<Barrier>, QT_TRANSLATE_NOOP("Kind", "Wall, fence or hedge")},
    std::pair{kKind<Tree>, QT_TRANSLATE_NOOP("Kind", "Tree or shrub")},
    std::pair{kKind<Paving>, QT_TRANSLATE_NOOP("Kind", "Paving")},
    std::pair{kKind<SteppingPlace>, QT_TRANSLATE_NOOP("Kind", "Stepping place")},
    std::pair{kKind<WaterPoint>, QT_TRANSLATE_NOOP("Kind", "Water point")},
    std::pair{kKind<HeightLimit>, QT_TRANSLATE_NOOP("Kind", "Height-limit area")},
    std::pair{kKind<BuriedLine>, QT_TRANSLATE_NOOP("Kind", "Buried line")},
    std::pair{kKind<SunReading>, QT_TRANSLATE_NOOP("Kind", "Sun reading")},
    std::pair{kKind<Bed>, QT_TRANSLATE_NOOP("Kind", "Bed")},
    std::pair{kKind<Patch>, QT_TRANSLATE_NOOP("Kind", "Moist or dry patch")},
    std::pair{kKind<Drift>, QT_TRANSLATE_NOOP("Kind", "Drift")},
    std::pair{kKind<Photo>, QT_TRANSLATE_NOOP("Kind", "Photo")},
};

}  // namespace

QString kindHeading(ObjectRef ref) {
  const std::string_view kind = kindOf(ref);
  for (const auto& [word, shown] : kWords)
    if (word == kind) return QCoreApplication::translate("Kind", shown);
  return {};
}

}  // namespace tussock
