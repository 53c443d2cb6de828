// SPDX-License-Identifier: MIT
#include "app/panels/plant_columns.h"

#include <array>
#include <QCoreApplication>
#include <QRegularExpression>

namespace tussock {

namespace {

constexpr std::array<PlantColumn, 8> kNames{{
    {"common_name", QT_TRANSLATE_NOOP("PlantColumns", "Common name")},
    {"other_names", QT_TRANSLATE_NOOP("PlantColumns", "Also called"), false, true},
    {"common_name_es", QT_TRANSLATE_NOOP("PlantColumns", "In Spanish")},
    {"synonyms", QT_TRANSLATE_NOOP("PlantColumns", "Synonyms"), false, true},
    {"family", QT_TRANSLATE_NOOP("PlantColumns", "Family"), true},
    {"genus", QT_TRANSLATE_NOOP("PlantColumns", "Genus")},
    {"usda_symbol", QT_TRANSLATE_NOOP("PlantColumns", "USDA symbol")},
    {"layer_form", QT_TRANSLATE_NOOP("PlantColumns", "Growth form"), true},
}};
constexpr std::array<PlantColumn, 7> kSize{{
    {"height_min_cm", QT_TRANSLATE_NOOP("PlantColumns", "Height from"), true},
    {"height_max_cm", QT_TRANSLATE_NOOP("PlantColumns", "Height to"), true},
    {"foliage_height_min_cm", QT_TRANSLATE_NOOP("PlantColumns", "Leaves from")},
    {"foliage_height_max_cm", QT_TRANSLATE_NOOP("PlantColumns", "Leaves to")},
    {"spread_cm", QT_TRANSLATE_NOOP("PlantColumns", "Spread"), true},
    {"spacing_cm", QT_TRANSLATE_NOOP("PlantColumns", "Spacing"), true},
    {"body", QT_TRANSLATE_NOOP("PlantColumns", "To the eye")},
}};
constexpr std::array<PlantColumn, 9> kNeeds{{
    {"sun", QT_TRANSLATE_NOOP("PlantColumns", "Sun"), true},
    {"sun_hours_min", QT_TRANSLATE_NOOP("PlantColumns", "Sun a day from")},
    {"sun_hours_max", QT_TRANSLATE_NOOP("PlantColumns", "Sun a day to")},
    {"moisture", QT_TRANSLATE_NOOP("PlantColumns", "Moisture"), true},
    {"soil", QT_TRANSLATE_NOOP("PlantColumns", "Soil")},
    {"hardiness_zone_min", QT_TRANSLATE_NOOP("PlantColumns", "Zone from")},
    {"hardiness_zone_max", QT_TRANSLATE_NOOP("PlantColumns", "Zone to")},
    {"native_states", QT_TRANSLATE_NOOP("PlantColumns", "Recorded in"), false, true},
    {"regulated", QT_TRANSLATE_NOOP("PlantColumns", "Regulated"), false, true},
}};
constexpr std::array<PlantColumn, 7> kFlowers{{
    {"bloom_start_month", QT_TRANSLATE_NOOP("PlantColumns", "In flower from")},
    {"bloom_end_month", QT_TRANSLATE_NOOP("PlantColumns", "In flower to")},
    {"bloom_start_week", QT_TRANSLATE_NOOP("PlantColumns", "First week")},
    {"bloom_end_week", QT_TRANSLATE_NOOP("PlantColumns", "Last week")},
    {"flower_color", QT_TRANSLATE_NOOP("PlantColumns", "Colour")},
    {"flower_hex", QT_TRANSLATE_NOOP("PlantColumns", "Colour, #RRGGBB")},
    {"flower_form", QT_TRANSLATE_NOOP("PlantColumns", "Form")},
}};
constexpr std::array<PlantColumn, 10> kGrowth{{
    {"life_span", QT_TRANSLATE_NOOP("PlantColumns", "Life span")},
    {"habit_of_spread", QT_TRANSLATE_NOOP("PlantColumns", "Way of spread")},
    {"competitiveness", QT_TRANSLATE_NOOP("PlantColumns", "Strength")},
    {"sociability_level", QT_TRANSLATE_NOOP("PlantColumns", "Sociability")},
    {"winter_leaf", QT_TRANSLATE_NOOP("PlantColumns", "In winter")},
    {"up_by_week", QT_TRANSLATE_NOOP("PlantColumns", "Up by")},
    {"needs_support_or_flops", QT_TRANSLATE_NOOP("PlantColumns", "Needs neighbours")},
    {"deer_resistant", QT_TRANSLATE_NOOP("PlantColumns", "Deer leave it")},
    {"rabbit_resistant", QT_TRANSLATE_NOOP("PlantColumns", "Rabbits leave it")},
    {"sizes_sold", QT_TRANSLATE_NOOP("PlantColumns", "Sizes sold")},
}};
constexpr std::array<PlantColumn, 6> kSeed{{
    {"stratification_days_cold_moist", QT_TRANSLATE_NOOP("PlantColumns", "Cold and moist")},
    {"warm_first_days", QT_TRANSLATE_NOOP("PlantColumns", "Warm first")},
    {"light_to_germinate", QT_TRANSLATE_NOOP("PlantColumns", "Needs light")},
    {"seeds_per_gram", QT_TRANSLATE_NOOP("PlantColumns", "Seeds")},
    {"germination_min_pct", QT_TRANSLATE_NOOP("PlantColumns", "Germinate from")},
    {"germination_max_pct", QT_TRANSLATE_NOOP("PlantColumns", "Germinate to")},
}};
constexpr std::array<PlantColumn, 8> kNotes{{
    {"toxicity_note", QT_TRANSLATE_NOOP("PlantColumns", "Toxicity, sap"), false, true},
    {"caution_note", QT_TRANSLATE_NOOP("PlantColumns", "Cautions"), false, true},
    {"disease_note", QT_TRANSLATE_NOOP("PlantColumns", "Diseases"), false, true},
    {"disease_mass_plants", QT_TRANSLATE_NOOP("PlantColumns", "From how many")},
    {"pest_note", QT_TRANSLATE_NOOP("PlantColumns", "Pests"), false, true},
    {"host_note", QT_TRANSLATE_NOOP("PlantColumns", "Caterpillars"), false, true},
    {"nectar_note", QT_TRANSLATE_NOOP("PlantColumns", "Nectar, pollen"), false, true},
    {"notes", QT_TRANSLATE_NOOP("PlantColumns", "Notes"), false, true},
}};
constexpr std::array<PlantColumnGroup, 7> kGroups{{
    {QT_TRANSLATE_NOOP("PlantColumns", "Names and kind"), kNames},
    {QT_TRANSLATE_NOOP("PlantColumns", "Size"), kSize},
    {QT_TRANSLATE_NOOP("PlantColumns", "Where it grows"), kNeeds},
    {QT_TRANSLATE_NOOP("PlantColumns", "Flowers"), kFlowers},
    {QT_TRANSLATE_NOOP("PlantColumns", "Growth"), kGrowth},
    {QT_TRANSLATE_NOOP("PlantColumns", "Seed"), kSeed},
    {QT_TRANSLATE_NOOP("PlantColumns", "Notes"), kNotes},
}};

}  // namespace

std::span<const PlantColumnGroup> plantColumnGroups() {
  return kGroups;
}

QString labelOf(const PlantColumn& column) {
  return QCoreApplication::translate("PlantColumns", column.label);
}

const PlantColumn* plantColumn(std::string_view column) {
  for (const PlantColumnGroup& group : kGroups)
    for (const PlantColumn& one : group.columns)
      if (one.column == column) return &one;
  return nullptr;
}

QString withLabels(QString words) {
  static const QRegularExpression name(QStringLiteral("[a-z]+(_[a-z]+)+"));
  qsizetype from = 0;
  for (auto match = name.match(words); match.hasMatch(); match = name.match(words, from)) {
    const PlantColumn* column = plantColumn(match.captured().toStdString());
    const QString label = column ? QStringLiteral("“%1”").arg(labelOf(*column)) : match.captured();
    words.replace(match.capturedStart(), match.capturedLength(), label);
    from = match.capturedStart() + label.size();
  }
  return words;
}

QString titleOf(const PlantColumnGroup& group) {
  return QCoreApplication::translate("PlantColumns", group.title);
}

}  // namespace tussock
