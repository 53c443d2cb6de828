// SPDX-License-Identifier: MIT
#include "core/catalog/families.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace tussock {

namespace {

// Each between two blanks, so that one is found whole.
constexpr std::string_view kFamilies =
    " Acanthaceae Aceraceae Achariaceae Achatocarpaceae Acoraceae Actinidiaceae Adoxaceae "
    "Aextoxicaceae Agavaceae Aizoaceae Akaniaceae Alismataceae Alliaceae Aloaceae Alseuosmiaceae "
    "Alstroemeriaceae Altingiaceae Alzateaceae Amaranthaceae Amaryllidaceae Amborellaceae "
    "Anacampserotaceae Anacardiaceae Ancistrocladaceae Anemiaceae Anisophylleaceae Annonaceae "
    "Anthericaceae Aphanopetalaceae Aphloiaceae Aphyllanthaceae Apiaceae Apocynaceae "
    "Apodanthaceae Aponogetonaceae Aquifoliaceae Araceae Araliaceae Araucariaceae Arecaceae "
    "Argophyllaceae Aristolochiaceae Asaraceae Asclepiadaceae Asparagaceae Asphodelaceae "
    "Aspleniaceae Asteliaceae Asteraceae Asteropeiaceae Atherospermataceae Athyriaceae "
    "Austrobaileyaceae Balanopaceae Balanophoraceae Balsaminaceae Barbeuiaceae Barbeyaceae "
    "Basellaceae Bataceae Begoniaceae Berberidaceae Berberidopsidaceae Betulaceae "
    "Biebersteiniaceae Bignoniaceae Bixaceae Blandfordiaceae Blechnaceae Bombacaceae "
    "Bonnetiaceae Boraginaceae Boryaceae Brassicaceae Bromeliaceae Brunelliaceae Bruniaceae "
    "Buddlejaceae Burmanniaceae Burseraceae Butomaceae Buxaceae Byblidaceae Cabombaceae "
    "Cactaceae Caesalpiniaceae Calceolariaceae Calochortaceae Calophyllaceae Calycanthaceae "
    "Calyceraceae Campanulaceae Campynemataceae Canellaceae Cannabaceae Cannaceae Capparaceae "
    "Caprifoliaceae Cardiopteridaceae Caricaceae Carlemanniaceae Caryocaraceae Caryophyllaceae "
    "Casuarinaceae Celastraceae Centroplacaceae Cephalotaceae Cephalotaxaceae Ceratophyllaceae "
    "Cercidiphyllaceae Chenopodiaceae Chloranthaceae Chrysobalanaceae Cibotiaceae "
    "Circaeasteraceae Cistaceae Cleomaceae Clethraceae Clusiaceae Cochlospermaceae Codonaceae "
    "Colchicaceae Coldeniaceae Columelliaceae Combretaceae Commelinaceae Compositae Connaraceae "
    "Convallariaceae Convolvulaceae Cordiaceae Coriariaceae Cornaceae Corsiaceae Corynocarpaceae "
    "Costaceae Crassulaceae Crossosomataceae Cruciferae Crypteroniaceae Ctenolophonaceae "
    "Cucurbitaceae Culcitaceae Cunoniaceae Cupressaceae Curtisiaceae Cuscutaceae Cyatheaceae "
    "Cycadaceae Cyclanthaceae Cymodoceaceae Cynomoriaceae Cyperaceae Cyrillaceae Cystodiaceae "
    "Cystopteridaceae Cytinaceae Daphniphyllaceae Dasypogonaceae Datiscaceae Davalliaceae "
    "Davidiaceae Degeneriaceae Dennstaedtiaceae Desmophlebiaceae Diapensiaceae Dichapetalaceae "
    "Dicksoniaceae Didiereaceae Didymelaceae Didymochlaenaceae Diervillaceae Dilleniaceae "
    "Dioncophyllaceae Dioscoreaceae Dipentodontaceae Diplaziopsidaceae Dipsacaceae Dipteridaceae "
    "Dipterocarpaceae Dirachmaceae Doryanthaceae Dracaenaceae Droseraceae Drosophyllaceae "
    "Dryopteridaceae Ebenaceae Ecdeiocoleaceae Ehretiaceae Elaeagnaceae Elaeocarpaceae "
    "Elatinaceae Emblingiaceae Ephedraceae Equisetaceae Ericaceae Eriocaulaceae Erythroxylaceae "
    "Escalloniaceae Eucommiaceae Euphorbiaceae Euphroniaceae Eupomatiaceae Eupteleaceae Fabaceae "
    "Fagaceae Flacourtiaceae Flagellariaceae Fouquieriaceae Francoaceae Frankeniaceae "
    "Fumariaceae Funkiaceae Garryaceae Geissolomataceae Gelsemiaceae Gentianaceae Geraniaceae "
    "Gerrardinaceae Gesneriaceae Ginkgoaceae Gisekiaceae Gleicheniaceae Gnetaceae Gomortegaceae "
    "Goodeniaceae Goupiaceae Gramineae Griseliniaceae Grossulariaceae Grubbiaceae Guamatelaceae "
    "Gunneraceae Guttiferae Gyrostemonaceae Haemodoraceae Halophytaceae Haloragaceae "
    "Hamamelidaceae Hanguanaceae Haptanthaceae Heliconiaceae Heliotropiaceae Helwingiaceae "
    "Hemerocallidaceae Hemidictyaceae Hernandiaceae Himantandraceae Hippocastanaceae "
    "Hippuridaceae Hoplestigmataceae Hostaceae Huaceae Humiriaceae Hyacinthaceae Hydatellaceae "
    "Hydnoraceae Hydrangeaceae Hydrastidaceae Hydrocharitaceae Hydroleaceae Hydrophyllaceae "
    "Hydrostachyaceae Hymenophyllaceae Hypericaceae Hypodematiaceae Hypoxidaceae Icacinaceae "
    "Illiciaceae Iridaceae Irvingiaceae Isoetaceae Iteaceae Ixioliriaceae Ixonanthaceae "
    "Joinvilleaceae Juglandaceae Juncaceae Juncaginaceae Kewaceae Kingdoniaceae Kirkiaceae "
    "Koeberliniaceae Krameriaceae Labiatae Lacistemataceae Lactoridaceae Lamiaceae Lanariaceae "
    "Lardizabalaceae Lauraceae Lecythidaceae Ledocarpaceae Leeaceae Leguminosae Lemnaceae "
    "Lentibulariaceae Lepidobotryaceae Liliaceae Limeaceae Limnanthaceae Linaceae Linderniaceae "
    "Lindsaeaceae Linnaeaceae Loasaceae Lobeliaceae Loganiaceae Lomariopsidaceae Lonchitidaceae "
    "Lophiocarpaceae Lophopyxidaceae Loranthaceae Lowiaceae Loxsomataceae Lycopodiaceae "
    "Lygodiaceae Lythraceae Macarthuriaceae Maesaceae Magnoliaceae Malesherbiaceae Malpighiaceae "
    "Malvaceae Marantaceae Marattiaceae Marcgraviaceae Marsileaceae Martyniaceae Mastixiaceae "
    "Matoniaceae Maundiaceae Mayacaceae Mazaceae Melanthiaceae Melastomataceae Meliaceae "
    "Melianthaceae Memecylaceae Menispermaceae Menyanthaceae Metaxyaceae Metteniusaceae "
    "Microteaceae Mimosaceae Misodendraceae Mitrastemonaceae Molluginaceae Monimiaceae "
    "Monotropaceae Montiaceae Montiniaceae Moraceae Morinaceae Moringaceae Muntingiaceae "
    "Musaceae Myodocarpaceae Myricaceae Myristicaceae Myrothamnaceae Myrsinaceae Myrtaceae "
    "Najadaceae Namaceae Nartheciaceae Nelumbonaceae Nepenthaceae Nephrolepidaceae Neuradaceae "
    "Nitrariaceae Nolinaceae Nothofagaceae Nyctaginaceae Nymphaeaceae Nyssaceae Ochnaceae "
    "Olacaceae Oleaceae Oleandraceae Onagraceae Oncothecaceae Onocleaceae Ophioglossaceae "
    "Opiliaceae Orchidaceae Orobanchaceae Osmundaceae Oxalidaceae Paeoniaceae Palmae Pandaceae "
    "Pandanaceae Papaveraceae Paracryphiaceae Parnassiaceae Passifloraceae Paulowniaceae "
    "Pedaliaceae Penaeaceae Pennantiaceae Pentadiplandraceae Pentaphragmataceae Pentaphylacaceae "
    "Penthoraceae Peraceae Peridiscaceae Petenaeaceae Petermanniaceae Petiveriaceae "
    "Petrosaviaceae Phellinaceae Philadelphaceae Philesiaceae Philydraceae Phrymaceae "
    "Phyllanthaceae Phyllonomaceae Physenaceae Phytolaccaceae Picramniaceae Picrodendraceae "
    "Pinaceae Piperaceae Pittosporaceae Plagiogyriaceae Plantaginaceae Platanaceae "
    "Plocospermataceae Plumbaginaceae Poaceae Podocarpaceae Podophyllaceae Podostemaceae "
    "Polemoniaceae Polygalaceae Polygonaceae Polypodiaceae Pontederiaceae Portulacaceae "
    "Posidoniaceae Potamogetonaceae Primulaceae Proteaceae Psilotaceae Pteridaceae Punicaceae "
    "Putranjivaceae Pyrolaceae Quillajaceae Rafflesiaceae Ranunculaceae Rapateaceae Resedaceae "
    "Restionaceae Rhabdodendraceae Rhachidosoraceae Rhamnaceae Rhizophoraceae Ripogonaceae "
    "Roridulaceae Rosaceae Rousseaceae Rubiaceae Ruppiaceae Ruscaceae Rutaceae Sabiaceae "
    "Saccolomataceae Salicaceae Salvadoraceae Salviniaceae Santalaceae Sapindaceae Sapotaceae "
    "Sarcobataceae Sarcolaenaceae Sarraceniaceae Saururaceae Saxifragaceae Scheuchzeriaceae "
    "Schisandraceae Schizaeaceae Schlegeliaceae Schoepfiaceae Sciadopityaceae Scrophulariaceae "
    "Selaginellaceae Setchellanthaceae Simaroubaceae Simmondsiaceae Siparunaceae Sladeniaceae "
    "Smilacaceae Solanaceae Sparganiaceae Sphaerosepalaceae Sphenocleaceae Stachyuraceae "
    "Staphyleaceae Stegnospermataceae Stemonaceae Stemonuraceae Sterculiaceae Stilbaceae "
    "Strasburgeriaceae Strelitziaceae Stylidiaceae Styracaceae Surianaceae Symplocaceae "
    "Talinaceae Tamaricaceae Tapisciaceae Taxaceae Taxodiaceae Tecophilaeaceae Tectariaceae "
    "Tetracarpaeaceae Tetracentraceae Tetrachondraceae Tetramelaceae Tetrameristaceae Theaceae "
    "Thelypteridaceae Themidaceae Theophrastaceae Thomandersiaceae Thurniaceae Thymelaeaceae "
    "Thyrsopteridaceae Ticodendraceae Tiliaceae Tofieldiaceae Torricelliaceae Tovariaceae "
    "Trapaceae Trigoniaceae Trilliaceae Trimeniaceae Triuridaceae Trochodendraceae Tropaeolaceae "
    "Turneraceae Typhaceae Ulmaceae Umbelliferae Urticaceae Uvulariaceae Vacciniaceae Vahliaceae "
    "Valerianaceae Velloziaceae Verbenaceae Viburnaceae Violaceae Viscaceae Vitaceae "
    "Vivianiaceae Vochysiaceae Wellstediaceae Welwitschiaceae Winteraceae Woodsiaceae "
    "Xanthorrhoeaceae Xeronemataceae Xyridaceae Zamiaceae Zannichelliaceae Zingiberaceae "
    "Zosteraceae Zygophyllaceae ";

// A family as in APG IV and PPG I, and in one string between blanks what its genera are met under.
constexpr std::array<std::pair<std::string_view, std::string_view>, 34> kOtherNames{{
    {"Arecaceae", " Palmae "},
    {"Poaceae", " Gramineae "},
    {"Brassicaceae", " Cruciferae "},
    {"Fabaceae", " Leguminosae Papilionaceae Caesalpiniaceae Mimosaceae "},
    {"Clusiaceae", " Guttiferae "},
    {"Hypericaceae", " Clusiaceae Guttiferae "},
    {"Apiaceae", " Umbelliferae "},
    {"Lamiaceae", " Labiatae Verbenaceae "},
    {"Asteraceae", " Compositae "},
    {"Apocynaceae", " Asclepiadaceae "},
    {"Sapindaceae", " Aceraceae Hippocastanaceae "},
    {"Amaranthaceae", " Chenopodiaceae "},
    {"Asparagaceae", " Liliaceae Agavaceae Convallariaceae Hyacinthaceae Ruscaceae "},
    {"Amaryllidaceae", " Liliaceae Alliaceae "},
    {"Melanthiaceae", " Liliaceae Trilliaceae "},
    {"Colchicaceae", " Liliaceae "},
    {"Asphodelaceae", " Liliaceae "},
    {"Plantaginaceae", " Scrophulariaceae Veronicaceae "},
    {"Orobanchaceae", " Scrophulariaceae "},
    {"Phrymaceae", " Scrophulariaceae "},
    {"Caprifoliaceae", " Dipsacaceae Valerianaceae Diervillaceae "},
    {"Diervillaceae", " Caprifoliaceae "},
    {"Adoxaceae", " Caprifoliaceae Viburnaceae Sambucaceae "},
    {"Viburnaceae", " Caprifoliaceae Adoxaceae Sambucaceae "},
    {"Papaveraceae", " Fumariaceae "},
    {"Ericaceae", " Pyrolaceae Monotropaceae "},
    {"Malvaceae", " Tiliaceae "},
    {"Boraginaceae", " Hydrophyllaceae "},
    {"Hydrangeaceae", " Saxifragaceae "},
    {"Grossulariaceae", " Saxifragaceae "},
    {"Iteaceae", " Saxifragaceae Grossulariaceae "},
    {"Onocleaceae", " Dryopteridaceae Woodsiaceae "},
    {"Athyriaceae", " Dryopteridaceae Woodsiaceae "},
    {"Cupressaceae", " Taxodiaceae "},
}};

}  // namespace

bool isPlantFamily(std::string_view name) {
  if (name.empty() || name.find(' ') != std::string_view::npos) return false;
  return kFamilies.find(" " + std::string(name) + " ") != std::string_view::npos;
}

bool isFamilyNameFor(std::string_view family, std::string_view name) {
  if (family == name) return true;
  const std::string whole = ' ' + std::string(name) + ' ';
  return std::any_of(kOtherNames.begin(), kOtherNames.end(), [&](const auto& one) {
    return one.first == family && one.second.find(whole) != std::string_view::npos;
  });
}

}  // namespace tussock
