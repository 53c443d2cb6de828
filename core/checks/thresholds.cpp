// SPDX-License-Identifier: MIT
#include "core/checks/thresholds.h"

#include <algorithm>
#include <stdexcept>
#include <string>

#include "core/planting/grow.h"

namespace tussock {

namespace {

constexpr std::string_view kCommon = "common practice";
constexpr std::string_view kSantamour =
    "Santamour F.S. (1990) Trees for urban planting: diversity, uniformity, and common sense; "
    "written for the street trees of a city";
constexpr std::string_view kXerces =
    "rule of nine species, three early, three middle, three late, after the Xerces Society";

std::vector<Threshold> table() {
  using enum Quantity;
  return {
      {"spacing_factor", "Least distance within a layer, share of the spacing", kLooseSpacing,
       Share, "loose staggered rows; common practice"},
      {"between_layers", "Least distance between layers", kBetweenLayers.metres(), Metres,
       "a trowel's width; common practice"},
      {"edge_share", "Set-back from the edge, share of the spacing", 0.5, Share, kCommon},
      {"odd_up_to", "Largest drift in which an even number shows", 9.0, Count,
       "garden press: groups of 3, 5, 7; the effect is seen up to about 9 plants"},
      {"sun_margin", "Hours of sun that a map may be out by", 0.5, Hours, kCommon},
      {"sun_alert", "Hours of sun missing that are too many to try", 2.0, Hours, kCommon},
      {"hidden_share", "Largest share of a drift hidden by a taller one", 0.5, Share, kCommon},
      {"taller_by", "Difference in height that is seen", 0.1, Metres, kCommon},
      {"see_through", "Share that grasses, plumes and spires hide", 0.5, Share,
       "see-through plants may stand in front (garden press); the figure is common practice"},
      {"eye_height", "Height of the eyes of people who look", 1.6, Metres,
       "standing adults, 1.5 to 1.7 m (Pheasant and Haslegrave, Bodyspace)"},
      {"hides_within", "Farthest that a plant hides what stands behind it", 3.0, Metres,
       "farther back a step to the side shows it; common practice"},
      {"viewing_distance", "Distance of the people from the edge", 1.5, Metres, kCommon},
      {"species_share", "Largest share of one species", 0.10, Share, kSantamour},
      {"genus_share", "Largest share of one genus", 0.20, Share, kSantamour},
      {"family_share", "Largest share of one family", 0.30, Share, kSantamour},
      {"share_min_plants", "Plants from which shares are looked at", 100.0, Count,
       "a tenth of fewer is no group worth the name, and garden writers ask for three to five "
       "kinds in a small space; common practice"},
      {"disease_mass", "Plants of a disease-prone species in one mass", 15.0, Count, kCommon},
      {"bloom_gap_weeks", "Longest time with nothing in flower", 1.0, Weeks, kCommon},
      {"bloom_per_third", "Species in flower in each third of the season", 3.0, Count, kXerces},
      {"bloom_bed_species", "Species from which a bed is asked to flower throughout", 3.0, Count,
       kCommon},
      {"obstacle_clearance", "Distance from paving, walls, trunks and stepping places", 0.0, Metres,
       kCommon},
      {"unknown_plants", "Plants of a species without facts", 0.0, Count,
       "what is not known is not checked; common practice"},
      {"doubtful_shade", "Solids whose shade is missing or in doubt", 0.0, Count,
       "hours of sun are as good as what is drawn; common practice"},
      {"shared_ground", "Largest share of a bed that is in another too", 0.01, Share,
       "ground is planted and counted once; the figure, for edges drawn by hand, is common "
       "practice"},
  };
}

}  // namespace

const std::vector<Threshold>& thresholds() {
  static const std::vector<Threshold> all = table();
  return all;
}

const Threshold* findThreshold(std::string_view id) {
  const auto at = std::find_if(thresholds().begin(), thresholds().end(),
                               [id](const Threshold& threshold) { return threshold.id == id; });
  return at == thresholds().end() ? nullptr : &*at;
}

double thresholdFor(const Settings& settings, std::string_view id) {
  const Threshold* usual = findThreshold(id);
  if (usual == nullptr) throw std::invalid_argument("no threshold called " + std::string(id));
  for (const ThresholdOverride& own : settings.thresholds)
    if (own.threshold == id) return own.value;
  return usual->value;
}

}  // namespace tussock
