// SPDX-License-Identifier: MIT
#include <cmath>
#include <memory>
#include <ostream>
#include <QTimeZone>

#include "app/cli/commands.h"
#include "app/document/time_zones.h"
#include "core/catalog/edit_plants.h"
#include "core/catalog/resources.h"
#include "core/exchange/geojson.h"
#include "core/model/settings_text.h"
#include "core/store/yard_file.h"

namespace tussock {

namespace {

struct NewOptions {
  std::string file;
  double latitude = 0.0, longitude = 0.0;
  std::string zone, state, hardiness, lastFrost, firstFrost, site, name;
  bool deer = false;
};

std::optional<MonthDay> frostDate(const std::string& text, const char* option) {
  if (text.empty()) return std::nullopt;
  const auto day = parseMonthDay(text);
  if (!day)
    throw UsageError(std::string(option) + " is '" + text +
                     "', which is no date. Give month and day as MM-DD, such as 04-20.");
  return day;
}

std::string stateFrom(const std::string& text) {
  const auto state = parseState(text);
  if (!state)
    throw UsageError("--state is '" + text +
                     "', which is no US state. Give its two letters, such as IN.");
  return *state;
}

std::string hardinessFrom(const std::string& text) {
  const auto zone = parseHardinessZone(text);
  if (!zone)
    throw UsageError("--hardiness is '" + text +
                     "'. Give a zone from 1 to 13, with a or b, such as 6b.");
  return *zone;
}

std::string timeZoneFrom(const std::string& text) {
  if (!looksLikeTimeZone(text) ||
      !QTimeZone::isTimeZoneIdAvailable(QByteArray::fromStdString(text)))
    throw UsageError("--zone is '" + text +
                     "', which is no time zone. Give its IANA name, such as America/Chicago.");
  return text;
}

void expectSensible(const NewOptions& options) {
  if (!(std::abs(options.latitude) <= 90.0) || !(std::abs(options.longitude) <= 180.0))
    throw UsageError("Latitude must lie from -90 to 90 and longitude from -180 to 180 degrees.");
  if (options.lastFrost.empty() != options.firstFrost.empty())
    throw UsageError("Give both --last-frost and --first-frost, or neither.");
}

Settings settingsFrom(const NewOptions& options) {
  expectSensible(options);
  Settings settings;
  if (!options.name.empty()) settings.name = options.name;
  settings.latitude = Angle::degrees(options.latitude);
  settings.longitude = Angle::degrees(options.longitude);
  settings.timeZone =
      options.zone.empty() ? ownZoneFor(settings.longitude) : timeZoneFrom(options.zone);
  settings.state = stateFrom(options.state);
  settings.hardinessZone = hardinessFrom(options.hardiness);
  if (options.deer) settings.deerAbout = DeerAbout::Yes;
  settings.lastFrost = frostDate(options.lastFrost, "--last-frost");
  settings.firstFrost = frostDate(options.firstFrost, "--first-frost");
  if (const std::string trouble = frostTrouble(settings); !trouble.empty())
    throw UsageError(trouble);
  return settings;
}

// Puts the site in the yard, if there is one.
ExitCode addSite(Yard& yard, const NewOptions& options, Console& console) {
  if (options.site.empty()) return ExitCode::Done;
  IdSource ids(largestId(yard) + 1);
  const PlantFacts plants = plantsFor(yard, console);
  const GeoJsonImport import =
      importGeoJson(yard, plants.catalogue(), readFile(options.site), options.site, ids);
  for (const std::string& warning : import.warnings) console.err << warning << '\n';
  yard = apply(yard, carrying(plants.layers(yard), import.edit, ids));
  return afterImport(import);
}

ExitCode runNew(const NewOptions& options, Console& console) {
  Yard yard;
  yard.settings = settingsFrom(options);
  const ExitCode code = addSite(yard, options, console);
  (void)YardFile::create(options.file, yard);
  console.err << "Wrote " << options.file << '\n';
  return code;
}

}  // namespace

void addNew(CLI::App& app, Action& chosen) {
  auto* command = app.add_subcommand("new", "Make an empty yard, or one with a site from GeoJSON");
  auto options = std::make_shared<NewOptions>();
  command->add_option("FILE", options->file, "Yard file to make (.yard)")->required();
  command->add_option("--lat", options->latitude, "Latitude in degrees, north positive")
      ->required();
  command->add_option("--lon", options->longitude, "Longitude in degrees, east positive")
      ->required();
  command->add_option("--name", options->name, "Name of the yard");
  command->add_option("--zone", options->zone,
                      "Time zone, such as America/Chicago; this computer's where it suits");
  command->add_option("--state", options->state, "State, two letters");
  command->add_option("--hardiness", options->hardiness, "Hardiness zone, such as 6b");
  command->add_flag("--deer", options->deer, "Deer are about, and not fenced out");
  command->add_option("--last-frost", options->lastFrost,
                      "Last frost of spring, MM-DD (south of the equator 10-05, say)");
  command->add_option("--first-frost", options->firstFrost,
                      "First frost of autumn, MM-DD (in the south 04-25, say)");
  command->add_option("--site", options->site, "GeoJSON of the site");
  command->callback([options, &chosen] {
    chosen = [options](Console& console) { return runNew(*options, console); };
  });
}

}  // namespace tussock
